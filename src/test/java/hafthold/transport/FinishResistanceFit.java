package hafthold.transport;

import java.util.Locale;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;

/**
 * Fits the resistance Z of each finish to its moisture-excluding effectiveness after 1, 7 and 14 days, and prints it with
 * the residual: how the figures of {@code finishes.csv} were found. Not a test.
 */
final class FinishResistanceFit {
    private static final int[] DAYS = {1, 7, 14};
    private static final double[] SPEEDS = {1, FinishedPanel.FITTED_SPEED, 6};

    private FinishResistanceFit() {}

    /** Prints one line a finish. */
    public static void main(String[] args) {
        BenchTable table = BenchTable.read("moisture-excluding.csv");
        double[] total = new double[SPEEDS.length];
        System.out.println(
                "finish, coats, Z in 1e9 m2 s Pa/kg (root mean square residual in points) at pine x 1, 2.5, 6");
        for (int row = 0; row < table.size(); row++) {
            StringBuilder line = new StringBuilder(table.text(row, "finish") + " " + table.text(row, "coats"));
            for (int i = 0; i < SPEEDS.length; i++) {
                FinishedPanel panel = new FinishedPanel(SPEEDS[i]);
                double[] bare = panel.gains(0);
                double z = fit(table, row, panel, bare);
                double residual = residual(table, row, panel, bare, z);
                total[i] += residual * residual;
                line.append(String.format(Locale.ROOT, "   %8.3f (%.1f)", z * 1e-9, residual));
            }
            System.out.println(line);
        }
        for (int i = 0; i < SPEEDS.length; i++) {
            System.out.printf(
                    Locale.ROOT,
                    "pine x %.1f: residual over all %.2f points%n",
                    SPEEDS[i],
                    Math.sqrt(total[i] / table.size()));
        }
    }

    static double fit(BenchTable table, int row, FinishedPanel panel, double[] bare) {
        UnivariateFunction misfit = logZ -> residual(table, row, panel, bare, Math.exp(logZ));
        return Math.exp(new BrentOptimizer(1e-6, 1e-8)
                .optimize(
                        new MaxEval(200),
                        new UnivariateObjectiveFunction(misfit),
                        GoalType.MINIMIZE,
                        new SearchInterval(Math.log(1e6), Math.log(1e13)))
                .getPoint());
    }

    static double residual(BenchTable table, int row, FinishedPanel panel, double[] bare, double z) {
        double[] finished = panel.gains(z);
        double sum = 0;
        int count = 0;
        for (int day : DAYS) {
            String printed = table.text(row, "mee_" + day + "d");
            if (!printed.isEmpty()) {
                double difference = panel.effectiveness(bare, finished, day) - Double.parseDouble(printed);
                sum += difference * difference;
                count++;
            }
        }
        return Math.sqrt(sum / count);
    }
}
