package hafthold.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BrowseTest {

    @Test
    void materialsAreListedWithTheAgreedKeys() throws IOException {
        Bench bench = Bench.run("materials", "--format", "json");
        assertEquals(Set.of("materials", "id", "name", "family", "evidence"), keys(bench.out()));
        assertTrue(bench.out().contains("\"walnut-black\""));
    }

    @Test
    void placesAreListedUnderTheirKey() throws IOException {
        Bench bench = Bench.run("places", "--format", "json");
        assertTrue(keys(bench.out()).containsAll(List.of("places", "id", "name", "country")));
        assertEquals(170, bench.out().split("\"id\":", -1).length - 1);
    }

    @Test
    void aSheetShowsEveryFigureWithItsSource() {
        Bench bench = Bench.run("materials", "walnut-black");
        assertEquals(ExitCode.DONE, bench.code(), bench.err());
        assertTrue(bench.out().contains("shrinkage"));
        assertTrue(bench.out().contains("wood-handbook-2010"));
        assertTrue(bench.out().contains("Caution: "));
    }

    @Test
    void aSourceShowsWhatRestsOnIt() {
        Bench bench = Bench.run("sources", "wood-handbook-2010");
        assertEquals(ExitCode.DONE, bench.code(), bench.err());
        assertTrue(bench.out().contains("properties: walnut-black shrinkage"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"places", "materials", "sources", "compare", "trace"})
    void everyCommandExplainsItself(String command) {
        Bench bench = Bench.run(command, "--help");
        assertEquals(ExitCode.DONE, bench.code());
        assertTrue(bench.out().startsWith("Usage: hafthold " + command), bench.out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"places Singapur", "materials walnut-blak", "sources crank"})
    void anUnknownIdIsAnsweredWithTheNearest(String call) {
        Bench bench = Bench.run(call.split(" "));
        assertEquals(ExitCode.WRONG_USAGE, bench.code());
        assertTrue(bench.err().contains("did you mean"), bench.err());
    }

    @Test
    void theResistanceOfAFinishIsHeadedByItsUnit() {
        assertTrue(Bench.run("materials", "--finishes").out().contains("resistance, 1e9 m\u00b2 s Pa/kg"));
    }

    @Test
    void aPartOfAnIdListsAllThatHoldIt() {
        Bench oaks = Bench.run("materials", "oak");
        assertEquals(ExitCode.DONE, oaks.code(), oaks.err());
        for (String id : List.of("oak-european", "oak-red", "oak-bog+lumen-resin", "tanoak")) {
            assertTrue(oaks.out().contains(id), oaks.out());
        }
        assertFalse(oaks.out().contains("teak"), oaks.out());
    }

    /** Plain-sawn is what flat-sawn is called elsewhere (common practice, no source). */
    @Test
    void capitalsAndOtherWordsOfTheTradeAreUnderstood() {
        String typed = Bench.run(
                        "compare",
                        "--samples",
                        "1",
                        "--place",
                        "Reykjavik",
                        "--material",
                        "Walnut-Black",
                        "--cut",
                        "plain")
                .out();
        String listed = Bench.run(
                        "compare",
                        "--samples",
                        "1",
                        "--place",
                        "reykjavik",
                        "--material",
                        "walnut-black",
                        "--cut",
                        "flat")
                .out();
        assertEquals(listed, typed);
    }

    static Set<String> keys(String json) throws IOException {
        Set<String> keys = new LinkedHashSet<>();
        try (JsonParser parser = new JsonFactory().createParser(json)) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                if (token == JsonToken.FIELD_NAME) {
                    keys.add(parser.currentName());
                }
            }
        }
        return keys;
    }
}
