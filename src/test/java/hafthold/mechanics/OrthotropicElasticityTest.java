package hafthold.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class OrthotropicElasticityTest {
    private static final double RIGHT_ANGLE = Math.PI / 2;

    private static void assertSame(OrthotropicElasticity expected, OrthotropicElasticity got) {
        for (HandleAxis a : HandleAxis.values()) {
            for (HandleAxis b : HandleAxis.values()) {
                double compliance = expected.compliancePerPascal(a, b);
                assertEquals(compliance, got.compliancePerPascal(a, b), 1e-9 * Math.abs(compliance), a + " " + b);
                if (a != b) {
                    double shear = expected.shearPascals(a, b);
                    assertEquals(shear, got.shearPascals(a, b), 1e-9 * shear, a + " " + b);
                }
            }
        }
    }

    @Test
    void quarterSawnIsFlatSawnWithWidthAndThicknessExchanged() {
        assertSame(
                Handles.WALNUT_FLAT.laid(HandleAxis.LENGTH, HandleAxis.THICKNESS, HandleAxis.WIDTH),
                Handles.WALNUT_FLAT.turnedAboutLength(RIGHT_ANGLE));
    }

    @Test
    void fullTurnsAndTwiceLaidChangeNothing() {
        assertSame(Handles.WALNUT_FLAT, Handles.WALNUT_FLAT.turnedAboutLength(2 * RIGHT_ANGLE));
        OrthotropicElasticity cross =
                Handles.WALNUT_FLAT.laid(HandleAxis.WIDTH, HandleAxis.THICKNESS, HandleAxis.LENGTH);
        assertEquals(12700e6, cross.thicknessModulusPascals());
        assertEquals(270e6, cross.lengthWidthShearPascals());
        assertSame(Handles.WALNUT_FLAT, cross.laid(HandleAxis.THICKNESS, HandleAxis.LENGTH, HandleAxis.WIDTH));
    }

    /** Jones 1999, equation 2.97, at 45 degrees: 4/E = 1/E1 + 1/E2 - 2 nu12/E1 + 1/G12. */
    @Test
    void riftSawnWidthModulusFollowsTheTransformation() {
        double expected = 4 / (1 / 710e6 + 1 / 1350e6 - 2 * 0.378 / 710e6 + 1 / 270e6);
        OrthotropicElasticity rift = Handles.WALNUT_FLAT.turnedAboutLength(RIGHT_ANGLE / 2);
        assertEquals(expected, rift.widthModulusPascals(), 1e-3);
        assertEquals(expected, rift.thicknessModulusPascals(), 1e-3);
    }

    /** Stiffness in a section is the inverse of the compliance: one strain at a time gives back its stress. */
    @Test
    void sectionStiffnessInvertsTheCompliance() {
        for (HandleAxis along : new HandleAxis[] {HandleAxis.WIDTH, HandleAxis.LENGTH}) {
            HandleAxis out = along == HandleAxis.WIDTH ? HandleAxis.LENGTH : HandleAxis.WIDTH;
            PlaneStiffness c = Handles.WALNUT_FLAT.inSection(along);
            double e1 = Handles.WALNUT_FLAT.compliancePerPascal(along, along);
            double e2 = Handles.WALNUT_FLAT.compliancePerPascal(along, HandleAxis.THICKNESS);
            double e3 = Handles.WALNUT_FLAT.compliancePerPascal(along, out);
            assertEquals(1, c.stress1(e1, e2, e3), 1e-12);
            assertEquals(0, c.stress2(e1, e2, e3), 1e-12);
            assertEquals(0, c.stress3(e1, e2, e3), 1e-12);
        }
    }

    /** A layer held both ways bears E / (1 - nu) a unit of strain (biaxial stress of a film, Timoshenko and Goodier 1970). */
    @Test
    void layerHeldInItsPlaneBearsTheStressOfAFilm() {
        OrthotropicElasticity glass = OrthotropicElasticity.isotropic(70e9, 0.22);
        double both = glass.heldStressPascals(HandleAxis.WIDTH, HandleAxis.WIDTH)
                + glass.heldStressPascals(HandleAxis.WIDTH, HandleAxis.LENGTH);
        assertEquals(70e9 / (1 - 0.22), both, 1);
        assertEquals(0, glass.heldStressPascals(HandleAxis.WIDTH, HandleAxis.THICKNESS));
        assertEquals(
                Handles.WALNUT_FLAT.heldStressPascals(HandleAxis.WIDTH, HandleAxis.LENGTH),
                Handles.WALNUT_FLAT.heldStressPascals(HandleAxis.LENGTH, HandleAxis.WIDTH),
                1e-3);
        assertThrows(
                IllegalArgumentException.class, () -> glass.heldStressPascals(HandleAxis.THICKNESS, HandleAxis.WIDTH));
    }

    @Test
    void refusesConstantsOfNoBody() {
        assertThrows(IllegalArgumentException.class, () -> OrthotropicElasticity.isotropic(-1, 0.3));
        assertThrows(IllegalArgumentException.class, () -> OrthotropicElasticity.isotropic(1e9, 0.5));
        assertThrows(
                IllegalArgumentException.class,
                () -> new OrthotropicElasticity(710e6, 12700e6, 1350e6, 790e6, 1080e6, 270e6, 0.632, 0.495, 0.378));
        assertThrows(
                IllegalArgumentException.class,
                () -> Handles.WALNUT_FLAT.shearPascals(HandleAxis.WIDTH, HandleAxis.WIDTH));
    }
}
