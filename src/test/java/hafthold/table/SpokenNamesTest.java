package hafthold.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Words of the trade find their material where only one can be meant (common practice, no source). */
class SpokenNamesTest {
    private static final MaterialLibrary LIBRARY = MaterialLibrary.read(TableSet.builtIn());

    @ParameterizedTest
    @CsvSource({
        "red deer, antler-red-deer",
        "Red Deer Antler, antler-red-deer",
        "stag, antler-red-deer",
        "g10, glass-epoxy-g10",
        "cast acrylic, acrylic-cast",
        "buffalo horn, horn-buffalo",
        "moose, antler-moose"
    })
    void oneThatHasAllTheWordsIsMeant(String typed, String id) {
        assertEquals(id, LIBRARY.find(typed).id());
        assertEquals(id, LIBRARY.row(typed).orElseThrow().id());
    }

    /** The grade that is usual for handles comes first, and each is told by its name. */
    @Test
    void twoGradesAreBothNamed() {
        String said = refusal("linen laminate");
        assertTrue(
                said.contains("did you mean linen-phenolic-le (fine cotton (\"linen\") phenolic (grade LE)) or"
                        + " linen-phenolic-l (fine cotton (\"linen\") phenolic (grade L))?"),
                said);
        assertTrue(refusal("ivory").contains("ivory-mammoth (mammoth ivory, core) or"));
        assertTrue(refusal("deer antler").contains("antler (antler, unknown) or antler-red-deer"));
    }

    /** Metals of pins and tangs, a short word, and a word that only a detail has name no scale. */
    @ParameterizedTest
    @ValueSource(strings = {"brass", "stainless steel", "red", "mesh under", "xyz"})
    void whatMayBeAnythingIsNot(String typed) {
        assertFalse(refusal(typed).contains("(" + "carbon"));
    }

    @Test
    void woodsKeepTheirOwnRules() {
        assertEquals("oak-european", LIBRARY.find("sessile oak").id());
        assertTrue(refusal("walnut").contains("did you mean walnut-black?"));
    }

    private static String refusal(String typed) {
        return assertThrows(UnknownIdException.class, () -> LIBRARY.find(typed)).getMessage();
    }
}
