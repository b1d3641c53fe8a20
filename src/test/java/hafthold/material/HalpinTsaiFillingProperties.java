package hafthold.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** Resin in the lumens never softens a wood, stays between the bounds, and tells most in light wood. */
class HalpinTsaiFillingProperties {
    private static final double SOUND = 1 + 1e-9;

    /** A wood by its dry density and its modulus across, any share of what its walls side by side would have. */
    record Wood(double dryDensity, double plainPascals) {
        HalpinTsaiFilling law() {
            return HalpinTsaiFilling.across(dryDensity);
        }

        double filled(double contentPascals) {
            return law().filledPascals(plainPascals, contentPascals);
        }
    }

    @Provide
    Arbitrary<Wood> woods() {
        return Combinators.combine(
                        Arbitraries.doubles().between(100, 1400).ofScale(0),
                        Arbitraries.doubles().between(0.01, 0.99).ofScale(3))
                .as((density, share) -> new Wood(
                        density,
                        share
                                * (1 - HalpinTsaiFilling.lumenFraction(density))
                                * HalpinTsaiFilling.WALL_ACROSS_PASCALS));
    }

    @Property
    void aFilledWoodIsNoSofter(
            @ForAll("woods") Wood wood, @ForAll @Scale(2) @DoubleRange(min = 0, max = 20) double contentGigapascals) {
        assertEquals(wood.plainPascals(), wood.filled(0), 1e-9 * wood.plainPascals());
        assertTrue(wood.filled(contentGigapascals * 1e9) * SOUND >= wood.plainPascals());
        assertTrue(wood.filled((contentGigapascals + 0.1) * 1e9) > wood.filled(contentGigapascals * 1e9));
    }

    @Property
    void itLiesBetweenTheBoundsOfVoigtAndReuss(
            @ForAll("woods") Wood wood, @ForAll @Scale(2) @DoubleRange(min = 0.01, max = 20) double gigapascals) {
        double content = gigapascals * 1e9;
        double wall = wood.law().wallPascals();
        double lumens = wood.law().lumenFraction();
        double voigt = (1 - lumens) * wall + lumens * content;
        double reuss = 1 / ((1 - lumens) / wall + lumens / content);
        assertTrue(wood.filled(content) <= voigt * SOUND);
        assertTrue(wood.filled(content) * SOUND >= reuss);
    }

    @Property
    void openingsFullOfWallAreWall(@ForAll("woods") Wood wood) {
        double wall = wood.law().wallPascals();
        assertEquals(wall, wood.filled(wall), 1e-9 * wall);
    }

    /** Stiffness across grows faster than density in every wood, so that walls prop themselves better in a dense one. */
    @Property
    void lightWoodGainsMore(
            @ForAll @Scale(0) @DoubleRange(min = 150, max = 1100) double density,
            @ForAll @Scale(2) @DoubleRange(min = 1.2, max = 3) double power,
            @ForAll @Scale(2) @DoubleRange(min = 0.1, max = 4) double gigapascals) {
        assertTrue(gain(density, power, gigapascals) > gain(density + 50, power, gigapascals));
    }

    private static double gain(double density, double power, double gigapascals) {
        double plain =
                HalpinTsaiFilling.WALL_ACROSS_PASCALS * Math.pow(density / HalpinTsaiFilling.CELL_WALL_DENSITY, power);
        return new Wood(density, plain).filled(gigapascals * 1e9) / plain;
    }

    /**
     * Round rods joined firmly, sheared along: with xi = 1 the law is that of composite cylinders (Hashin and Rosen 1964,
     * from memory), G / Gm = ((1 + V) Gf + (1 - V) Gm) / ((1 - V) Gf + (1 + V) Gm).
     */
    @Property
    void roundLumensInShearAreCompositeCylinders(
            @ForAll @Scale(2) @DoubleRange(min = 0.05, max = 0.9) double lumens,
            @ForAll @Scale(2) @DoubleRange(min = 0.1, max = 4) double gigapascals) {
        double wall = 2.5e9;
        double content = gigapascals * 1e9;
        double plain = wall * (1 - lumens) / (1 + lumens);
        double cylinders =
                wall * ((1 + lumens) * content + (1 - lumens) * wall) / ((1 - lumens) * content + (1 + lumens) * wall);
        assertEquals(cylinders, new HalpinTsaiFilling(lumens, wall).filledPascals(plain, content), 1e-9 * cylinders);
    }
}
