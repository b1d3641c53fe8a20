package hafthold.table;

import hafthold.air.Event;
import hafthold.air.EventPhase;
import hafthold.source.Figure;
import hafthold.source.Message;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Reads {@code events.csv}: rows of one id are the phases of one event; a user's own rows replace a whole event. */
public final class EventTable {
    private static final List<String> COLUMNS = List.of(
            "id",
            "name",
            "minutes",
            "around",
            "low",
            "value",
            "high",
            "unit",
            "counted",
            "change",
            "film",
            "rh_percent",
            "gel_g",
            "source",
            "locator",
            "evidence");
    private static final double LONGEST_MINUTES = 366 * 1440;
    private static final double COLDEST = -60;
    private static final double HOTTEST = 100;
    private static final double MOST_GEL = 1000;

    private final Map<String, Event> events;

    private EventTable(Map<String, Event> events) {
        this.events = events;
    }

    /** Reads the table. */
    public static EventTable read(TableSet tables) {
        Map<String, Event> events = new LinkedHashMap<>();
        for (CsvTable table : tables.read("events.csv", COLUMNS)) {
            Map<String, List<EventPhase>> phases = new LinkedHashMap<>();
            Map<String, String> names = new LinkedHashMap<>();
            for (CsvRow row : table.rows()) {
                String id = row.required("id");
                if (!names.computeIfAbsent(id, key -> row.required("name")).equals(row.text("name"))) {
                    throw row.fault("name", "one name for all phases of " + id + ", " + names.get(id));
                }
                phases.computeIfAbsent(id, key -> new ArrayList<>()).add(phase(row));
            }
            phases.forEach((id, all) -> events.put(
                    id, new Event(id, table.said("event." + id, names.get(id)), basis(table, id, all), all)));
        }
        return new EventTable(events);
    }

    /** What the weakest figure among the temperatures rests on. */
    private static Message basis(CsvTable table, String id, List<EventPhase> phases) {
        Figure weakest = phases.stream()
                .map(EventPhase::celsius)
                .reduce((a, b) -> a.evidence().compareTo(b.evidence()) >= 0 ? a : b)
                .orElseThrow();
        return weakest.locator().isEmpty()
                ? Message.verbatim(weakest.sourceKey())
                : table.said("event-basis." + id, weakest.locator());
    }

    private static EventPhase phase(CsvRow row) {
        if (!row.text("unit").equals("C")) {
            throw row.fault("unit", "C");
        }
        Figure celsius = row.figure(1);
        EventPhase.Counted counted = word(row, "counted", EventPhase.Counted.values());
        if (!(celsius.band().low() >= COLDEST && celsius.band().high() <= HOTTEST)) {
            throw row.fault("value", "temperatures from -60 to 100 C");
        }
        EventPhase.Around around = around(row);
        if (around instanceof EventPhase.Water
                && counted == EventPhase.Counted.OWN
                && celsius.band().low() < 0) {
            throw row.fault("low", "water of 0 C or more");
        }
        return new EventPhase(
                60 * row.number("minutes", 0.1, LONGEST_MINUTES),
                around,
                celsius,
                counted,
                row.word("change", EventTable::ramp, List.of("step", "ramp")),
                word(row, "film", EventPhase.Film.values()));
    }

    private static EventPhase.Around around(CsvRow row) {
        boolean humid = !row.text("rh_percent").isEmpty();
        double humidity = humid ? row.number("rh_percent", 0, 100) / 100 : 0;
        double gel = row.text("gel_g").isEmpty() ? 0 : row.number("gel_g", 0, MOST_GEL);
        if (humid && gel > 0) {
            throw row.fault("gel_g", "gel or the humidity of a pack, not both");
        }
        return switch (row.text("around")) {
            case "water" -> new EventPhase.Water();
            case "vapour" -> new EventPhase.KeptVapour();
            case "bag" -> new EventPhase.ClosedBag(gel, humidity);
            case "air" -> {
                if (!humid) {
                    throw row.fault("rh_percent", "the humidity of the air, 0 to 100");
                }
                yield new EventPhase.HeldHumidity(humidity);
            }
            default ->
                throw row.fault(
                        "around", NearestWord.oneOf(row.text("around"), List.of("water", "air", "vapour", "bag")));
        };
    }

    private static Optional<Boolean> ramp(String text) {
        return switch (text) {
            case "ramp" -> Optional.of(true);
            case "step" -> Optional.of(false);
            default -> Optional.empty();
        };
    }

    private static <E extends Enum<E>> E word(CsvRow row, String column, E[] values) {
        return row.word(
                column,
                text -> Arrays.stream(values)
                        .filter(value -> value.name().toLowerCase(Locale.ROOT).equals(text))
                        .findFirst(),
                Arrays.stream(values)
                        .map(value -> value.name().toLowerCase(Locale.ROOT))
                        .toList());
    }

    /** All events in table order. */
    public List<Event> all() {
        return List.copyOf(events.values());
    }

    /**
     * One event.
     *
     * @throws UnknownIdException when the table has no such id
     */
    public Event find(String id) {
        Event event = events.get(id);
        if (event == null) {
            throw new UnknownIdException("event", id, events.keySet(), "hafthold materials --events lists them all");
        }
        return event;
    }
}
