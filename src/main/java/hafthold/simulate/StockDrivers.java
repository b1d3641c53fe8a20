package hafthold.simulate;

import hafthold.numeric.PlischkeCosineSensitivity;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Which of the inputs that are not known decide how long a block takes in its box. */
final class StockDrivers {
    private static final int WAVES = 4;
    private static final double LEAST_SHARE = 0.05;

    private StockDrivers() {}

    /** Share of each in the spread of the days until it is ready, largest first; those that hardly count are left out. */
    static Map<StockInput, Double> of(List<StockSample> drawn, List<StockOutlook> outlooks) {
        double furthest = StockEngine.DAYS_AHEAD.get(StockEngine.DAYS_AHEAD.size() - 1);
        double[] answers = outlooks.stream()
                .mapToDouble(outlook -> Math.min(furthest, outlook.inBox().readyDays()))
                .toArray();
        PlischkeCosineSensitivity sensitivity = new PlischkeCosineSensitivity(answers.length, WAVES);
        Map<StockInput, Double> shares = new LinkedHashMap<>();
        for (StockInput input : StockInput.values()) {
            shares.put(input, sensitivity.share(ranks(drawn, input), answers));
        }
        Map<StockInput, Double> sorted = new LinkedHashMap<>();
        shares.entrySet().stream()
                .filter(entry -> entry.getValue() >= LEAST_SHARE)
                .sorted(Map.Entry.<StockInput, Double>comparingByValue(Comparator.reverseOrder()))
                .forEach(entry -> sorted.put(entry.getKey(), entry.getValue()));
        return sorted;
    }

    private static int[] ranks(List<StockSample> drawn, StockInput input) {
        int[] order = IntStream.range(0, drawn.size())
                .boxed()
                .sorted(Comparator.comparingDouble(
                        i -> drawn.get(i).piece().inputs().of(input)))
                .mapToInt(Integer::intValue)
                .toArray();
        int[] ranks = new int[order.length];
        for (int rank = 0; rank < order.length; rank++) {
            ranks[order[rank]] = rank;
        }
        return ranks;
    }
}
