package hafthold.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One sheet answers where every number comes from, and how to have a better one. */
class MaterialSheetTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "olive | Not chosen: olive shrinkage across 13 % (timber-merchant-pages): only to 12 % MC",
                "olive | To do better, olive: weigh and measure a slip",
                "walnut-black | To do better, black walnut: ",
                "walnut-black | across from green to dry",
                "steel-carbon | movement with heat",
                "walnut-black+lumen-resin | anti_swelling_efficiency",
                "walnut-black+lumen-resin | weight_gain",
                "walnut-black+lumen-resin | rosen-1970s",
                "thuya-burl | Note: oily and fragrant",
                "hybrid-maple-burl-epoxy | To do better, cast epoxy resin: ",
                "iron oak | No table has 'iron oak'",
                "sessile oak | European oak (oak-european)",
                "stabilised black walnut | anti_swelling_efficiency",
                "ivory-mammoth | wa-museum-ivory"
            })
    void aSheetSays(String id, String part) {
        Bench bench = Bench.run("materials", id);
        assertEquals(ExitCode.DONE, bench.code(), bench.err());
        assertTrue(bench.out().contains(part), bench.out());
    }

    @Test
    void scriptsGetWhatWasNotChosenToo() {
        String csv = Bench.run("materials", "olive", "--format", "csv").out();
        assertEquals(
                2,
                csv.lines()
                        .filter(line -> line.startsWith("olive,") && line.endsWith(",no"))
                        .count(),
                csv);
    }

    /** A figure of the workshop's own needs no better one. */
    @Test
    void noLineIsSpentOnWhatTheBandDoesNotHangOn() {
        String sheet = Bench.run("materials", "walnut-black").out();
        assertEquals(0, sheet.lines().filter(line -> line.contains("freezer")).count(), sheet);
    }
}
