package hafthold.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The law of filled lumens against tests on wood filled with resin. */
class HalpinTsaiFillingTest {
    private static final double GIGA = 1e9;
    /** Acrylic sheet, Lange's handbook, Table 10.2. */
    private static final double ACRYLIC = 3 * GIGA;

    /**
     * Along the grain walls lie side by side. Wood Handbook (2010), Table 19-5, basswood with methyl methacrylate in
     * bending: 9.3 to 11.6 GPa; as the load is not stated, lumens are taken as full. Density 349 kg/m3 (0.37 at 12 %).
     */
    @Test
    void alongTheGrainResinAddsItsOwnStiffness() {
        double lumens = HalpinTsaiFilling.lumenFraction(349);
        double plain = 9.3 * GIGA;
        HalpinTsaiFilling along = new HalpinTsaiFilling(lumens, plain / (1 - lumens));
        assertEquals(11.6, along.filledPascals(plain, ACRYLIC) / GIGA, 0.05);
    }

    /**
     * Che and others (2018), radiata pine with a styrene and acrylic acid resin that stays in the lumens, at most 42 % by
     * weight: strength in radial compression up by 81.6 %. No modulus is stated; in a honeycomb whose walls bend both go
     * with the walls, so the gains are held against each other within a fifth. Density of the pine 430 kg/m3, its radial
     * modulus 0.9 GPa and the resin's density 1100 kg/m3 from memory.
     */
    @Test
    void acrossItGainsAsRadiataPineDidInRadialCompression() {
        double share = 0.42 * 430 / (HalpinTsaiFilling.lumenFraction(430) * 1100);
        double gain = HalpinTsaiFilling.across(430).filledPascals(0.9 * GIGA, share * ACRYLIC) / (0.9 * GIGA);
        assertEquals(1.816, gain, 0.2 * 1.816);
    }

    /** What is remembered of the wall, 4 to 10 GPa, moves a walnut with a third of its lumens full by a tenth. */
    @ParameterizedTest
    @ValueSource(doubles = {4, 10})
    void theWallModulusMattersLittle(double wallGigapascals) {
        double plain = 0.71 * GIGA;
        double content = 0.33 * ACRYLIC;
        double asTaken = HalpinTsaiFilling.across(510).filledPascals(plain, content);
        double other = new HalpinTsaiFilling(HalpinTsaiFilling.lumenFraction(510), wallGigapascals * GIGA)
                .filledPascals(plain, content);
        assertEquals(1, other / asTaken, 0.15);
    }

    /** A wood without lumens takes nothing, and one stiffer than its walls side by side gains what resin adds. */
    @Test
    void theEndsHold() {
        assertEquals(5 * GIGA, HalpinTsaiFilling.across(1600).filledPascals(5 * GIGA, ACRYLIC), 1);
        assertEquals(
                4 * GIGA + 0.5 * ACRYLIC, new HalpinTsaiFilling(0.5, 7 * GIGA).filledPascals(4 * GIGA, ACRYLIC), 1);
        assertTrue(HalpinTsaiFilling.across(1600).lumenFraction() == 0);
        assertThrows(IllegalArgumentException.class, () -> new HalpinTsaiFilling(1, GIGA));
        assertThrows(IllegalArgumentException.class, () -> new HalpinTsaiFilling(0.5, 0));
    }
}
