package hafthold.numeric;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;

class HatWeightsTest {
    private static final double LENGTH = 2;

    @Test
    void anEvenGridGetsNumerovsTwelfths() {
        double[] integral = integrals(GradedGrid.of(4, 4, 1), x -> x == 2 ? 12 : 0);
        assertArrayEquals(new double[] {0, 1, 10, 1, 0}, integral, 1e-12);
    }

    @Test
    void parabolasThatAreLevelAtTheMirrorAreIntegratedExactlyOnAGradedGrid() {
        GradedGrid grid = GradedGrid.of(LENGTH, 9, 0.05);
        DoubleUnaryOperator parabola = x -> 3 - 0.7 * x * x;
        double[] integral = integrals(grid, parabola);
        for (int i = 0; i < grid.size() - 1; i++) {
            assertEquals(exact(grid, i, parabola), integral[i], 1e-12);
        }
    }

    @Test
    void halvingAnEvenGridCutsTheErrorAtInnerPointsBySixteen() {
        double coarse = worst(GradedGrid.of(LENGTH, 16, 1));
        double fine = worst(GradedGrid.of(LENGTH, 32, 1));
        double order = Math.log(coarse / fine) / Math.log(2);
        assertTrue(order > 3.8 && order < 4.2, "order " + order);
    }

    @Test
    void totalsAndMomentsAreTheSumsOfTheIntegrals() {
        GradedGrid grid = GradedGrid.of(LENGTH, 7, 0.1);
        HatWeights weights = HatWeights.parabolic(grid);
        double[] value = new double[grid.size()];
        Arrays.setAll(value, i -> Math.cos(grid.position(i)));
        double[] integral = new double[grid.size()];
        weights.addTo(value, integral);
        double[] totals = weights.totals();
        double[] moments = weights.moments(grid.positions());
        double total = 0;
        double moment = 0;
        double sum = 0;
        double first = 0;
        for (int i = 0; i < value.length; i++) {
            total += totals[i] * value[i];
            moment += moments[i] * value[i];
            sum += integral[i];
            first += grid.position(i) * integral[i];
        }
        assertEquals(sum, total, 1e-14);
        assertEquals(first, moment, 1e-14);
        assertArrayEquals(totals, weights.lumped().totals(), 0);
        assertEquals(LENGTH, Arrays.stream(totals).sum(), 1e-14);
    }

    /** Relative to a point's stretch. */
    private static double worst(GradedGrid grid) {
        double[] integral = integrals(grid, Math::cos);
        double worst = 0;
        for (int i = 1; i < grid.size() - 1; i++) {
            double error = Math.abs(integral[i] - exact(grid, i, Math::cos));
            worst = Math.max(worst, error * (grid.size() - 1) / LENGTH);
        }
        return worst;
    }

    private static double[] integrals(GradedGrid grid, DoubleUnaryOperator quantity) {
        double[] value = Arrays.stream(grid.positions()).map(quantity).toArray();
        double[] integral = new double[value.length];
        HatWeights.parabolic(grid).addTo(value, integral);
        return integral;
    }

    /** Gauss-Legendre quadrature of the quantity times the hat, from Commons Math. */
    private static double exact(GradedGrid grid, int point, DoubleUnaryOperator quantity) {
        double here = grid.position(point);
        double sum = 0;
        if (point > 0) {
            double left = grid.position(point - 1);
            sum += integrate(x -> quantity.applyAsDouble(x) * (x - left) / (here - left), left, here);
        }
        if (point < grid.size() - 1) {
            double right = grid.position(point + 1);
            sum += integrate(x -> quantity.applyAsDouble(x) * (right - x) / (right - here), here, right);
        }
        return sum;
    }

    private static double integrate(DoubleUnaryOperator f, double from, double to) {
        return new IterativeLegendreGaussIntegrator(8, 1e-13, 1e-15).integrate(10_000, f::applyAsDouble, from, to);
    }
}
