package hafthold.report;

import hafthold.simulate.BondedEventAnswer;
import hafthold.simulate.BondedEventYear;
import hafthold.simulate.EventAnswer;
import hafthold.simulate.EventYear;
import hafthold.simulate.SofteningMargin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What events do, a row for each of them and each material.
 *
 * @param head two lines of column headings
 * @param rows cells under them
 * @param meaning what the columns mean
 * @param notes what the rows do not say
 */
record EventRows(List<List<String>> head, List<List<String>> rows, String meaning, List<String> notes) {
    private static final double NARROW_KELVIN = 10;

    EventRows {
        head = List.copyOf(head);
        rows = List.copyOf(rows);
        notes = List.copyOf(notes);
    }

    /** Of several materials. */
    static EventRows of(BenchStyle style, List<EventYear> years) {
        EventCells cells = new EventCells(style);
        List<List<String>> rows = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        for (EventYear year : years) {
            for (EventAnswer answer : year.answers()) {
                rows.add(List.of(
                        year.year().scale().name(),
                        style.shortCut(year.year().scale().cut()),
                        cells.name(answer),
                        Integer.toString(answer.times()),
                        cells.face(answer),
                        cells.change(answer),
                        cells.edge(answer.edgeShy(), answer.edgeProud()),
                        cells.degrees(answer),
                        cells.back(answer)));
            }
            notes(style, year, notes);
        }
        return new EventRows(
                List.of(
                        heads(style, "what", "", "", "", "face", "mean", "edge", "hottest", "back"),
                        units(style, "material", "cut", "event", "times", "percent", "points", "unit", "c", "within")),
                rows,
                style.say("events.meaning"),
                notes);
    }

    /** Of one bonded knife. */
    static EventRows of(BenchStyle style, BondedEventYear year) {
        EventCells cells = new EventCells(style);
        List<List<String>> rows = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        for (BondedEventAnswer answer : year.answers()) {
            EventAnswer scale = answer.scale();
            rows.add(List.of(
                    cells.name(scale),
                    Integer.toString(scale.times()),
                    cells.face(scale),
                    cells.change(scale),
                    cells.edge(scale.edgeShy(), scale.edgeProud()),
                    cells.degrees(scale),
                    cells.use(answer.glueUse()),
                    cells.use(answer.splitUse()),
                    cells.use(answer.pinUse()),
                    cells.back(scale)));
            notes.addAll(cells.notes(scale, year.meanAbove()));
        }
        return new EventRows(
                List.of(
                        heads(style, "what", "", "face", "mean", "edge", "hottest", "glue", "scale", "pins", "back"),
                        units(
                                style, "event", "times", "percent", "points", "unit", "c", "use", "use", "use",
                                "within")),
                rows,
                style.say("events.meaning.bonded"),
                notes);
    }

    /** Both lines of each heading in one. */
    List<String> oneLineHead(BenchStyle style) {
        List<String> heading = new ArrayList<>();
        for (int i = 0; i < head.get(1).size(); i++) {
            String over = head.get(0).get(i);
            String under = head.get(1).get(i);
            heading.add(over.isEmpty() || i == 0 ? under : style.joined("comma", List.of(over, under)));
        }
        return heading;
    }

    private static List<String> heads(BenchStyle style, String... keys) {
        return Arrays.stream(keys)
                .map(key -> key.isEmpty() ? "" : style.say("events.over." + key))
                .toList();
    }

    private static List<String> units(BenchStyle style, String... keys) {
        return Arrays.stream(keys)
                .map(key -> key.equals("unit") ? style.unit() : style.say("events.under." + key))
                .toList();
    }

    private static void notes(BenchStyle style, EventYear year, List<String> notes) {
        List<String> said = new ArrayList<>();
        year.softening()
                .map(margin -> heat(style, margin))
                .orElseGet(() -> Optional.of(style.say("events.no-softening")))
                .ifPresent(said::add);
        EventCells cells = new EventCells(style);
        year.answers().forEach(answer -> said.addAll(cells.notes(answer, year.meanAbove())));
        said.forEach(note -> notes.add(
                style.say("events.note", "material", year.year().scale().name(), "note", note)));
    }

    private static Optional<String> heat(BenchStyle style, SofteningMargin margin) {
        double kelvin = margin.kelvin().value();
        return kelvin < NARROW_KELVIN
                ? Optional.of(style.say(
                        kelvin < 0 ? "events.too-hot" : "events.hot",
                        "part",
                        margin.material(),
                        "margin",
                        ReasonWords.kelvins(style, Math.abs(kelvin))))
                : Optional.empty();
    }
}
