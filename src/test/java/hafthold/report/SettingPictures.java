package hafthold.report;

import hafthold.air.AirSeries;
import hafthold.air.CommonYear;
import hafthold.air.MonthlyNormals;
import hafthold.air.Place;
import hafthold.air.Setting;
import hafthold.report.chart.LimitMark;
import hafthold.report.chart.YearChart;
import hafthold.report.chart.YearLine;
import hafthold.table.PlaceTable;
import hafthold.table.TableSet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Draws every setting against outdoor air in four climates and prints the table of indoor years, as
 * {@code src/site/markdown/settings.md} shows them:
 *
 * <pre>mvn -q test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=hafthold.report.SettingPictures</pre>
 */
final class SettingPictures {
    /** Where the pictures lie. */
    static final Path FOLDER = Path.of("src/site/images");

    /** Tropical, desert, arctic and heated, maritime. */
    static final List<String> PLACES = List.of("singapore", "phoenix", "yakutsk", "london");

    private static final int DAYS_TOGETHER = 5;
    private static final List<Group> GROUPS = List.of(
            new Group(
                    "homes",
                    "rooms",
                    List.of("outdoors", "heated-home", "uncooled-home", "air-conditioned", "kitchen")),
            new Group("shelters", "shed, boat and car", List.of("outdoors", "shed", "boat", "vehicle")),
            new Group("kept", "sheath and case", List.of("outdoors", "uncooled-home", "sheath", "display-case")));
    private static final List<String> WARMTH =
            List.of("outdoors", "uncooled-home", "air-conditioned", "shed", "vehicle");

    private SettingPictures() {}

    private record Group(String id, String words, List<String> settings) {}

    /** Writes the pictures, prints the table; takes no arguments. */
    public static void main(String[] args) throws IOException {
        for (String id : PLACES) {
            Place place = PlaceTable.read(TableSet.builtIn()).find(id);
            for (Group group : GROUPS) {
                write(id + "-" + group.id(), chart(place, group.settings(), group.words(), true));
            }
            write(id + "-warmth", chart(place, WARMTH, "rooms, shed and car", false));
        }
        table().forEach(System.out::println);
    }

    private static void write(String name, YearChart chart) throws IOException {
        Files.writeString(FOLDER.resolve("setting-" + name + ".svg"), chart.fileSvg());
    }

    static YearChart chart(Place place, List<String> settings, String words, boolean humidity) {
        String what = humidity ? "Humidity" : "Temperature";
        return new YearChart(
                "setting-" + place.id(),
                what + " in " + place.name() + ": " + words,
                what + " through the year outdoors and in " + words + ", means of " + DAYS_TOGETHER + " days.",
                humidity ? "% relative humidity" : "°C",
                settings.stream()
                        .map(id -> YearLine.of(
                                Setting.find(id).orElseThrow().name(),
                                days(Setting.find(id).orElseThrow().inside(place.referenceYear()), humidity)))
                        .toList(),
                humidity ? List.of(0.0, 100.0) : List.of(),
                List.<LimitMark>of(),
                Optional.empty(),
                DAYS_TOGETHER,
                BenchStyle.ENGLISH);
    }

    private static List<Double> days(AirSeries air, boolean humidity) {
        List<Double> days = new ArrayList<>();
        for (int day = 0; day < CommonYear.DAYS; day++) {
            double sum = 0;
            for (int hour = 24 * day; hour < 24 * day + 24; hour++) {
                sum += humidity ? 100 * air.relativeHumidityFraction(hour) : air.temperatureCelsius(hour);
            }
            days.add(sum / 24);
        }
        return days;
    }

    /** Rows of the table of indoor years: lowest, mean and highest of the hours, and the monthly means of humidity. */
    static List<String> table() {
        List<String> rows = new ArrayList<>();
        for (String[] where : new String[][] {
            {"yakutsk", "heated-home"},
            {"singapore", "air-conditioned"},
            {"singapore", "uncooled-home"},
            {"phoenix", "air-conditioned"},
            {"phoenix", "uncooled-home"},
            {"london", "heated-home"},
            {"london", "shed"},
            {"london", "boat"},
        }) {
            Place place = PlaceTable.read(TableSet.builtIn()).find(where[0]);
            Setting setting = Setting.find(where[1]).orElseThrow();
            rows.add(row(place.name() + ", " + setting.name(), setting.inside(place.referenceYear())));
        }
        return rows;
    }

    private static String row(String name, AirSeries air) {
        double[] celsius = new double[air.size()];
        double[] percent = new double[air.size()];
        for (int i = 0; i < air.size(); i++) {
            celsius[i] = air.temperatureCelsius(i);
            percent[i] = 100 * air.relativeHumidityFraction(i);
        }
        StringBuilder row = new StringBuilder("| " + name + " | " + swing(celsius) + " | " + swing(percent) + " |");
        MonthlyNormals.of(air)
                .relativeHumidityFraction()
                .forEach(
                        month -> row.append(' ').append(Math.round(100 * month)).append(" |"));
        return row.toString();
    }

    private static String swing(double[] values) {
        java.util.DoubleSummaryStatistics span = java.util.Arrays.stream(values).summaryStatistics();
        return String.format(Locale.ROOT, "%.0f / %.0f / %.0f", span.getMin(), span.getAverage(), span.getMax());
    }
}
