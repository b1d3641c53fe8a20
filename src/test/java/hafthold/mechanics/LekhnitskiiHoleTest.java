package hafthold.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class LekhnitskiiHoleTest {
    private static final LekhnitskiiHole WALNUT = LekhnitskiiHole.throughScale(Handles.WALNUT_FLAT);

    private static LekhnitskiiHole plate(List<Double> row) {
        return new LekhnitskiiHole(row.get(0) * 1e6, row.get(1) * 1e6, row.get(2), row.get(3) * 1e6);
    }

    private static List<Double> numbers(String[] row) {
        return Arrays.stream(row).skip(1).map(Double::valueOf).toList();
    }

    @Test
    void concentrationsAreThoseOfTheClosedForm() {
        for (String[] row : ReferenceTable.rows("hole-concentration.csv")) {
            List<Double> numbers = numbers(row);
            LekhnitskiiHole hole = plate(numbers);
            assertEquals(numbers.get(4), hole.concentrationBesideHole(), 1e-12, row[0]);
            assertEquals(numbers.get(5), hole.concentrationAheadOfHole(), 1e-12, row[0]);
            assertEquals(numbers.get(6), hole.concentrationBesideHole(), 0.005 * numbers.get(6), row[0]);
            assertEquals(numbers.get(7), hole.concentrationAheadOfHole(), -0.005 * numbers.get(7), row[0]);
        }
    }

    @Test
    void pinStressMatchesFiniteElementsAllRound() {
        for (String[] row : ReferenceTable.rows("rigid-pin.csv")) {
            List<Double> numbers = numbers(row);
            PinContact contact = plate(numbers).pinContact(numbers.get(4), numbers.get(5));
            double angle = Math.toRadians(numbers.get(6));
            boolean steep = row[0].equals("LT") && numbers.get(6) >= 60;
            double largest = Math.max(contact.largestPressurePascals(), contact.hoopPascals(Math.toRadians(55)));
            double tolerance = (steep ? 0.02 : 0.005) * largest;
            assertEquals(numbers.get(7) * 1e6, contact.hoopPascals(angle), tolerance, String.join(",", row));
            assertEquals(numbers.get(8) * 1e6, contact.pressurePascals(angle), tolerance, String.join(",", row));
        }
    }

    /** Hooke's law turns the wall's stress into its stretch, whose sum must be that of the prescribed displacement. */
    @Test
    void wallStretchesAsThePinPrescribes() {
        PinContact contact = WALNUT.pinContact(0.002, 0.01);
        double stretch = 0;
        int steps = 2000;
        for (int i = 0; i < steps; i++) {
            double angle = (i + 0.5) * Math.PI / 2 / steps;
            double c = Math.cos(angle);
            double s = Math.sin(angle);
            double hoop = contact.hoopPascals(angle);
            double radial = -contact.pressurePascals(angle);
            double stress1 = radial * c * c + hoop * s * s;
            double stress2 = radial * s * s + hoop * c * c;
            double strain1 =
                    stress1 / WALNUT.modulus1Pascals() - WALNUT.poisson12() / WALNUT.modulus1Pascals() * stress2;
            double strain2 =
                    stress2 / WALNUT.modulus2Pascals() - WALNUT.poisson12() / WALNUT.modulus1Pascals() * stress1;
            double shear = (radial - hoop) * s * c / WALNUT.shearPascals();
            stretch += (strain1 * s * s + strain2 * c * c - shear * s * c) / steps;
        }
        assertEquals((0.002 + 0.01) / 2, stretch, 1e-10);
    }

    /** Lame in an endless plate: pressure and hoop tension are both 2 G times the strain. */
    @Test
    void isotropicPinFeelsTwiceTheShearModulusTimesTheStrain() {
        LekhnitskiiHole acrylic = LekhnitskiiHole.throughScale(Handles.ACRYLIC);
        double expected = 2 * 3.2e9 / (2 * 1.37) * 0.00236;
        PinContact contact = acrylic.pinContact(0.00236, 0.00236);
        assertEquals(expected, contact.largestPressurePascals(), 1e-6 * expected);
        assertEquals(expected, contact.largestTensionAcrossPascals(), 1e-6 * expected);
    }

    @Test
    void walnutSplitsNearThreeQuartersOfAPercent() {
        double atOnePercent = WALNUT.pinContact(0, 0.01).largestTensionAcrossPascals();
        assertEquals(6.36e6, atOnePercent, 0.005e6);
        // Tension strength of black walnut across the grain, 4.8 MPa at 12 % (Wood Handbook 2010, table 5-3a).
        assertEquals(0.0075, 0.01 * 4.8e6 / atOnePercent, 0.00005);
    }

    @Test
    void loosePinStressesNothing() {
        PinContact loose = WALNUT.pinContact(-0.002, -0.0001);
        assertEquals(0, loose.largestPressurePascals());
        assertEquals(0, loose.largestTensionAcrossPascals());
        assertEquals(0, loose.hoopPascals(0.3));
    }

    @Test
    void pinInAnOvalHoleTouchesOnlyWhereItIsTight() {
        PinContact oval = WALNUT.pinContact(-0.008, 0.002);
        assertEquals(0, oval.pressurePascals(0), 1e3);
        assertTrue(oval.pressurePascals(Math.PI / 2) > 2e6);
        double tightAllRound = WALNUT.pinContact(0, 0.002).largestTensionAcrossPascals();
        assertTrue(oval.largestTensionAcrossPascals() < tightAllRound);
    }

    @Test
    void refusesPlatesThatCannotBe() {
        assertThrows(IllegalArgumentException.class, () -> new LekhnitskiiHole(1e9, 9e9, 0.4, 1e9));
        assertThrows(IllegalArgumentException.class, () -> new LekhnitskiiHole(1e9, 1e9, 0.3, 0));
    }
}
