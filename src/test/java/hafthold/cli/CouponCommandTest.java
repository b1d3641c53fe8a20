package hafthold.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.material.Axis;
import hafthold.material.Material;
import hafthold.material.WaterUptake;
import hafthold.source.Evidence;
import hafthold.table.MaterialLibrary;
import hafthold.table.TableSet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CouponCommandTest {
    private static final String LEAST = """
            [[coupon]]
            material = "walnut-black"
            width = "60 mm"
            thickness = "6 mm"
            length = "120 mm"
            [[coupon.reading]]
            humidity = "33 %"
            width = "60.00 mm"
            [[coupon.reading]]
            humidity = "75 %"
            width = "61.17 mm"
            """;

    @TempDir
    private Path folder;

    private String file(String text) throws IOException {
        return Files.writeString(folder.resolve("coupons.toml"), text).toString();
    }

    private Bench coupon(String text, String... more) throws IOException {
        String[] all = new String[4 + more.length];
        System.arraycopy(new String[] {"coupon", file(text), "--samples", "1000"}, 0, all, 0, 4);
        System.arraycopy(more, 0, all, 4, more.length);
        return Bench.run(all);
    }

    @Test
    void theExampleIsAcceptedAsItIsPrintedAndWritesItsReport() throws IOException {
        Path report = folder.resolve("report");
        Bench coupon = coupon(Bench.run("coupon", "--example").out(), "--out", report.toString());
        assertEquals(ExitCode.DONE, coupon.code(), coupon.err());
        assertTrue(coupon.out().startsWith("Coupons of black walnut"), coupon.out());
        assertTrue(coupon.out().contains("Were we right?"), coupon.out());
        assertTrue(coupon.err().contains("report: " + report.resolve("coupon.html")), coupon.err());
        assertTrue(coupon.err().contains("not in an oven where food is made"), coupon.err());
        assertTrue(Files.readString(report.resolve("coupon.txt")).startsWith(coupon.out()));
        for (String name : new String[] {
            "coupon.html", "coupon.json", "coupon.csv", "coupon-figures-1.svg", "properties.csv", "materials.csv"
        }) {
            assertTrue(Files.size(report.resolve(name)) > 200, name);
        }
    }

    /** A strip, two airs, a caliper: no more is needed. What was taken is said. */
    @Test
    void aStripAndTwoAirsAreEnough() throws IOException {
        Bench coupon = coupon(LEAST);
        assertEquals(ExitCode.DONE, coupon.code(), coupon.err());
        String flat = coupon.out().replaceAll("\\s+", " ");
        assertTrue(flat.startsWith("Coupons of black walnut Use your own figures for black walnut"), flat);
        for (String taken : new String[] {"5 points of humidity", "0.05 mm is taken", "flat-sawn", "one at rest"}) {
            assertTrue(flat.contains(taken), taken);
        }
    }

    /** Flat and quarter strips by other figures than the book's, weighed and dried. */
    private static String bothStrips(String material) {
        WaterUptake water =
                MaterialLibrary.read(TableSet.builtIn()).plain(material).water().orElseThrow();
        double low = water.isotherm().moistureFraction(0.33, 20);
        double high = water.isotherm().moistureFraction(0.75, 20);
        StringBuilder text = new StringBuilder();
        for (String cut : new String[] {"flat", "quarter"}) {
            double strain = 1.1 * water.swelling().strain(cut.equals("flat") ? Axis.ACROSS : Axis.THROUGH, low, high);
            text.append(String.format(
                    Locale.ROOT, """
                    [[coupon]]
                    name = "%s strip"
                    material = "%s"
                    own_name = "my plank"
                    cut = "%s"
                    end_grain_seen = true
                    width = "60 mm"
                    thickness = "8 mm"
                    length = "120 mm"
                    caliper = "0.01 mm"
                    balance = "0.01 g"
                    hygrometer = "1 %%"
                    oven_dry = "30.00 g"
                    [[coupon.reading]]
                    on = 2026-01-10
                    humidity = "33 %%"
                    width = "60.00 mm"
                    weight = "%.2f g"
                    [[coupon.reading]]
                    on = 2026-02-10
                    humidity = "75 %%"
                    width = "%.2f mm"
                    weight = "%.2f g"
                    """, cut, material, cut, 30 * (1 + low), 60 * (1 + strain), 30 * (1 + high)));
        }
        return text.toString();
    }

    private static double[] edge(String json) {
        Matcher edge = Pattern.compile(
                        "\"edge_shy_mm\": \\{\\s*\"low\": ([0-9.E-]+),\\s*\"value\": ([0-9.E-]+),\\s*\"high\": ([0-9.E-]+)")
                .matcher(json);
        assertTrue(edge.find(), json);
        return new double[] {
            Double.parseDouble(edge.group(1)), Double.parseDouble(edge.group(2)), Double.parseDouble(edge.group(3))
        };
    }

    /** The whole way: coupons of a wood of no table, tables of one's own, a comparison with them: measured, and surer. */
    @Test
    void compareTakesTheTablesAndIsSurer() throws IOException {
        Path own = folder.resolve("own");
        String wood = "tropical-dense:bloodwood";
        assertEquals(
                ExitCode.DONE, coupon(bothStrips(wood), "--out", own.toString()).code());
        Bench book = compare(wood);
        Bench measured = compare("my-plank", "--tables", own.toString());
        assertEquals(ExitCode.DONE, measured.code(), measured.err());
        assertTrue(measured.out().contains("\"evidence\": \"measured\""), measured.out());
        assertFalse(book.out().contains("\"evidence\": \"measured\""));
        double[] before = edge(book.out());
        double[] after = edge(measured.out());
        assertTrue(
                (after[2] - after[0]) / after[1] < 0.85 * (before[2] - before[0]) / before[1],
                before[0] + " " + before[2] + " became " + after[0] + " " + after[2]);
        String sheet =
                Bench.run("materials", "my-plank", "--tables", own.toString()).out();
        assertTrue(sheet.contains("own-coupons"), sheet);
        assertTrue(sheet.contains("2026-01-10 to 2026-02-10"), sheet);
    }

    private static Bench compare(String material, String... more) {
        List<String> words = new ArrayList<>(
                List.of("compare", "--place", "phoenix", "--material", material, "--cut", "flat", "--format", "json"));
        words.addAll(List.of(more));
        return Bench.run(words.toArray(String[]::new));
    }

    /** Rows give back the figures that were measured, through the library that every command reads. */
    @Test
    void rowsGiveBackWhatWasMeasured() throws IOException {
        Path own = folder.resolve("own");
        assertEquals(
                ExitCode.DONE,
                coupon(bothStrips("walnut-black").replace("own_name = \"my plank\"\n", ""), "--out", own.toString())
                        .code());
        Material book = MaterialLibrary.read(TableSet.builtIn()).plain("walnut-black");
        Material measured = MaterialLibrary.read(TableSet.with(own)).plain("walnut-black");
        assertEquals(Evidence.MEASURED, measured.evidence());
        for (Axis axis : new Axis[] {Axis.ACROSS, Axis.THROUGH}) {
            double factor = measured.water().orElseThrow().swelling().perMoisture(axis, 0.1)
                    / book.water().orElseThrow().swelling().perMoisture(axis, 0.1);
            assertEquals(1.1, factor, 0.025, axis.word());
        }
    }

    /** Stabilised stock becomes a material of the shop's own that every command knows. */
    @Test
    void stabilisedStockBecomesAMaterialOfItsOwn() throws IOException {
        Path own = folder.resolve("own");
        Bench coupon = coupon(
                LEAST.replace("walnut-black", "walnut-black+lumen-resin").replace("61.17", "61.05"),
                "--out",
                own.toString());
        assertEquals(ExitCode.DONE, coupon.code(), coupon.err());
        Bench compare = Bench.run(
                "compare",
                "--place",
                "oslo",
                "--tables",
                own.toString(),
                "--material",
                "own-walnut-black-lumen-resin",
                "--format",
                "csv",
                "--samples",
                "1");
        assertEquals(ExitCode.DONE, compare.code(), compare.err());
        MaterialLibrary library = MaterialLibrary.read(TableSet.with(own));
        Material measured = library.plain("own-walnut-black-lumen-resin");
        Material treated = (Material) library.find("walnut-black+lumen-resin");
        assertEquals(
                treated.water().orElseThrow().isotherm().moistureFraction(0.65, 20),
                measured.water().orElseThrow().isotherm().moistureFraction(0.65, 20),
                0.003);
        assertEquals(
                treated.water().orElseThrow().dryDensity().value(),
                measured.water().orElseThrow().dryDensity().value(),
                1);
    }

    @Test
    void checkAnswersFourWhereReadingsAndBookDoNotGoTogether() throws IOException {
        assertEquals(ExitCode.DONE, coupon(LEAST, "--check").code());
        Path own = folder.resolve("own");
        Bench odd = coupon(LEAST.replace("61.17", "58.0"), "--check", "--out", own.toString());
        assertEquals(ExitCode.ADVERSE_VERDICT, odd.code());
        assertTrue(odd.out().replaceAll("\\s+", " ").contains("are two readings swapped?"), odd.out());
        assertFalse(Files.exists(own.resolve("properties.csv")), "what does not go together makes no tables");
    }

    @Test
    void outcomesAloneAreEnough() throws IOException {
        Bench coupon = coupon("""
                [[outcome]]
                low = "0.1 mm proud"
                predicted = "0.14 mm proud"
                high = "0.2 mm proud"
                measured = "0.16 mm proud"
                """);
        assertEquals(ExitCode.DONE, coupon.code(), coupon.err());
        assertTrue(coupon.out().contains("this proves nothing yet"), coupon.out());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "60.00 mm | 60.00    | line 8, coupon[1].reading[1].width: 'the unit is missing'|",
                "33 %     | 33       | line 7, coupon[1].reading[1].humidity: 'the unit is missing'|",
                "60.00 mm | 60.00 in | line 8, coupon[1].reading[1].width: '60.00 in'| did you mean \"60.00 mm\"",
                "33 %     | 330 %    | line 7, coupon[1].reading[1].humidity: '330 %'| from 0 to 100 %",
                "length   | lenght   | line 5, coupon[1].lenght: 'lenght'| length",
                "61.17 mm | 6.117 mm | line 11, coupon[1].reading[2].width: '6.117 mm'| near the width of the coupon, 60 mm",
                "walnut-black | walnut-blak | walnut-blak| walnut-black",
                "walnut-black | glass-bead  | glass-bead|",
                "walnut-black | brass-free-cutting | takes up no water|",
                "walnut-black | hybrid-maple-burl-epoxy | several side by side|"
            })
    void faultsAreNamedWithWhatWouldBeRight(String right, String wrong, String said, String hint) throws IOException {
        Bench coupon = coupon(LEAST.replaceFirst(Pattern.quote(right), wrong));
        assertTrue(coupon.code() == 3 || coupon.code() == ExitCode.WRONG_USAGE, coupon.code() + coupon.err());
        String flat = coupon.err().replaceAll("\\s+", " ");
        assertTrue(flat.contains(said.replace("'the unit", "the unit").replace("missing'", "missing")), flat);
        if (hint != null) {
            assertTrue(flat.contains(hint), flat);
        }
    }

    @Test
    void aWeightBelowTheDryOneIsAFault() throws IOException {
        Bench coupon = coupon(LEAST.replace("length = \"120 mm\"", "length = \"120 mm\"\noven_dry = \"20 g\"")
                .replace("width = \"60.00 mm\"", "weight = \"19 g\""));
        assertEquals(3, coupon.code());
        assertTrue(coupon.err().contains("no less than oven_dry"), coupon.err());
    }

    @Test
    void tooFewDrawsAreNotTaken() throws IOException {
        Bench coupon = Bench.run("coupon", file(LEAST), "--samples", "100");
        assertEquals(ExitCode.WRONG_USAGE, coupon.code());
        assertTrue(coupon.err().contains("500 to 10000"), coupon.err());
    }
}
