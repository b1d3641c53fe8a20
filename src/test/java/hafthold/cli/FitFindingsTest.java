package hafthold.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a note about one knife says of its own grounds is said where it is the case, and only there. */
class FitFindingsTest {
    private static final String BURL = "no test of burl was found";

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({
        "cut = \"flat\", false",
        "cut = \"burl\", true",
        "'cut_left = \"flat\"\ncut_right = \"burl\"', true",
        "'cut_left = \"burl\"\ncut_right = \"flat\"', true"
    })
    void burlIsSpokenOfWhereAScaleIsBurl(String cut, boolean isSaid) throws IOException {
        assertEquals(isSaid, fit("material = \"walnut-black\"\n" + cut).contains(BURL));
    }

    @Test
    void aHybridIsSpokenOfByItsParts() throws IOException {
        assertTrue(fit("material = \"hybrid-maple-burl-epoxy\"").contains(BURL));
        assertFalse(fit("material = \"hybrid-ironwood-epoxy\"").contains(BURL));
    }

    @Test
    void aDishwasherThatIsReckonedIsNotSaidToBeLeftOut() throws IOException {
        String scales = "material = \"walnut-black\"";
        String leftOut = "hotter and wetter than any year";
        assertTrue(fit(scales).contains(leftOut));
        String reckoned = fit(scales, "--event", "dishwasher");
        assertTrue(reckoned.contains("Wash it by hand and dry it at once."), reckoned);
        assertFalse(reckoned.contains(leftOut), reckoned);
    }

    /** Subjects of findings are named as people call them, and the lead of free-cutting brass is told. */
    @Test
    void materialsGoByTheirNames() throws IOException {
        String note = fit("material = \"walnut-black\"");
        assertFalse(note.contains("walnut black:"), note);
        assertFalse(note.contains("epoxy two part:"), note);
        assertTrue(note.contains("lead"), note);
    }

    /** Everything said, on both streams, in one line. */
    private String fit(String scales, String... more) throws IOException {
        Path file = Files.writeString(
                folder.resolve("knife.toml"),
                """
                [knife]
                place = "oslo"
                kitchen = true
                [tang]
                width = "26 mm"
                [scales]
                """ + scales + "\n[[pins]]\nmetal = \"brass-free-cutting\"\nalong = \"30 mm\"\n");
        String[] call = new String[4 + more.length];
        call[0] = "fit";
        call[1] = file.toString();
        call[2] = "--samples";
        call[3] = "1";
        System.arraycopy(more, 0, call, 4, more.length);
        Bench bench = Bench.run(call);
        assertEquals(ExitCode.DONE, bench.code(), bench.err());
        return (bench.out() + bench.err()).replaceAll("\\s+", " ");
    }
}
