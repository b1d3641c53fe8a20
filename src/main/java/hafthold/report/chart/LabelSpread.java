package hafthold.report.chart;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/** Moves labels apart until none covers another, as little as it can. */
final class LabelSpread {
    private LabelSpread() {}

    /**
     * Centres of labels.
     *
     * @param wanted where each would best stand
     * @param heights height of each
     * @param top upper end of the room
     * @param bottom lower end; labels run over it only where they do not fit at all
     * @return centres in the order given, apart by at least half of both heights
     */
    static double[] apart(double[] wanted, double[] heights, double top, double bottom) {
        Integer[] order = IntStream.range(0, wanted.length).boxed().toArray(Integer[]::new);
        Arrays.sort(order, Comparator.comparingDouble((Integer i) -> wanted[i]).thenComparing(i -> i));
        double[] centres = wanted.clone();
        double floor = top;
        for (int i : order) {
            centres[i] = Math.max(centres[i], floor + heights[i] / 2);
            floor = centres[i] + heights[i] / 2;
        }
        double ceiling = Math.max(bottom, top + Arrays.stream(heights).sum());
        for (int k = order.length - 1; k >= 0; k--) {
            int i = order[k];
            centres[i] = Math.min(centres[i], ceiling - heights[i] / 2);
            ceiling = centres[i] - heights[i] / 2;
        }
        return centres;
    }
}
