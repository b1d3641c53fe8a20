package hafthold.table;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.material.Axis;
import hafthold.material.Material;
import hafthold.material.WaterUptake;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** What the tables make of wood between 90 and 60 % humidity, against what was measured; source in the data file. */
class MeasuredMovementTest {
    private static final MaterialLibrary LIBRARY = MaterialLibrary.read(TableSet.builtIn());

    @ParameterizedTest
    @CsvFileSource(
            resources = "/hafthold/material/measured-movement.csv",
            commentCharacter = '#',
            useHeadersInDisplayName = true)
    void woodMovesAboutAsMuchAsWasMeasured(
            String id, double tangential, double radial, double leastRatio, double mostRatio) {
        Material wood = LIBRARY.plain(id);
        assertAll(
                within(wood, Axis.ACROSS, tangential, leastRatio, mostRatio),
                within(wood, Axis.THROUGH, radial, leastRatio, mostRatio));
    }

    private static Executable within(Material wood, Axis axis, double measured, double least, double most) {
        WaterUptake water = wood.water().orElseThrow();
        double dry = water.isotherm().moistureFraction(0.60, 20);
        double damp = water.isotherm().moistureFraction(0.90, 20);
        double ratio = 1000 * water.swelling().strain(axis, dry, damp) / measured;
        return () -> assertTrue(ratio >= least && ratio <= most, wood.id() + " " + axis.word() + " ratio " + ratio);
    }
}
