package hafthold.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class SaturationPressureTest {
    private final SaturationPressure saturation = new HylandWexlerSaturationPressure();

    static List<String[]> printedValues() {
        return Fixture.rows("saturation-pressure.csv");
    }

    @ParameterizedTest
    @MethodSource("printedValues")
    void handbookValuesAreMetWithinThreePartsInTenThousand(String celsius, String pascals) {
        double printed = Double.parseDouble(pascals);
        assertEquals(printed, saturation.pascals(Double.parseDouble(celsius)), 3e-4 * printed);
    }

    /** Murphy and Koop 2005, Q. J. R. Meteorol. Soc. 131, 1539-1565, equation 10, from memory. */
    @ParameterizedTest
    @ValueSource(doubles = {-40, -30, -20, -10, 0})
    void undercooledWaterAgreesWithMurphyAndKoopWithinOnePercent(double celsius) {
        double t = celsius + 273.15;
        double print = Math.exp(54.842763
                - 6763.22 / t
                - 4.210 * Math.log(t)
                + 0.000367 * t
                + Math.tanh(0.0415 * (t - 218.8)) * (53.878 - 1331.22 / t - 9.44523 * Math.log(t) + 0.014025 * t));
        assertEquals(print, saturation.pascals(celsius), 0.01 * print);
    }

    /**
     * Magnus formula of the WMO guide to instruments (WMO-No. 8, annex 4.B), from memory: the one weather services report
     * by. At -20 C it gives 125.96 Pa where Hyland and Wexler carried on give 125.63 and Murphy and Koop 125.50.
     */
    @ParameterizedTest
    @ValueSource(doubles = {-40, -30, -20, -10, 0, 20, 40})
    void theWeatherServicesFormulaAgreesWithinThreePartsInAThousand(double celsius) {
        double print = 611.2 * Math.exp(17.62 * celsius / (243.12 + celsius));
        assertEquals(print, saturation.pascals(celsius), 0.003 * print);
    }

    @Test
    void overUndercooledWaterNotIce() {
        assertEquals(1.22, saturation.pascals(-20) / 103.26, 0.005);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-60, -20, 0, 12.5, 30, 99})
    void dewPointUndoesSaturation(double celsius) {
        assertEquals(celsius, saturation.dewPointCelsius(saturation.pascals(celsius)), 1e-8);
    }

    @Test
    void vapourWithoutDewPointIsRefused() {
        IllegalArgumentException refusal =
                assertThrows(IllegalArgumentException.class, () -> saturation.dewPointCelsius(0));
        assertEquals("vapour of 0.0 Pa has no dew point between -100 and 200 C", refusal.getMessage());
    }
}
