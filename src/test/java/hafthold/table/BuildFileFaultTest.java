package hafthold.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every fault names the file, the line, the key, what was found and what would be right. */
class BuildFileFaultTest {
    private static final String TANG = "[tang]\nwidth = \"26 mm\"\n";
    private static final String LEAST = TANG + "[scales]\nmaterial = \"walnut-black\"\n";
    /** A build on a through tang, without its parts. */
    private static final String STACK = "[knife]\nbuild = \"tang-stack\"\n[tang]\nwidth = \"8 mm\"\n";

    @TempDir
    private Path folder;

    @Test
    void brokenTomlIsNamedWithItsLine() throws IOException {
        assertFault(2, "tang.width", "expected ] or a comma", "[tang]\nwidth = [\"26 mm\"\n[scales]\n");
    }

    @Test
    void aValueWithoutQuotesIsNamedWithItsLineAndExplained() throws IOException {
        assertFault(2, "tang.width", "words and values with a unit stand in quotes", "[tang]\nwidth = 26 mm\n");
        assertFault(2, "tang.width", "words and values with a unit stand in quotes", "[tang]\nwidth = 5/16 in\n");
        assertFault(4, "scales.material", "stand in quotes", TANG + "[scales]\nmaterial = walnut-black\n");
    }

    @Test
    void curlyQuotesAreExplained() throws IOException {
        assertFault(2, "tang.width", "write straight quotes", "[tang]\nwidth = \u201C26 mm\u201D\n");
    }

    @Test
    void aKeyGivenTwiceIsRefused() throws IOException {
        assertFault(3, "tang.width", "previously defined at line 2", TANG + "width = \"27 mm\"\n");
    }

    @Test
    void anUnknownKeyIsAnsweredWithTheNearestOne() throws IOException {
        assertFault(3, "tang.thicknes", "did you mean thickness?", TANG + "thicknes = \"4 mm\"\n");
        assertFault(
                5, "scales.colour", "expected a key of [scales]: one of material, cut", LEAST + "colour = \"brown\"\n");
        assertFault(5, "pinns", "expected a key of a build file: one of knife, tang", LEAST + "[[pinns]]\n");
        assertFault(6, "pins[1].dia", "did you mean diameter?", LEAST + "[[pins]]\ndia = \"6 mm\"\n");
        assertFault(5, "scales.a.b", "expected a key of [scales]", LEAST + "\"a.b\" = 1\n");
    }

    @Test
    void aTableOfTheOtherBuildIsExplained() throws IOException {
        assertFault(5, "parts", "parts goes with build = \"tang-stack\"", LEAST + "[[parts]]\nlength = \"3 mm\"\n");
        assertFault(5, "pins", "pins goes with build = \"full-tang\"", STACK + "[[pins]]\nmetal = \"copper\"\n");
    }

    @Test
    void aValueOfTheWrongTypeIsRefused() throws IOException {
        assertFault(
                4, "scales.material", "'5' is not right: expected a text in quotes", TANG + "[scales]\nmaterial = 5");
        assertFault(
                2, "knife.kitchen", "expected true or false, without quotes", "[knife]\nkitchen = \"yes\"\n" + LEAST);
        assertFault(1, "tang", "a line [tang] with its keys below", "tang = \"26 mm\"\n");
        assertFault(5, "pins", "a line [[pins]] for each", LEAST + "[pins]\nmetal = \"copper\"\n");
        assertFault(5, "scales.profile", "expected a list of tables", LEAST + "profile = \"26 mm\"\n");
        assertFault(6, "scales.profile[1]", "expected a table, such as", LEAST + "profile = [\n\"26 mm\"]\n");
        assertFault(5, "scales.thickness", "'true' is not right: expected a length", LEAST + "thickness = true\n");
        assertFault(
                5, "scales.thickness", "'a list' is not right: expected a length", LEAST + "thickness = [\"8 mm\"]\n");
    }

    @Test
    void aBareNumberWhereAUnitIsNeededIsRefused() throws IOException {
        assertProblem("tang.width", "the unit is missing, write \"26 mm\"", "[tang]\nwidth = 26\n");
        assertProblem("tang.width", "the unit is missing, write \"26.5 mm\"", "[tang]\nwidth = 26.5\n");
        assertProblem("tang.width", "the unit is missing, write \"26 mm\"", "[tang]\nwidth = \"26\"\n");
        assertProblem("tang.width", "the unit is missing, write \"9/8 in\"", "[tang]\nwidth = \"9/8\"\n");
        assertProblem("made.humidity", "the unit is missing, write \"55 %\"", "[made]\nhumidity = 55\n" + LEAST);
    }

    private void assertProblem(String key, String problem, String text) throws IOException {
        assertEquals(file() + " line 2, " + key + ": " + problem, fault(text).getMessage());
    }

    @Test
    void whatIsNoKnifeFileIsToldWhereToGetOne() throws IOException {
        assertEquals(
                file() + ": this is no knife file; hafthold fit --example prints one",
                fault("Buy epoxy and\ntwo pins.\n").getMessage());
    }

    @Test
    void aWrongUnitIsRefused() throws IOException {
        assertFault(2, "tang.width", "'26 %' is not right: expected a length", "[tang]\nwidth = \"26 %\"\n");
        assertFault(6, "made.temperature", "expected a temperature", LEAST + "[made]\ntemperature = \"20 mm\"\n");
        assertFault(5, "tang.preload", "expected a force", STACK + "preload = \"5 Nm\"\n");
    }

    @Test
    void aDecimalCommaAndAMixedFractionAreExplained() throws IOException {
        assertFault(2, "tang.width", "write decimals with a point", "[tang]\nwidth = \"26,5 mm\"\n");
        assertFault(2, "tang.width", "such as 1.125 or 9/8 for 1 1/8", "[tang]\nwidth = \"1 1/8 in\"\n");
    }

    @Test
    void aMissingTangWidthIsNamed() throws IOException {
        assertFault(1, "tang.width", "such as \"26 mm\"; it is missing", "[tang]\nsteel = \"steel-carbon\"\n");
        assertFault(1, "tang.width", "it is missing", "[scales]\nmaterial = \"teak\"\n");
    }

    @Test
    void aMissingMaterialIsNamed() throws IOException {
        assertFault(1, "scales.material", "such as \"walnut-black\"; it is missing", TANG);
        assertFault(3, "scales.material", "it is missing", TANG + "[scales]\nlength = \"110 mm\"\n");
        assertFault(4, "scales.material", "a text that is not empty", TANG + "[scales]\nmaterial = \" \"\n");
        assertFault(5, "parts[1].material", "it is missing", STACK + "[[parts]]\nlength = \"35 mm\"\n");
        assertFault(5, "parts[1].length", "it is missing", STACK + "[[parts]]\nmaterial = \"antler\"\n");
    }

    @ParameterizedTest
    @CsvSource({
        "0 mm, a length from 5 mm to 80 mm",
        "-26 mm, a length from 5 mm to 80 mm",
        "1 mm, 'a length from 5 mm to 80 mm; did you mean \"1 in\"?'",
        "1.02 mm, 'did you mean \"1.02 in\"?'",
        "700 mm, 'did you mean \"700 thou\"?'",
        "26 in, 'did you mean \"26 mm\"?'",
        "0.26 mm, 'did you mean \"0.26 in\"?'",
    })
    void aTangWidthNoKnifeHasIsRefused(String width, String expectation) throws IOException {
        assertFault(2, "tang.width", "'" + width + "' is not right: expected ", "[tang]\nwidth = \"" + width + "\"\n");
        assertFault(2, "tang.width", expectation, "[tang]\nwidth = \"" + width + "\"\n");
    }

    @Test
    void sizesOfEveryOtherPartThatAreZeroNegativeOrAbsurdAreRefused() throws IOException {
        assertFault(3, "tang.thickness", "'0 mm'", TANG + "thickness = \"0 mm\"\n");
        assertFault(3, "tang.butt_thickness", "'-2 mm'", TANG + "butt_thickness = \"-2 mm\"\n");
        assertFault(5, "scales.thickness", "'80 mm'", LEAST + "thickness = \"80 mm\"\n");
        assertFault(5, "scales.length", "did you mean \"4.3 in\"?", LEAST + "length = \"4.3 mm\"\n");
        assertFault(5, "scales.easing", "'-0.3 mm'", LEAST + "easing = \"-0.3 mm\"\n");
        assertFault(6, "liners[1].thickness", "'0 mm'", LEAST + "[[liners]]\nthickness = \"0 mm\"\n");
        assertFault(6, "pins[1].diameter", "'0 mm'", LEAST + "[[pins]]\ndiameter = \"0 mm\"\n");
        assertFault(6, "pins[1].hole", "'-6 mm'", LEAST + "[[pins]]\nhole = \"-6 mm\"\n");
        assertFault(6, "pins[1].along", "'-1 mm'", LEAST + "[[pins]]\nalong = \"-1 mm\"\n");
        assertFault(6, "glue.thickness", "'0 mm'", LEAST + "[glue]\nthickness = \"0 mm\"\n");
        assertFault(6, "grip.width", "'0 mm'", STACK + "[grip]\nwidth = \"0 mm\"\n");
        assertFault(7, "parts[1].length", "'0 mm'", STACK + "[[parts]]\nmaterial = \"antler\"\nlength = \"0 mm\"\n");
        assertFault(
                5, "tang.preload", "'-5 N'", STACK + "preload = \"-5 N\"\n[[parts]]\nmaterial=\"a\"\nlength=\"5 mm\"");
    }

    @Test
    void aTangThatGrowsTowardsTheButtIsRefused() throws IOException {
        assertFault(
                4,
                "tang.butt_thickness",
                "'5 mm' is not right: expected no more than the thickness at the bolster, 4 mm",
                TANG + "thickness = \"4 mm\"\nbutt_thickness = \"5 mm\"\n");
    }

    @Test
    void anEasingDeeperThanTheScaleIsRefused() throws IOException {
        assertFault(
                6, "scales.easing", "no more than the thickness", LEAST + "thickness = \"3 mm\"\neasing = \"4 mm\"\n");
    }

    @Test
    void aPinOutsideTheScaleIsRefused() throws IOException {
        assertFault(
                7,
                "pins[1].along",
                "'5 in' is not right: expected a place on the scale, which is 110 mm long",
                LEAST + "[[pins]]\nmetal = \"copper\"\nalong = \"5 in\"\n");
        assertFault(
                6,
                "pins[1].up",
                "'-14 mm' is not right: expected a place on the scale, which reaches 13 mm either side",
                LEAST + "[[pins]]\nup = \"-14 mm\"\n");
    }

    @Test
    void aHoleThatRunsOverTheEdgeIsRefused() throws IOException {
        assertFault(
                6,
                "pins[1].up",
                "the hole of 6.05 mm runs over the edge by 0.025 mm",
                LEAST + "[[pins]]\nup = \"10 mm\"\n");
        assertFault(
                6,
                "pins[1].along",
                "'2 mm' is not right: expected from 3.025 mm to 106.975 mm",
                LEAST + "[[pins]]\nalong = \"2 mm\"\n");
    }

    @Test
    void aHoleThatRunsOverTheTangInsideAWiderScaleIsRefused() throws IOException {
        assertFault(
                7,
                "pins[1].up",
                "runs over the edge by 2.025 mm",
                LEAST + "profile = [{at = \"0 mm\", width = \"40 mm\"}]\n[[pins]]\nup = \"12 mm\"\n");
    }

    @Test
    void aPinTakenByDefaultThatDoesNotFitIsNamedAsSuch() throws IOException {
        assertFault(
                1, "pins[1].up", "it was taken because the file says nothing of it", LEAST.replace("26 mm", "5 mm"));
    }

    @Test
    void holesThatOverlapAreRefused() throws IOException {
        assertFault(
                8,
                "pins[2].along",
                "'26 mm' is not right: expected at least 6.05 mm from the middle of pins[1]: the holes overlap",
                LEAST + "[[pins]]\nalong = \"20 mm\"\n[[pins]]\nalong = \"26 mm\"\n");
    }

    @Test
    void aHoleSmallerThanThePinIsRefused() throws IOException {
        assertFault(
                7,
                "pins[1].hole",
                "'5.9 mm' is not right: expected a hole no smaller than the pin of 6 mm",
                LEAST + "[[pins]]\ndiameter = \"6 mm\"\nhole = \"5.9 mm\"\n");
        assertFault(
                7, "pins[1].hole", "at most 2 mm larger", LEAST + "[[pins]]\ndiameter = \"6 mm\"\nhole = \"9 mm\"\n");
    }

    @Test
    void moreThanTwentyPinsAreRefused() throws IOException {
        assertFault(
                25, "pins[21]", "'21 pins' is not right: expected at most 20 pins", LEAST + "[[pins]]\n".repeat(21));
    }

    @Test
    void aTangWiderThanTheScalesIsRefused() throws IOException {
        assertFault(
                2,
                "tang.width",
                "'26 mm' is not right: expected no more than the widest place of the scales, 25 mm",
                LEAST + "profile = [{at = \"0 mm\", width = \"24 mm\"}, {at = \"50 mm\", width = \"25 mm\"}]\n");
    }

    @Test
    void profilePlacesThatDoNotIncreaseAreRefused() throws IOException {
        String profile = """
                profile = [
                    {at = "0 mm", width = "26 mm"},
                    {at = "%s", width = "25 mm"},
                    {at = "60 mm", width = "26 mm"},
                ]
                """;
        assertFault(
                8,
                "scales.profile[3].at",
                "'60 mm' is not right: expected a place further from the bolster than the one before it, 70 mm",
                LEAST + profile.formatted("70 mm"));
        assertFault(7, "scales.profile[2].at", "further from the bolster", LEAST + profile.formatted("0 mm"));
    }

    @Test
    void aProfilePlaceBeyondTheScaleIsRefused() throws IOException {
        assertFault(
                6,
                "scales.profile[2].at",
                "'111 mm' is not right: expected a place on the scale, which is 110 mm long",
                LEAST + "profile = [{at = \"0 mm\", width = \"26 mm\"},\n{at = \"111 mm\", width = \"26 mm\"}]\n");
    }

    @Test
    void aProfileThatDoesNotStartAtTheBolsterOrIsEmptyIsRefused() throws IOException {
        assertFault(
                5,
                "scales.profile[1].at",
                "the first width is that at the bolster",
                LEAST + "profile = [{at = \"5 mm\", width = \"26 mm\"}]\n");
        assertFault(5, "scales.profile", "at least one width", LEAST + "profile = []\n");
        assertFault(5, "scales.profile[1].width", "it is missing", LEAST + "profile = [{at = \"0 mm\"}]\n");
    }

    @Test
    void anUnknownCutIsAnsweredWithTheNearestOne() throws IOException {
        assertFault(
                5,
                "scales.cut",
                "'quater' is not right: expected one of flat, rift, quarter, burl, cross, none; did you mean quarter?",
                LEAST + "cut = \"quater\"\n");
        assertFault(
                7,
                "parts[1].cut",
                "did you mean burl?",
                STACK + "[[parts]]\nmaterial=\"a\"\ncut = \"bur\"\nlength=\"9 mm\"\n");
    }

    @Test
    void oneCutForBothScalesAndOneOfTheirOwnAreRefused() throws IOException {
        assertFault(
                6,
                "scales.cut_left",
                "either cut for both scales, or cut_left and cut_right",
                LEAST + "cut = \"flat\"\ncut_left = \"rift\"\n");
    }

    @Test
    void anUnknownKindOrFillIsAnsweredWithTheNearestOne() throws IOException {
        assertFault(6, "pins[1].kind", "did you mean solid?", LEAST + "[[pins]]\nkind = \"sollid\"\n");
        assertFault(6, "pins[1].fill", "did you mean hard-epoxy?", LEAST + "[[pins]]\nfill = \"hard epoxy\"\n");
        assertFault(2, "knife.build", "one of full-tang, tang-stack", "[knife]\nbuild = \"folder\"\n" + LEAST);
        assertFault(5, "tang.kind", "did you mean through?", STACK + "kind = \"thru\"\n");
    }

    @Test
    void aHumidityOf550PercentIsRefused() throws IOException {
        assertFault(
                6,
                "made.humidity",
                "'550 %' is not right: expected a relative humidity from 0 to 100 %",
                LEAST + "[made]\nhumidity = \"550 %\"\n");
        assertFault(
                6,
                "made.humidity",
                "'0.55 %' is not right: expected a humidity from 3 % to 99 %",
                LEAST + "[made]\nhumidity = \"0.55 %\"\n");
    }

    @Test
    void aMoistureAboveFortyPercentIsRefused() throws IOException {
        assertFault(
                6,
                "glue_up.moisture",
                "'41 %' is not right: expected a moisture content from 0 % to 40 %",
                LEAST + "[glue_up]\nmoisture = \"41 %\"\n");
    }

    @Test
    void moistureAndHumidityTogetherAreRefused() throws IOException {
        assertFault(
                7,
                "made.moisture",
                "'10 %' is not right: expected either humidity (of air it has settled in) or moisture (as measured),"
                        + " not both",
                LEAST + "[made]\nhumidity = \"55 %\"\nmoisture = \"10 %\"\n");
    }

    @Test
    void aTemperatureNoWorkshopHasIsRefused() throws IOException {
        assertFault(
                6,
                "made.temperature",
                "expected a temperature from -30 C to 60 C; did you mean \"70 F\"?",
                LEAST + "[made]\ntemperature = \"70 C\"\n");
        assertFault(6, "made.temperature", "expected a temperature", LEAST + "[made]\ntemperature = \"-300 C\"\n");
    }

    @Test
    void aPlaceAndAClimateFileTogetherAreRefused() throws IOException {
        assertFault(
                3,
                "knife.climate",
                "either place or climate, not both",
                "[knife]\nplace = \"yakutsk\"\nclimate = \"a.csv\"\n" + LEAST);
    }

    @Test
    void aStackWithoutPartsOrTooLongIsRefused() throws IOException {
        assertFault(1, "parts", "at least one part", STACK);
        assertFault(
                10,
                "parts[2].length",
                "parts that add up to no more than 400 mm, not 450 mm",
                STACK
                        + "[[parts]]\nmaterial = \"a\"\nlength = \"250 mm\"\n[[parts]]\nmaterial = \"a\"\nlength = \"200 mm\"\n");
    }

    @Test
    void aTangThatDoesNotFitInsideTheStackIsRefused() throws IOException {
        assertFault(
                5,
                "tang.thickness",
                "less than the thickness of the handle, 10 mm",
                STACK
                        + "thickness = \"10 mm\"\n[grip]\nthickness = \"10 mm\"\n[[parts]]\nmaterial = \"a\"\nlength = \"9 mm\"\n");
    }

    @Test
    void tooManyLinersAreRefused() throws IOException {
        assertFault(13, "liners[9]", "at most 8 liners a side", LEAST + "[[liners]]\n".repeat(9));
    }

    @Test
    void anEmptyFileIsNamed() throws IOException {
        for (String text : new String[] {"", "\uFEFF", "\r\n", "# only a remark\n"}) {
            InvalidTableException fault = fault(text);
            assertTrue(fault.getMessage().startsWith(file() + ": is empty"), fault.getMessage());
        }
    }

    @Test
    void aFolderGivenAsAFileIsNamed() {
        InvalidTableException fault = assertThrows(InvalidTableException.class, () -> BuildFile.read(folder));
        assertEquals(folder + ": is a folder; expected a TOML file", fault.getMessage());
    }

    @Test
    void aFileThatIsNotThereIsNamed() {
        InvalidTableException fault = assertThrows(InvalidTableException.class, () -> BuildFile.read(file()));
        assertEquals(file() + ": is not there; expected a TOML file", fault.getMessage());
    }

    @Test
    void textThatIsNotUtf8IsNamedWithItsLine() throws IOException {
        Files.write(file(), (LEAST + "# \u00FCber\n").getBytes(StandardCharsets.ISO_8859_1));
        InvalidTableException fault = assertThrows(InvalidTableException.class, () -> BuildFile.read(file()));
        assertEquals(
                file()
                        + " line 5, column (text): 'byte 0xFC' is not right: expected UTF-8 text; save the file as UTF-8",
                fault.getMessage());
    }

    @Test
    void textThatEndsInsideACharacterIsNotUtf8() throws IOException {
        Files.write(file(), new byte[] {'#', '\n', (byte) 0xC3});
        InvalidTableException fault = assertThrows(InvalidTableException.class, () -> BuildFile.read(file()));
        assertTrue(fault.getMessage().contains("line 2"), fault.getMessage());
    }

    @Test
    void aFileOfMoreThanAMegabyteIsRefused() throws IOException {
        Files.write(file(), new byte[(1 << 20) + 1]);
        InvalidTableException fault = assertThrows(InvalidTableException.class, () -> BuildFile.read(file()));
        assertTrue(fault.getMessage().contains("larger than 1 MB"), fault.getMessage());
    }

    private void assertFault(int line, String key, String part, String text) throws IOException {
        InvalidTableException fault = fault(text);
        String start = file() + " line " + line + ", " + key + ": '";
        assertTrue(fault.getMessage().startsWith(start), fault.getMessage());
        assertTrue(fault.getMessage().contains(part), fault.getMessage());
    }

    private InvalidTableException fault(String text) throws IOException {
        Files.write(file(), text.getBytes(StandardCharsets.UTF_8));
        return assertThrows(InvalidTableException.class, () -> BuildFile.read(file()));
    }

    private Path file() {
        return folder.resolve("knife.toml");
    }
}
