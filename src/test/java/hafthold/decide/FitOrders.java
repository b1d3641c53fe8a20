package hafthold.decide;

import hafthold.air.AirSeries;
import hafthold.air.Outdoors;
import hafthold.knife.Knife;
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
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/** Invented orders and airs for tests of a whole fit. */
final class FitOrders {
    static final TableSet TABLES = TableSet.builtIn();
    static final MaterialLibrary LIBRARY = MaterialLibrary.read(TABLES);
    private static final int HOURS = 8760;

    private FitOrders() {}

    /** Full tang, 26 mm wide, 8 mm scales, settled at a humidity at 20 C; pins as lines of the file. */
    static Knife fullTang(String material, String cut, int lengthMillimetres, int madePercent, String pins) {
        return fullTang(material, cut, lengthMillimetres, 8, madePercent, pins);
    }

    /** Full tang, 26 mm wide, settled at a humidity at 20 C; pins as lines of the file. */
    static Knife fullTang(
            String material, String cut, int lengthMillimetres, int thickMillimetres, int madePercent, String pins) {
        return fullTang(material, cut, lengthMillimetres, thickMillimetres, madePercent, pins, "good-new");
    }

    /** The same for a class of work. */
    static Knife fullTang(
            String material,
            String cut,
            int lengthMillimetres,
            int thickMillimetres,
            int madePercent,
            String pins,
            String work) {
        return knife(String.join(
                "\n",
                pins.isEmpty() ? "pins = []" : "",
                "[knife]",
                "work = \"" + work + "\"",
                "[tang]",
                "width = \"26 mm\"",
                "[scales]",
                "material = \"" + material + "\"",
                "cut = \"" + cut + "\"",
                "length = \"" + lengthMillimetres + " mm\"",
                "thickness = \"" + thickMillimetres + " mm\"",
                "[made]",
                "humidity = \"" + madePercent + " %\"",
                pins));
    }

    /** Two pins of a diameter in holes so much larger, so filled. */
    static String pins(double diameter, double ring, String fill, int first, int second) {
        return pin(diameter, ring, fill, first) + pin(diameter, ring, fill, second);
    }

    private static String pin(double diameter, double ring, String fill, int along) {
        return String.join(
                "\n",
                "[[pins]]",
                "diameter = \"" + diameter + " mm\"",
                "hole = \"" + (diameter + ring) + " mm\"",
                "fill = \"" + fill + "\"",
                "along = \"" + along + " mm\"",
                "");
    }

    static Knife knife(String text) {
        return knife(text, TABLES, LIBRARY);
    }

    static Knife knife(String text, TableSet tables, MaterialLibrary library) {
        try {
            Path file = Files.createTempFile("knife", ".toml");
            try {
                Files.writeString(file, text);
                return KnifeFile.read(file, tables, library).knife();
            } finally {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static KnifeFit fit(Knife knife, Destination destination) {
        return new KnifeJudge(LimitTable.read(TABLES), Offer.none()).fit(knife, destination, List.of());
    }

    /** The same air all year. */
    static Destination steady(double celsius, double humidity) {
        return air(celsius, hour -> humidity);
    }

    /** Humidity that swings over the year, one end in January, the other in July. */
    static Destination swinging(double celsius, double january, double july) {
        double middle = (january + july) / 2;
        double half = (january - july) / 2;
        return air(celsius, hour -> middle + half * Math.cos(2 * Math.PI * (hour / HOURS - 1 / 24.0)));
    }

    private static Destination air(double celsius, DoubleUnaryOperator humidity) {
        double[] temperature =
                IntStream.range(0, HOURS).mapToDouble(hour -> celsius).toArray();
        double[] moisture = IntStream.range(0, HOURS)
                .mapToDouble(hour -> humidity.applyAsDouble(hour))
                .toArray();
        return Destination.recorded(
                "invented", "invented air", Outdoors.usual(), new AirSeries(3600, temperature, moisture), 0.03);
    }
}
