package hafthold.report;

import hafthold.air.AirSeries;
import hafthold.air.Outdoors;
import hafthold.decide.FullTangFit;
import hafthold.decide.KnifeFit;
import hafthold.decide.KnifeJudge;
import hafthold.decide.Offer;
import hafthold.decide.StackFit;
import hafthold.knife.FitLimits;
import hafthold.simulate.Destination;
import hafthold.table.KnifeFile;
import hafthold.table.LimitTable;
import hafthold.table.MaterialLibrary;
import hafthold.table.TableSet;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;

/** Invented knives in an invented air, reckoned in full. */
final class InventedKnives {
    static final TableSet TABLES = TableSet.builtIn();
    static final List<FitLimits> LIMITS = LimitTable.read(TABLES);
    private static final MaterialLibrary LIBRARY = MaterialLibrary.read(TABLES);
    private static final int HOURS = 8760;
    private static final double DRY = 0.15;
    private static final double DAMP = 0.6;
    private static final String PINS = """
            [[pins]]
            diameter = "6 mm"
            hole = "6.05 mm"
            along = "20 mm"
            [[pins]]
            diameter = "4 mm"
            hole = "4.1 mm"
            along = "90 mm"
            fill = "open"
            """;

    /** Flat-sawn walnut with two unlike pins. */
    static final FullTangFit WALNUT = walnut("Invented \"order\"");

    /** One scale flat, the other quarter, over a liner, glued only. */
    static final FullTangFit ODD_PAIR = (FullTangFit) fit("""
            pins = []
            [knife]
            name = "Odd pair"
            [tang]
            width = "26 mm"
            [scales]
            material = "walnut-black"
            cut_left = "flat"
            cut_right = "quarter"
            [[liners]]
            material = "vulcanised-fibre"
            thickness = "0.8 mm"
            """);

    /** Glass laminate, which hardly moves. */
    static final FullTangFit GLASS = (FullTangFit)
            fit("[tang]\nwidth = \"26 mm\"\n[scales]\nmaterial = \"glass-epoxy-g10\"\ncut = \"none\"\n" + PINS);

    /** Leather and burl between brass. */
    static final StackFit STACK =
            (StackFit) fit("[knife]\nname = \"Invented stack\"\nbuild = \"tang-stack\"\nwork = \"seasonal\"\n"
                    + "[tang]\nkind = \"through\"\nwidth = \"8 mm\"\nthickness = \"4 mm\"\n"
                    + "[grip]\nwidth = \"30 mm\"\nthickness = \"22 mm\"\n" + part("brass-free-cutting", "none", 4)
                    + part("leather-vegetable-tanned", "none", 20) + part("maple-burl", "burl", 70)
                    + part("brass-free-cutting", "none", 6));

    private InventedKnives() {}

    /** The walnut under another name. */
    static FullTangFit walnut(String name) {
        return (FullTangFit) fit("[knife]\nname = '" + name + "'\n[tang]\nwidth = \"26 mm\"\n"
                + "[scales]\nmaterial = \"walnut-black\"\ncut = \"flat\"\n[made]\nhumidity = \"55 %\"\n" + PINS);
    }

    private static String part(String material, String cut, int millimetres) {
        return "[[parts]]\nmaterial = \"" + material + "\"\ncut = \"" + cut + "\"\nlength = \"" + millimetres
                + " mm\"\n";
    }

    private static KnifeFit fit(String text) {
        try {
            Path file = Files.createTempFile("knife", ".toml");
            try {
                Files.writeString(file, text);
                KnifeFile read = KnifeFile.read(file, TABLES, LIBRARY);
                return new KnifeJudge(LIMITS, Offer.none()).fit(read.knife(), air(), read.findings());
            } finally {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Destination air() {
        double[] temperature = new double[HOURS];
        java.util.Arrays.fill(temperature, 20);
        double[] humidity = IntStream.range(0, HOURS)
                .mapToDouble(hour -> (DRY + DAMP) / 2
                        - (DAMP - DRY) / 2 * Math.cos(2 * Math.PI * (hour / (double) HOURS - 1 / 24.0)))
                .toArray();
        return Destination.recorded(
                "invented", "Invented <air>", Outdoors.usual(), new AirSeries(3600, temperature, humidity), 0.03);
    }
}
