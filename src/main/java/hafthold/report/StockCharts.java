package hafthold.report;

import hafthold.decide.StockAnswer;
import hafthold.decide.StockMoisture;
import hafthold.decide.StockMoisture.Day;
import hafthold.knife.StockReading;
import hafthold.quantity.Band;
import hafthold.report.chart.CourseChart;
import hafthold.report.chart.LimitMark;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The picture of a block: moisture of the whole and of its core, from the day it was bought to the day it is ready.
 *
 * @param style language and units
 */
record StockCharts(BenchStyle style) {
    private static final int DATES = 5;
    private static final double PERCENT = 100;

    /** Its course, for a block whose moisture was judged. */
    ReportChart course(StockAnswer answer, int number) {
        StockMoisture moisture = answer.moisture().orElseThrow();
        List<Day> past = moisture.past();
        List<Day> ahead = moisture.ahead();
        List<Day> days = Stream.concat(past.stream(), ahead.stream().skip(1)).toList();
        StockWords words = new StockWords(style, answer);
        String reading = style.say(
                "stock.course.reading",
                "mean",
                words.percent(moisture.meanNow()),
                "core",
                words.percent(moisture.coreNow()),
                "goal",
                words.percent(moisture.goal()));
        LocalDate first = days.get(0).on();
        CourseChart chart = new CourseChart(
                id(number),
                style.say("stock.course.title", "block", answer.block().name()),
                style.say("stock.course.description", "reading", reading),
                style.say("stock.course.unit"),
                List.of(
                        line(first, days, style.say("stock.course.mean"), Day::mean),
                        line(first, days, style.say("stock.course.core"), Day::core)),
                dates(first, days.get(days.size() - 1).on()),
                ChronoUnit.DAYS.between(first, answer.block().today()),
                style.say("stock.course.today"),
                List.of(new LimitMark(
                        style.say("stock.course.goal"),
                        PERCENT * moisture.goal().value())),
                answer.block().readings().stream()
                        .map(StockReading::on)
                        .map(on -> (double) ChronoUnit.DAYS.between(first, on))
                        .toList(),
                style);
        return ReportChart.of(chart.id(), chart.title(), reading, chart::svg, chart.fileSvg(), numbers(words, days));
    }

    /** Name of the picture of a block, by its place in the list. */
    static String id(int number) {
        return String.format(Locale.ROOT, "stock-course-%d", number);
    }

    private static CourseChart.Line line(LocalDate first, List<Day> days, String name, Function<Day, Band> of) {
        return new CourseChart.Line(
                name,
                days.stream()
                        .map(day -> (double) ChronoUnit.DAYS.between(first, day.on()))
                        .toList(),
                days.stream().map(day -> PERCENT * of.apply(day).value()).toList(),
                days.stream().map(day -> PERCENT * of.apply(day).low()).toList(),
                days.stream().map(day -> PERCENT * of.apply(day).high()).toList());
    }

    private List<CourseChart.DateMark> dates(LocalDate first, LocalDate last) {
        long whole = Math.max(1, ChronoUnit.DAYS.between(first, last));
        List<CourseChart.DateMark> marks = new ArrayList<>();
        for (int i = 0; i < DATES; i++) {
            long day = Math.round((i + 0.5) * whole / DATES);
            LocalDate on = first.plusDays(day);
            marks.add(new CourseChart.DateMark(
                    day,
                    style.say(
                            "stock.course.date",
                            "day",
                            Integer.toString(on.getDayOfMonth()),
                            "month",
                            style.shortMonth(on.getMonthValue()))));
        }
        return marks;
    }

    private NumbersTable numbers(StockWords words, List<Day> days) {
        List<List<String>> rows = new ArrayList<>();
        for (Day day : days) {
            rows.add(List.of(
                    words.day(day.on()),
                    style.percent(day.mean().value()),
                    style.percent(day.mean().low()),
                    style.percent(day.mean().high()),
                    style.percent(day.core().value()),
                    style.percent(day.core().low()),
                    style.percent(day.core().high())));
        }
        return new NumbersTable(
                style.say(
                        "stock.course.caption", "block", words.answer().block().name()),
                Stream.of("day", "mean", "mean-low", "mean-high", "core", "core-low", "core-high")
                        .map(key -> style.say("stock.head." + key))
                        .toList(),
                rows);
    }
}
