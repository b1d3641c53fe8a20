package hafthold.report;

import hafthold.decide.StockAnswer;
import hafthold.decide.StockMoisture;
import hafthold.knife.StockReading;
import hafthold.quantity.Band;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Tables of blocks as cells, for a text and for a page.
 *
 * @param style language and units
 */
record StockTables(BenchStyle style) {

    /** Headings of the blocks side by side. */
    List<String> head() {
        return Stream.of("block", "now", "core", "goal", "ready", "verdict")
                .map(key -> style.say("stock.head." + key))
                .toList();
    }

    /** One row a block. */
    List<List<String>> rows(List<StockAnswer> answers) {
        List<List<String>> rows = new ArrayList<>();
        for (StockAnswer answer : answers) {
            StockWords words = new StockWords(style, answer);
            rows.add(List.of(
                    answer.block().name(),
                    answer.told().map(StockMoisture::meanNow).map(this::range).orElse("–"),
                    answer.told().map(StockMoisture::coreNow).map(this::range).orElse("–"),
                    answer.told()
                            .map(StockMoisture::goal)
                            .map(goal -> style.percent(goal.value()))
                            .orElse("–"),
                    answer.told().map(moisture -> ready(words, moisture)).orElse("–"),
                    words.stamp()));
        }
        return rows;
    }

    private String range(Band fraction) {
        return style.percent(fraction.low()) + "–" + style.percent(fraction.high());
    }

    private String ready(StockWords words, StockMoisture moisture) {
        StockMoisture.Days days = moisture.boxDays();
        if (Double.isInfinite(days.high())) {
            return words.span(days.high());
        }
        return days.high() == 0
                ? style.say("stock.ready.now")
                : style.say("stock.ready.in", "span", words.span(days.high()));
    }

    /** Headings of what was read. */
    List<String> readHead() {
        return Stream.of("day", "weight", "width", "thickness", "meter", "mean")
                .map(key -> style.say("stock.head." + key))
                .toList();
    }

    /** One row a day of readings, with the moisture that goes with it. */
    List<List<String>> read(StockAnswer answer) {
        StockWords words = new StockWords(style, answer);
        List<List<String>> rows = new ArrayList<>();
        for (StockReading reading : answer.block().readings()) {
            rows.add(List.of(
                    words.day(reading.on()),
                    reading.weight().map(mass -> style.plain(mass.grams())).orElse("–"),
                    reading.width().map(length -> style.size(length)).orElse("–"),
                    reading.thickness().map(length -> style.size(length)).orElse("–"),
                    reading.meter()
                            .map(moisture -> style.percent(moisture.fraction()))
                            .orElse("–"),
                    answer.told()
                            .flatMap(moisture -> moisture.past().stream()
                                    .filter(day -> day.on().equals(reading.on()))
                                    .findFirst())
                            .map(day -> range(day.mean()))
                            .orElse("–")));
        }
        return rows;
    }
}
