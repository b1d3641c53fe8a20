package hafthold.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class LamePressFitTest {
    @Test
    void pressuresAreThoseOfTheClosedForm() {
        for (String[] row : ReferenceTable.rows("press-fit.csv")) {
            LamePressFit fit = new LamePressFit(
                    Double.parseDouble(row[1]) * 1e6,
                    Double.parseDouble(row[2]),
                    Double.parseDouble(row[3]) * 1e6,
                    Double.parseDouble(row[4]),
                    Double.parseDouble(row[5]) * 1e-3,
                    Double.parseDouble(row[6]) * 1e-3);
            double interference = Double.parseDouble(row[7]) * 1e-3;
            double pressure = Double.parseDouble(row[8]) * 1e6;
            assertEquals(pressure, fit.pressurePascals(interference), 1e-6 * pressure, row[0]);
            if (!row[9].isEmpty()) {
                double hoop = Double.parseDouble(row[9]) * 1e6;
                assertEquals(hoop, fit.boreHoopPascals(interference), 1e-6 * hoop, row[0]);
            }
        }
    }

    @Test
    void rigidShaftInAWideHubFeelsTheEndlessPlate() {
        LamePressFit wide = new LamePressFit(Double.POSITIVE_INFINITY, 0.3, 3.2e9, 0.37, 3e-3, 3);
        double endless = LekhnitskiiHole.throughScale(Handles.ACRYLIC)
                .pinContact(0.00236, 0.00236)
                .largestPressurePascals();
        assertEquals(endless, wide.pressurePascals(0.00236 * 3e-3), 1e-5 * endless);
    }

    @Test
    void looseShaftPressesNothing() {
        assertEquals(0, new LamePressFit(2e11, 0.3, 2e11, 0.3, 3e-3, 6e-3).pressurePascals(-1e-5));
    }

    @Test
    void refusesHubsWithoutWall() {
        assertThrows(IllegalArgumentException.class, () -> new LamePressFit(2e11, 0.3, 2e11, 0.3, 6e-3, 6e-3));
        assertThrows(IllegalArgumentException.class, () -> new LamePressFit(0, 0.3, 2e11, 0.3, 3e-3, 6e-3));
    }
}
