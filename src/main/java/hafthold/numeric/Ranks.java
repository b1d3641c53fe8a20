package hafthold.numeric;

import java.util.Arrays;

/** Places of values in ascending order. */
final class Ranks {
    private Ranks() {}

    /** Place of each value, from 0; equal ones in the order they stand in. */
    static int[] of(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int[] taken = new int[values.length];
        int[] rank = new int[values.length];
        for (int i = 0; i < values.length; i++) {
            int first = Arrays.binarySearch(sorted, values[i]);
            while (first > 0 && sorted[first - 1] == values[i]) {
                first--;
            }
            rank[i] = first + taken[first]++;
        }
        return rank;
    }
}
