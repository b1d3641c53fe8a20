package hafthold.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every wrong input gets one line that says what, where and what would be right, and prints no result. */
class WrongInputTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--place Singapur | did you mean singapore?",
                "--place singapore --material walnut-blak | did you mean walnut-black?",
                "--place singapore --material walnut-black+lumen-rosin | did you mean lumen-resin?",
                "--place singapore --made-rh 550% | from 0 to 100",
                "--place singapore --made-rh 0% | a humidity from 3 % to 99 %",
                "--place singapore --thickness 8 | the unit is missing",
                "--place singapore --thickness 0mm | scale thickness must be more than 0",
                "--place singapore --width=-26mm | tang width must be more than 0",
                "--place singapore --width 26in | is the unit right?",
                "--place singapore --pin 30mm | does not fit",
                "--place singapore --cut sideways | expected one of flat",
                "--place singapore --cut none | wood always lies in some cut",
                "--place singapore --material steel-carbon | is no scale material but a steel for the tang",
                "--place singapore --material epoxy-two-part | is no scale material but a glue",
                "--place singapore --setting jungle | no setting 'jungle'",
                "--place singapore --finish lacker | no finish 'lacker'",
                "--setting outdoors | where does the knife go?",
                "--place singapore --climate x.csv | exclude each other",
                "--place singapore --colour red | Unknown option",
                "--place singapore,oslo | atlas' takes several",
                "--place singapore --units furlong | expected mm, thou or both",
                "--place singapore --language xx | no language 'xx'",
            })
    void aWrongOptionIsAnsweredInOneLine(String options, String part) {
        Bench bench = Bench.run(("compare --material teak " + options).split(" "));
        assertEquals(ExitCode.WRONG_USAGE, bench.code(), bench.err());
        assertTrue(bench.err().contains(part), bench.err());
        assertEquals("", bench.out());
    }

    @Test
    void noCommandIsWrongUsage() {
        assertEquals(ExitCode.WRONG_USAGE, Bench.run().code());
        assertEquals(ExitCode.WRONG_USAGE, Bench.run("weave").code());
    }

    @Test
    void aTableWithAMissingColumnNamesIt() throws IOException {
        assertFault("limits.csv", "class,shy,proud,pin_head,unit,source,evidence\n", "a column named gap");
    }

    @Test
    void textInANumberNamesTheCell() throws IOException {
        assertFault(
                "limits.csv",
                "class,shy,proud,pin_head,gap,unit,source,evidence\nseasonal,wide,0.2,0.08,0.1,mm,own,assumed\n",
                "limits.csv line 2, column shy: 'wide' is not right: expected a number from 0 to 10");
    }

    @Test
    void aDecimalCommaIsExplained() throws IOException {
        assertFault(
                "limits.csv",
                "class,shy,proud,pin_head,gap,unit,source,evidence\nseasonal,0,12,0.2,0.08,0.1,mm,own,assumed\n",
                "decimals with a point");
    }

    @Test
    void notANumberIsRefused() throws IOException {
        assertFault(
                "limits.csv",
                "class,shy,proud,pin_head,gap,unit,source,evidence\nseasonal,NaN,0.2,0.08,0.1,mm,own,assumed\n",
                "column shy: 'NaN'");
    }

    @Test
    void anEmptyTableIsRefused() throws IOException {
        assertFault("limits.csv", "", "is empty");
    }

    @Test
    void anIdListedTwiceIsRefused() throws IOException {
        String row = "mine,my oak,,wood,scale,oak-white,flat,,,\n";
        assertFault(
                "materials.csv",
                "id,name,detail,family,role,based_on,usual_cut,sorption,swelling,note\n" + row + row,
                "materials.csv line 3, column id: 'mine' is not right: expected each mine once");
    }

    @Test
    void aMisspeltClassOfAMaterialIsNamed() throws IOException {
        Path table = Files.writeString(folder.resolve("materials.csv"), """
                id,name,detail,family,role,based_on,usual_cut,sorption,swelling,note
                mine,my oak,,wood,scale,oak-whyte,flat,,,
                """);
        Bench bench = Bench.run("compare", "--place", "singapore", "--tables", folder.toString(), "--material", "mine");
        assertEquals(ExitCode.INVALID_INPUT, bench.code());
        assertTrue(bench.err().contains("'oak-whyte', which has no row"), bench.err() + table);
    }

    @Test
    void aFileGivenAsAFolderOfTablesIsRefused() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "x");
        Bench bench = Bench.run("compare", "--place", "singapore", "--material", "teak", "--tables", file.toString());
        assertEquals(ExitCode.INVALID_INPUT, bench.code());
        assertTrue(bench.err().contains("is no folder"), bench.err());
    }

    @Test
    void aFolderGivenAsATableIsRefused() throws IOException {
        Files.createDirectory(folder.resolve("limits.csv"));
        Bench bench = Bench.run("compare", "--place", "singapore", "--material", "teak", "--tables", folder.toString());
        assertEquals(ExitCode.INVALID_INPUT, bench.code());
        assertTrue(bench.err().contains("is a folder"), bench.err());
    }

    @Test
    void aMissingOrForeignClimateFileIsRefused() throws IOException {
        Bench missing = Bench.run("compare", "--material", "teak", "--climate", folder.resolve("no.csv") + "");
        assertEquals(ExitCode.INVALID_INPUT, missing.code(), missing.err());
        Path foreign = Files.writeString(folder.resolve("foreign.csv"), "when,warm\n1,2\n");
        Bench bench = Bench.run("compare", "--material", "teak", "--climate", foreign.toString());
        assertEquals(ExitCode.INVALID_INPUT, bench.code(), bench.err());
        assertTrue(bench.err().contains("temperature_c"), bench.err());
    }

    @Test
    void aByteOrderMarkCrlfAndNoLastLineEndAreSimplyRead() throws IOException {
        Files.write(
                folder.resolve("materials.csv"),
                ("\uFEFFid,name,detail,family,role,based_on,usual_cut,sorption,swelling,note\r\n"
                                + "mine,my oak,,wood,scale,oak-white,flat,,,")
                        .getBytes(StandardCharsets.UTF_8));
        Bench bench = Bench.run("compare", "--place", "singapore", "--tables", folder.toString(), "--material", "mine");
        assertEquals(ExitCode.DONE, bench.code(), bench.err());
        assertTrue(bench.out().contains("my oak"), bench.out());
    }

    private void assertFault(String table, String content, String part) throws IOException {
        Files.writeString(folder.resolve(table), content);
        Bench bench = Bench.run("compare", "--place", "singapore", "--tables", folder.toString(), "--material", "teak");
        assertEquals(ExitCode.INVALID_INPUT, bench.code(), bench.err());
        assertTrue(bench.err().contains(part), bench.err());
        assertEquals("", bench.out());
    }
}
