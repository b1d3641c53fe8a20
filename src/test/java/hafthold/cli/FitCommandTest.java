package hafthold.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FitCommandTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"full-tang", "stack"})
    void anExampleIsAcceptedAsItIsPrinted(String build) throws IOException {
        Bench printed = Bench.run("fit", "--example", build);
        assertEquals(ExitCode.DONE, printed.code(), printed.err());
        Bench fit = Bench.run("fit", file(printed.out()));
        assertEquals(ExitCode.DONE, fit.code(), fit.err());
        assertTrue(fit.err().lines().allMatch(line -> line.startsWith("mind: ")), fit.err());
        assertTrue(fit.out().contains("What this rests on"), fit.out());
    }

    @Test
    void theExampleWithoutAWordIsTheFullTang() {
        assertEquals(
                Bench.run("fit", "--example", "full-tang").out(),
                Bench.run("fit", "--example").out());
        assertEquals(
                ExitCode.WRONG_USAGE, Bench.run("fit", "--example", "sword").code());
    }

    @Test
    void theNoteFitsATerminalOfAboutAHundredColumns() throws IOException {
        String note = Bench.run("fit", example()).out();
        assertTrue(note.lines().allMatch(line -> line.length() <= 102), note);
        assertTrue(note.lines().noneMatch(line -> line.endsWith(" ")), note);
    }

    @Test
    void checkAnswersAnAdverseVerdictWithFour() throws IOException {
        String file = example();
        assertEquals(ExitCode.ADVERSE_VERDICT, Bench.run("fit", file, "--check").code());
        assertEquals(ExitCode.DONE, Bench.run("fit", file).code());
        Bench easy = Bench.run("fit", file, "--place", "london", "--setting", "air-conditioned", "--check");
        assertEquals(ExitCode.DONE, easy.code(), easy.out());
    }

    @Test
    void jsonHoldsTheKeysThatScriptsDependOn() throws IOException {
        String json = Bench.run("fit", example(), "--format", "json").out();
        for (String key : new String[] {
            "place",
            "setting",
            "made",
            "material",
            "mc_finish_percent",
            "mc_min_percent",
            "mc_max_percent",
            "edge_shy_mm",
            "edge_proud_mm",
            "free_shy_mm",
            "free_proud_mm",
            "length_mismatch_mm",
            "pin_gap_mm",
            "pin_squeeze_mm",
            "pin_head_proud_mm",
            "pin_head_sunk_mm",
            "worst_month",
            "verdict",
            "evidence",
            "tang_line_shy_mm",
            "tang_line_proud_mm",
            "glue_shear_mpa",
            "glue_peel_mpa",
            "glue_use",
            "crack_use",
            "softening_margin_k",
            "pins",
            "drivers",
            "input",
            "share",
            "advice",
            "do",
            "effect"
        }) {
            assertTrue(json.contains("\"" + key + "\":"), key);
        }
    }

    @Test
    void equalCallsGiveEqualBytes() throws IOException {
        String file = example();
        assertEquals(
                Bench.run("fit", file, "--format", "json").out(),
                Bench.run("fit", file, "--format", "json").out());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "walnut-black | walnut-blak | scales.material | did you mean walnut-black?",
                "epoxy-two-part | epoxi-two-part | glue.adhesive | did you mean epoxy-two-part?",
                "brass-free-cutting | brass-free-cuttingx | pins[1].metal | did you mean brass-free-cutting?",
                "steel-stainless-martensitic | steel-stainles | tang.steel | did you mean",
                "yakutsk | jakutsk | knife.place | did you mean yakutsk?",
                "heated-home | heated-hom | knife.setting | did you mean heated-home?",
                "good-new | good-newish | knife.work | did you mean good-new?",
                "26 mm | 26 in | tang.width | a length from",
            })
    void aWrongWordInTheFileIsNamedWithItsLineAndKey(String right, String wrong, String key, String hint)
            throws IOException {
        String text = Bench.run("fit", "--example").out().replaceFirst("\"" + right + "\"", "\"" + wrong + "\"");
        Bench fit = Bench.run("fit", file(text));
        assertEquals(ExitCode.INVALID_INPUT, fit.code(), fit.err());
        assertEquals("", fit.out());
        assertTrue(fit.err().contains("knife.toml line "), fit.err());
        assertTrue(fit.err().contains(", " + key + ":"), fit.err());
        assertTrue(fit.err().contains(hint), fit.err());
    }

    @Test
    void aFileWithoutAPlaceAsksForOne() throws IOException {
        String text = Bench.run("fit", "--example").out().replaceFirst("(?m)^place = .*$", "");
        Bench fit = Bench.run("fit", file(text));
        assertEquals(ExitCode.WRONG_USAGE, fit.code());
        assertTrue(fit.err().contains("where does the knife go?"), fit.err());
        assertEquals(
                ExitCode.DONE, Bench.run("fit", file(text), "--place", "bergen").code());
    }

    @Test
    void usageFaultsAreNamed() throws IOException {
        assertEquals(ExitCode.WRONG_USAGE, Bench.run("fit").code());
        assertEquals(
                ExitCode.WRONG_USAGE,
                Bench.run("fit", example(), "--format", "csv").code());
        assertEquals(
                ExitCode.INVALID_INPUT,
                Bench.run("fit", folder.resolve("nothing.toml").toString()).code());
    }

    @Test
    void outWritesAReportAndSaysWhere() throws IOException {
        Path report = folder.resolve("report");
        Bench fit = Bench.run("fit", example(), "--out", report.toString());
        assertEquals(ExitCode.DONE, fit.code(), fit.err());
        assertTrue(fit.err().contains("report: " + report.resolve("fit.html")), fit.err());
        for (String name : new String[] {"fit.html", "fit.json", "fit.txt", "section.svg", "pins.svg"}) {
            assertTrue(Files.size(report.resolve(name)) > 1000, name);
        }
        assertTrue(Files.readString(report.resolve("fit.txt")).startsWith(fit.out()));
        assertTrue(Bench.run("fit", "--help").out().contains("--out=DIR"));
    }

    private String example() throws IOException {
        return file(Bench.run("fit", "--example").out());
    }

    private String file(String text) throws IOException {
        return Files.writeString(folder.resolve("knife.toml"), text).toString();
    }
}
