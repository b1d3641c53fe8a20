package hafthold.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.knife.FullTangBuild;
import hafthold.knife.GlueLine;
import hafthold.knife.Grip;
import hafthold.knife.Liner;
import hafthold.knife.Order;
import hafthold.knife.Pin;
import hafthold.knife.Scales;
import hafthold.knife.Scales.Station;
import hafthold.knife.StackPart;
import hafthold.knife.StackTang;
import hafthold.knife.Tang;
import hafthold.knife.TangStackBuild;
import hafthold.knife.WorkState;
import hafthold.material.Cut;
import hafthold.quantity.Force;
import hafthold.quantity.Length;
import hafthold.quantity.MoistureContent;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.report.BenchStyle;
import hafthold.source.Finding;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BuildFileTest {
    private static final String LEAST = """
            [tang]
            width = "26 mm"
            [scales]
            material = "walnut-black"
            """;

    @TempDir
    private Path folder;

    @Test
    void theExampleGivesTheValuesWrittenInIt() throws IOException {
        BuildFile file = read(BuildFile.example());
        WorkState air = new WorkState.SettledAir(new RelativeHumidity(0.55), new Temperature(20));
        FullTangBuild expected = new FullTangBuild(
                new Order(
                        Optional.of("Walnut for the north"),
                        Optional.of("yakutsk"),
                        Optional.of("heated-home"),
                        Optional.empty(),
                        "good-new",
                        false),
                new Tang("steel-stainless-martensitic", mm(26), mm(4), mm(4)),
                new Scales(
                        "walnut-black",
                        Optional.of(Cut.FLAT),
                        Optional.of(Cut.FLAT),
                        mm(8),
                        mm(110),
                        List.of(new Station(mm(0), mm(26)), new Station(mm(60), mm(24)), new Station(mm(110), mm(26))),
                        mm(0.3),
                        UsualBuild.finishId()),
                List.of(),
                Optional.empty(),
                List.of(examplePin(20), examplePin(90)),
                new GlueLine("epoxy-two-part", mm(0.1)),
                air,
                air);
        assertEquals(expected, file.build());
        assertEquals(List.of("liners", "bolster.material"), subjects(file));
    }

    @Test
    void theStackExampleGivesTheValuesWrittenInIt() throws IOException {
        BuildFile file = read(BuildFile.stackExample());
        StackPart fibre = new StackPart("vulcanised-fibre", Optional.of(Cut.NONE), mm(0.8));
        StackPart brass = new StackPart("brass-free-cutting", Optional.of(Cut.NONE), mm(4));
        TangStackBuild expected = new TangStackBuild(
                new Order(
                        Optional.of("Stack for a dry house"),
                        Optional.of("duluth"),
                        Optional.of("heated-home"),
                        Optional.empty(),
                        "seasonal",
                        false),
                new StackTang(StackTang.Kind.THROUGH, "steel-carbon", mm(8), mm(4), new Force(0)),
                new Grip(mm(30), mm(22), UsualBuild.finishId()),
                List.of(
                        brass,
                        fibre,
                        new StackPart("leather-vegetable-tanned", Optional.of(Cut.NONE), mm(12)),
                        fibre,
                        new StackPart("antler-red-deer", Optional.of(Cut.NONE), mm(35)),
                        fibre,
                        new StackPart("maple-burl", Optional.of(Cut.BURL), mm(45)),
                        fibre,
                        brass),
                new WorkState.SettledAir(new RelativeHumidity(0.6), new Temperature(20)));
        assertEquals(expected, file.build());
        assertEquals(List.of(), file.findings());
        assertEquals(103.2, expected.length().millimetres(), 1e-9);
    }

    @Test
    void examplesAreMarkedAsInvented() {
        assertTrue(BuildFile.example().startsWith("# Invented example"));
        assertTrue(BuildFile.stackExample().startsWith("# Invented example"));
    }

    /** The lines that are commented out are part of what the example explains: they must work too. */
    @Test
    void theLinesLeftOutOfTheExampleWorkOnceTheyAreTakenIn() throws IOException {
        String taken = BuildFile.example()
                .replace("# [[liners]]", "[[liners]]")
                .replace("# material =", "material =")
                .replace("# thickness =", "thickness =")
                .replace("# [bolster]", "[bolster]");
        BuildFile file = read(taken);
        FullTangBuild build = (FullTangBuild) file.build();
        assertEquals(List.of(new Liner("vulcanised-fibre", mm(0.8))), build.liners());
        assertEquals(Optional.of("nickel-silver"), build.bolsterId());
        assertEquals(List.of(), file.findings());
    }

    @Test
    void everyKeyOfTheExamplesIsExplainedWhereItFirstStands() {
        Pattern line = Pattern.compile("(?:# )?([a-z_]+) = (.*)");
        for (String example : List.of(BuildFile.example(), BuildFile.stackExample())) {
            Set<String> seen = new TreeSet<>();
            String table = "";
            for (String text : example.lines().toList()) {
                table = text.matches("(# )?\\[.*") ? text.replaceAll("[# \\[\\]]", "") : table;
                Matcher key = line.matcher(text);
                boolean stateOfWork = table.equals("glue_up") || table.equals("made");
                if (key.matches() && !stateOfWork && seen.add(table + "." + key.group(1))) {
                    assertTrue(key.group(2).contains("#") || text.startsWith("# "), text);
                }
            }
            assertTrue(seen.size() > 12, seen.toString());
        }
    }

    @Test
    void aFileThatSaysTheLeastListsExactlyTheDefaultsTaken() throws IOException {
        assertEquals(
                List.of(
                        "knife.build",
                        "knife.work",
                        "knife.kitchen",
                        "tang.steel",
                        "tang.thickness",
                        "tang.butt_thickness",
                        "scales.cut_left",
                        "scales.cut_right",
                        "scales.thickness",
                        "scales.length",
                        "scales.profile",
                        "scales.easing",
                        "scales.finish",
                        "liners",
                        "bolster.material",
                        "pins",
                        "glue.adhesive",
                        "glue.thickness",
                        "made.temperature",
                        "made.humidity",
                        "glue_up.temperature",
                        "glue_up.humidity"),
                subjects(read(LEAST)));
    }

    @Test
    void aStackThatSaysTheLeastListsExactlyTheDefaultsTaken() throws IOException {
        assertEquals(
                List.of(
                        "knife.work",
                        "knife.kitchen",
                        "tang.kind",
                        "tang.steel",
                        "tang.thickness",
                        "tang.preload",
                        "grip.width",
                        "grip.thickness",
                        "grip.finish",
                        "parts[1].cut",
                        "made.temperature",
                        "made.humidity"),
                subjects(read("""
                        [knife]
                        build = "tang-stack"
                        [tang]
                        width = "8 mm"
                        [[parts]]
                        material = "antler"
                        length = "35 mm"
                        """)));
    }

    /** Takes one line at a time out of the example. */
    @Test
    void everyLineLeftOutOfTheExampleAddsItsOwnFinding() throws IOException {
        List<String> lines = BuildFile.example().lines().toList();
        Set<String> silent = Set.of("name", "place", "setting");
        String table = "";
        int pins = 0;
        int tried = 0;
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            if (line.startsWith("[[")) {
                table = "pins[" + ++pins + "].";
            } else if (line.startsWith("[")) {
                table = line.replaceAll("[\\[\\]]", "") + ".";
            }
            Matcher key = Pattern.compile("([a-z_]+) = \\S.*[^\\[]").matcher(line);
            boolean required = line.startsWith("material") || line.startsWith("width");
            if (!key.matches() || key.group(1).equals("profile") || required) {
                continue;
            }
            String rest = String.join("\n", lines.subList(0, i)) + "\n"
                    + String.join("\n", lines.subList(i + 1, lines.size()));
            Set<String> added = new TreeSet<>(subjects(read(rest)));
            added.removeAll(Set.of("liners", "bolster.material"));
            String subject = table + key.group(1);
            Set<String> expected = subject.equals("scales.cut")
                    ? Set.of("scales.cut_left", "scales.cut_right")
                    : silent.contains(key.group(1)) ? Set.of() : Set.of(subject);
            assertEquals(expected, added, subject);
            tried++;
        }
        assertTrue(tried > 30, "lines tried: " + tried);
    }

    @Test
    void everyDefaultIsTakenAsItsFindingSays() throws IOException {
        BuildFile file = read(LEAST);
        FullTangBuild build = (FullTangBuild) file.build();
        assertTrue(file.findings().stream().allMatch(finding -> finding.kind() == Finding.Kind.DEFAULT));
        assertEquals(
                "The file says nothing of the thickness of a scale, so 8 mm is taken.", text(file, "scales.thickness"));
        assertEquals(mm(8), build.scales().thickness());
        assertEquals(
                "The file says nothing of pins, so a pair of 6 mm brass-free-cutting pins in 6.05 mm holes with hard"
                        + " epoxy is taken.",
                text(file, "pins"));
        assertEquals(2, build.pins().size());
        assertEquals(19.8, build.pins().get(0).along().millimetres(), 1e-9);
        assertEquals(90.2, build.pins().get(1).along().millimetres(), 1e-9);
        assertEquals(6.05, build.pins().get(0).hole().millimetres(), 1e-9);
        assertEquals(
                "The file says nothing of the humidity at final sanding, so stock settled at 50 % RH is taken.",
                text(file, "made.humidity"));
        assertEquals(new WorkState.SettledAir(new RelativeHumidity(0.5), new Temperature(20)), build.made());
        assertEquals(List.of(new Station(mm(0), mm(26))), build.scales().profile());
        assertEquals(Optional.empty(), build.scales().cutLeft());
    }

    @Test
    void glueUpIsTakenAsFinalSandingWhereNothingIsSaidOfIt() throws IOException {
        FullTangBuild settled = full(LEAST + "[made]\nhumidity = \"42 %\"\ntemperature = \"24 C\"\n");
        assertEquals(settled.made(), settled.glueUp());
        FullTangBuild measured = full(LEAST + "[made]\nmoisture = \"7.5 %\"\n[glue_up]\ntemperature = \"68 F\"\n");
        assertEquals(
                new WorkState.MeasuredMoisture(new MoistureContent(0.075), Temperature.parse("68 F")),
                measured.glueUp());
    }

    @Test
    void twoScalesOfDifferentCutAreKeptApart() throws IOException {
        FullTangBuild build = full(LEAST + "cut_left = \"flat\"\ncut_right = \"quarter\"\n");
        assertEquals(Optional.of(Cut.FLAT), build.scales().cutLeft());
        assertEquals(Optional.of(Cut.QUARTER), build.scales().cutRight());
    }

    @Test
    void aHandleThatIsOnlyGluedHasNoPins() throws IOException {
        BuildFile file = read("pins = []\n" + LEAST);
        assertEquals(List.of(), ((FullTangBuild) file.build()).pins());
        assertTrue(!subjects(file).contains("pins"));
    }

    @Test
    void inchesAndFractionsAreReadExactly() throws IOException {
        FullTangBuild build = full(LEAST.replace("26 mm", "1 in") + "thickness = \"5/16 in\"\n");
        assertEquals(0.0254, build.tang().width().metres(), 0);
        assertEquals(7.9375, build.scales().thickness().millimetres(), 1e-12);
    }

    @Test
    void aClimateFileIsSoughtBesideTheBuildFile() throws IOException {
        FullTangBuild build = full("[knife]\nclimate = \"logger.csv\"\n" + LEAST);
        assertEquals(
                Optional.of(folder.toAbsolutePath().resolve("logger.csv")),
                build.order().climateFile());
    }

    @Test
    void aByteOrderMarkAndCrlfAreSimplyRead() throws IOException {
        assertEquals(read(LEAST), read("\uFEFF" + LEAST.replace("\n", "\r\n")));
    }

    @Test
    void aNutIsDrawnUpWithAForceOrSnug() throws IOException {
        String stack = BuildFile.stackExample();
        TangStackBuild drawn = (TangStackBuild)
                read(stack.replace("preload = \"snug\"", "preload = \"500 N\"")).build();
        assertEquals(new Force(500), drawn.tang().preload());
    }

    private static Pin examplePin(double along) {
        return new Pin(Pin.Kind.SOLID, "brass-free-cutting", mm(6), mm(6.05), mm(along), mm(0), Pin.Fill.HARD_EPOXY);
    }

    private FullTangBuild full(String text) throws IOException {
        return (FullTangBuild) read(text).build();
    }

    private BuildFile read(String text) throws IOException {
        Path file = folder.resolve("knife.toml");
        Files.write(file, text.getBytes(StandardCharsets.UTF_8));
        return BuildFile.read(file);
    }

    private static List<String> subjects(BuildFile file) {
        return file.findings().stream().map(Finding::subject).toList();
    }

    private static String text(BuildFile file, String subject) {
        return file.findings().stream()
                .filter(finding -> finding.subject().equals(subject))
                .map(finding -> BenchStyle.ENGLISH.tell(finding.message()))
                .findFirst()
                .orElseThrow();
    }

    private static Length mm(double millimetres) {
        return Length.ofMillimetres(millimetres);
    }
}
