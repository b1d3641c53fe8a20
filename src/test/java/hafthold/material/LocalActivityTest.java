package hafthold.material;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Activity, slope and curvature at once must be those of the activity alone, whatever guess they start from. */
class LocalActivityTest {
    private static final double STEP = 1e-4;

    static Stream<SorptionIsotherm> isotherms() {
        return Stream.of(
                new HailwoodHorrobinIsotherm(),
                new ScaledIsotherm(new HailwoodHorrobinIsotherm(), 0.8),
                new GuggenheimAndersonDeBoerIsotherm(0.06, 12, 0.8),
                new GuggenheimAndersonDeBoerIsotherm(0.05, 0.7, 0.9),
                new PowerIsotherm(0.08, 1.3),
                new PowerIsotherm(0.05, 1));
    }

    @ParameterizedTest
    @MethodSource("isotherms")
    void slopesAreThoseOfDifferences(SorptionIsotherm isotherm) {
        LocalActivity local = new LocalActivity();
        for (double humidity = 0.1; humidity < 0.95; humidity += 0.1) {
            for (double celsius : new double[] {-5, 20, 45}) {
                double m = isotherm.moistureFraction(humidity, celsius);
                double h = STEP * m;
                double before = isotherm.waterActivity(m - h, celsius);
                double after = isotherm.waterActivity(m + h, celsius);
                double slope = (after - before) / (2 * h);
                double bend = isotherm.waterActivitySlope(m + h, celsius) - isotherm.waterActivitySlope(m - h, celsius);
                for (double guess : new double[] {Double.NaN, humidity + 0.05, -3}) {
                    local.set(guess, 0, 0);
                    isotherm.waterActivity(m, celsius, local);
                    assertEquals(humidity, local.value(), 1e-9);
                    assertEquals(1, local.slope() / slope, 1e-5);
                    assertEquals(isotherm.waterActivitySlope(m, celsius), local.slope(), 1e-9 * slope);
                    assertEquals(bend / (2 * h), local.curvature(), 1e-4 * slope / m);
                }
            }
        }
    }
}
