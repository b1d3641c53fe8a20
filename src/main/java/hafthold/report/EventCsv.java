package hafthold.report;

import hafthold.quantity.Band;
import hafthold.simulate.EventAnswer;
import hafthold.simulate.EventYear;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What an event does to a scale, as columns that follow those of the scale. */
final class EventCsv {
    private EventCsv() {}

    /** Headings of {@link #cells}. */
    static List<String> columns() {
        List<String> columns = new ArrayList<>(List.of("event", "event_times"));
        EventFigures.ALL.forEach(key -> columns(key).forEach(name -> columns.add("event_" + name)));
        EventFigures.OF_YEAR.forEach(key -> columns.addAll(columns(key)));
        return columns;
    }

    private static List<String> columns(EventFigures.Key<?> key) {
        return key.isBand() ? List.of(key.key("low"), key.key("value"), key.key("high")) : List.of(key.key());
    }

    /** One event of a year, then what all of them do together. */
    static List<String> cells(EventYear year, EventAnswer answer) {
        List<String> cells = new ArrayList<>(List.of(answer.event().id(), Integer.toString(answer.times())));
        EventFigures.ALL.forEach(key -> cells.addAll(cells(key, answer)));
        EventFigures.OF_YEAR.forEach(key -> cells.addAll(cells(key, year)));
        return cells;
    }

    private static <T> List<String> cells(EventFigures.Key<T> key, T told) {
        Optional<Band> figure = key.of().apply(told);
        return key.isBand()
                ? CsvFigures.band(figure)
                : List.of(figure.map(band -> CsvFigures.number(band.value())).orElse(""));
    }
}
