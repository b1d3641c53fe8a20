package hafthold.table;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Expansion of wood with heat across the grain: the classes of the tables, by a formula remembered of the Wood Handbook,
 * against what Callister prints for two woods at 12 % moisture (Materials science and engineering, Appendix B, Table B.6;
 * page seen), red oak 30.6 to 39.1 and Douglas-fir 25.4 to 33.8 (1e-6/K), whose ends are taken as radial and tangential.
 */
class WoodHeatExpansionTest {
    private static final double LIGHT = 0.40;
    private static final double DENSE = 0.80;
    /** Half the last printed digit, and the rounding of the classes at both ends. */
    private static final double ROUNDING = 0.15;

    /** Specific gravities of the two woods: 0.64 and 0.48, Wood Handbook as remembered. */
    @ParameterizedTest
    @CsvSource({"tangential, 0.64, 39.1", "radial, 0.64, 30.6", "tangential, 0.48, 33.8", "radial, 0.48, 25.4"})
    void theLineThroughTheClassesMeetsThePrint(String axis, double gravity, double printed) {
        double light = value("hardwood-light", axis);
        double dense = value("hardwood-dense", axis);
        double line = light + (dense - light) * (gravity - LIGHT) / (DENSE - LIGHT);
        assertEquals(printed, line, ROUNDING);
    }

    private static double value(String material, String axis) {
        return TableSet.builtIn()
                .read("properties.csv", List.of("material", "property", "axis", "value"))
                .get(0)
                .rows()
                .stream()
                .filter(row -> row.text("material").equals(material))
                .filter(row -> row.text("property").equals("thermal_expansion"))
                .filter(row -> row.text("axis").equals(axis))
                .findFirst()
                .orElseThrow()
                .number("value", 0, 100);
    }
}
