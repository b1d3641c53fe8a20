package hafthold.table;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.material.Axis;
import hafthold.material.Cut;
import hafthold.material.Material;
import hafthold.material.ScaleMaterial;
import hafthold.quantity.Band;
import hafthold.report.BenchStyle;
import hafthold.source.Evidence;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Names of woods that no table has; density groups of the names from memory, as the table says. */
class UnlistedWoodTest {
    private static final MaterialLibrary LIBRARY = MaterialLibrary.read(TableSet.builtIn());

    @ParameterizedTest
    @CsvSource({
        "amboina wood, tropical-medium",
        "iron oak, hardwood-medium",
        "black palm, tropical-dense",
        "claro walnut, hardwood-medium",
        "burmese rosewood, tropical-dense",
        "kingwood, tropical-dense",
        "Juniper, softwood",
        "mystery wood, wood",
        "unknown-wood, wood",
        "wood:zorg, wood",
        "wood:mopane, tropical-dense",
        "hardwood-dense:zorg, hardwood-dense"
    })
    void aWoodThatNoTableHasTakesItsNearestClassAndSaysSo(String typed, String woodClass) {
        ScaleMaterial wood = LIBRARY.find(typed);
        assertAll(
                () -> assertEquals(Evidence.UNKNOWN, wood.evidence()),
                () -> assertEquals(1, wood.findings().size()),
                () -> assertTrue(
                        BenchStyle.ENGLISH
                                .tell(wood.findings().get(0).message())
                                .contains("The class " + woodClass + " ("),
                        wood.findings().toString()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"zorgwood", "tropical-dense:bloodwood", "plum", "iron oak"})
    void itsBandIsAtLeastAThirdEitherWay(String typed) {
        Material wood = LIBRARY.plain(typed);
        Band band = wood.water().orElseThrow().swelling().relativeBand(Axis.ACROSS);
        assertTrue(band.high() - band.low() > 0.5, band.toString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"walnut-blak", "wallnut", "maple", "teek", "oak-wite", "plexi", "no-such-thing", "hybrid-maple"})
    void aSlipOfThePenOrWhatSaysNoWoodIsRefused(String typed) {
        assertThrows(UnknownIdException.class, () -> LIBRARY.find(typed));
    }

    @Test
    void aClassThatIsNoneIsRefusedWithTheNearest() {
        UnknownIdException fault =
                assertThrows(UnknownIdException.class, () -> LIBRARY.find("tropical-dens:bloodwood"));
        assertTrue(fault.getMessage().contains("did you mean tropical-dense?"), fault.getMessage());
    }

    @ParameterizedTest
    @CsvSource({
        "black walnut, walnut-black",
        "Red oak, oak-red",
        "European beech, beech-european",
        "Walnut-Black, walnut-black",
        "European oak, oak-european",
        "sessile oak, oak-european",
        "pedunculate oak, oak-european",
        "sweet cherry, cherry-european",
        "rock maple, maple-sugar",
        "hard maple, maple-sugar",
        "Lignum vitae, lignum-vitae",
        "bocote, bocote",
        "padauk, padauk-african",
        "Wenge, wenge"
    })
    void aListedWoodIsFoundByItsNameForPeople(String typed, String id) {
        assertEquals(id, LIBRARY.find(typed).id());
    }

    /** Shop talk: stabilised wood is wood with resin in its lumens (common practice, no source). */
    @ParameterizedTest
    @CsvSource({
        "stabilised black walnut, walnut-black+lumen-resin",
        "Stabilized Maple Burl, maple-burl+lumen-resin",
        "oiled olive, olive+oil-soaked",
        "acetylated beech-european, beech-european+acetylated"
    })
    void aWordOfTreatmentIsATreatment(String typed, String id) {
        assertEquals(id, LIBRARY.find(typed).id());
        assertEquals(LIBRARY.find(id).findings(), LIBRARY.find(typed).findings());
    }

    @ParameterizedTest
    @ValueSource(strings = {"stabilised walnut", "walnut stabilized"})
    void treatedWoodOfNoSpeciesIsToldHowItIsWritten(String typed) {
        UnknownIdException fault = assertThrows(UnknownIdException.class, () -> LIBRARY.find(typed));
        assertTrue(
                fault.getMessage().contains("wood is written WOOD+lumen-resin, such as walnut-black+lumen-resin"),
                fault.getMessage());
    }

    @ParameterizedTest
    @CsvSource({"linen-phenolic-les, linen-phenolic-le", "walnut-blak, walnut-black"})
    void aGuessSharesItsLettersOrItsWords(String typed, String meant) {
        UnknownIdException fault = assertThrows(UnknownIdException.class, () -> LIBRARY.find(typed));
        assertTrue(fault.getMessage().contains("did you mean " + meant + "?"), fault.getMessage());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "zzgrmpf", "xq"})
    void nothingIsGuessedThatIsFarOff(String typed) {
        UnknownIdException fault = assertThrows(UnknownIdException.class, () -> LIBRARY.find(typed));
        assertTrue(!fault.getMessage().contains("did you mean"), fault.getMessage());
    }

    @Test
    void aBurlOfAnUnlistedWoodLiesAsABurlAndTakesATreatment() {
        assertEquals(Cut.BURL, LIBRARY.find("coolibah burl").usualCut());
        ScaleMaterial treated = LIBRARY.find("coolibah burl+lumen-resin");
        assertEquals("coolibah-burl+lumen-resin", treated.id());
        assertEquals(Evidence.UNKNOWN, treated.evidence());
    }
}
