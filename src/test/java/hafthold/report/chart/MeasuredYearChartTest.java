package hafthold.report.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.report.BenchStyle;
import hafthold.report.chart.MeasuredYearChart.Reading;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Words in a year with readings stand where they can be read: no line of the year runs through them, and none over another. */
class MeasuredYearChartTest {
    private static final List<String> WORDS = List.of("0.20 shy", "good new 0.06", "seasonal 0.12", "good new 0.1");

    @ParameterizedTest
    @EnumSource(SheetFormat.class)
    void noLineRunsThroughWords(SheetFormat format) {
        for (int shift = 0; shift < 365; shift += 30) {
            MeasuredYearChart chart = chart(shift);
            List<Element> words = Jsoup.parse(chart.svg(format), "", Parser.xmlParser()).select("text").stream()
                    .filter(text -> WORDS.contains(text.text()))
                    .toList();
            assertEquals(WORDS.size(), words.size());
            for (Element text : words) {
                assertClear(chart.year(), format, text, shift);
                words.stream()
                        .filter(other -> !other.text().equals(text.text()))
                        .forEach(other -> assertApart(format, text, other));
            }
        }
    }

    private static void assertClear(YearChart year, SheetFormat format, Element text, int shift) {
        YearLayout layout = year.layout(format);
        double left = number(text, "x");
        double right = left + format.widthOf(text.text());
        double base = number(text, "y");
        List<Double> daily = year.lines().get(0).daily();
        for (int day = 0; day < daily.size(); day++) {
            double x = layout.x(day + 0.5);
            double y = layout.y(year.span(), daily.get(day));
            boolean isThrough = x > left && x < right && y > base - format.fontSize() && y < base;
            assertTrue(!isThrough, text.text() + " on day " + day + ", shifted by " + shift + ", " + format);
        }
    }

    private static void assertApart(SheetFormat format, Element one, Element other) {
        double left = Math.max(number(one, "x"), number(other, "x"));
        double right = Math.min(
                number(one, "x") + format.widthOf(one.text()), number(other, "x") + format.widthOf(other.text()));
        boolean isSameHeight = Math.abs(number(one, "y") - number(other, "y")) < format.fontSize();
        assertTrue(!isSameHeight || left >= right, one.text() + " over " + other.text());
    }

    private static double number(Element text, String key) {
        return Double.parseDouble(text.attr(key));
    }

    /** A year like that of walnut in a heated home, turned through the months, and one reading in February. */
    private static MeasuredYearChart chart(int shift) {
        List<Double> daily = IntStream.range(0, 365)
                .mapToObj(day -> -0.02 - 0.1 * Math.cos(2 * Math.PI * (day - 20 - shift) / 365))
                .toList();
        YearChart year = new YearChart(
                "course",
                "t",
                "d",
                "mm",
                List.of(new YearLine(
                        "as usual",
                        daily,
                        daily.stream().map(value -> value - 0.04).toList(),
                        daily.stream().map(value -> value + 0.04).toList(),
                        OptionalDouble.empty())),
                List.of(-0.26, -0.14),
                List.of(
                        new LimitMark("good new 0.06", -0.06),
                        new LimitMark("good new 0.1", 0.1),
                        new LimitMark("seasonal 0.12", -0.12)),
                Optional.of(new ZeroLine("flush", "shy", "proud")),
                1,
                BenchStyle.ENGLISH);
        return new MeasuredYearChart(year, List.of(new Reading(39, -0.2, 0.06, "0.20 shy")));
    }
}
