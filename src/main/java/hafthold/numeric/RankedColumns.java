package hafthold.numeric;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * A sample column by column, each as its values in ascending order and the rank of every point's value among them: what
 * re-pairing and rank statistics ask for, without sorting anything twice.
 *
 * @param ascending values by column, each column in ascending order
 * @param rank rank by column and point, from 0; a column holds every rank once
 */
public record RankedColumns(double[][] ascending, int[][] rank) {

    /** Columns of equally many points. */
    public static RankedColumns of(double[][] columns) {
        return new RankedColumns(
                Arrays.stream(columns).map(RankedColumns::sorted).toArray(double[][]::new),
                Arrays.stream(columns).map(Ranks::of).toArray(int[][]::new));
    }

    private static double[] sorted(double[] column) {
        double[] sorted = column.clone();
        Arrays.sort(sorted);
        return sorted;
    }

    /** How many columns there are. */
    public int size() {
        return rank.length;
    }

    /** The values of a column point by point. */
    public double[] column(int number) {
        return dealt(ascending[number], rank[number]);
    }

    /** All columns point by point. */
    public double[][] columns() {
        double[][] columns = new double[size()][];
        Arrays.setAll(columns, this::column);
        return columns;
    }

    /** The same points with every value replaced by a function of it that never falls. */
    public RankedColumns mapped(DoubleUnaryOperator rising) {
        return new RankedColumns(
                Arrays.stream(ascending)
                        .map(values -> Arrays.stream(values).map(rising).toArray())
                        .toArray(double[][]::new),
                rank);
    }

    /** Ascending values, dealt to points by rank. */
    static double[] dealt(double[] ascending, int[] rank) {
        double[] values = new double[rank.length];
        for (int i = 0; i < rank.length; i++) {
            values[i] = ascending[rank[i]];
        }
        return values;
    }
}
