package hafthold.report;

import hafthold.material.Cut;
import hafthold.quantity.Band;
import hafthold.simulate.BondedEventAnswer;
import hafthold.simulate.BondedEventYear;
import hafthold.simulate.EventAnswer;
import hafthold.simulate.EventYear;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
    private static final double SOON_HOURS = 72;
    private static final double NOTHING_POINTS = 0.05;
    private static final double NARROW_KELVIN = 10;

    EventRows {
        head = List.copyOf(head);
        rows = List.copyOf(rows);
        notes = List.copyOf(notes);
    }

    /** Of several materials. */
    static EventRows of(List<EventYear> years) {
        List<List<String>> rows = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        for (EventYear year : years) {
            for (EventAnswer answer : year.answers()) {
                rows.add(List.of(
                        year.year().scale().name(),
                        year.year().scale().cut() == Cut.NONE
                                ? "–"
                                : year.year().scale().cut().word(),
                        words(answer),
                        Integer.toString(answer.times()),
                        face(answer),
                        change(answer),
                        edge(answer.edgeShy(), answer.edgeProud()),
                        degrees(answer),
                        back(answer)));
            }
            notes(year, notes);
        }
        return new EventRows(
                List.of(
                        List.of("What happens", "", "", "", "MC face", "mean", "edge", "hottest", "back"),
                        List.of("Material", "Cut", "Event", "times", "%", "points", "mm", "°C", "within")),
                rows,
                "The worst of all times. Face: highest MC of the outermost skin, lowest where it dries. Mean: change of the"
                        + " whole scale from just before, edge a side as in the ranking; back: until nine tenths of that change are gone.",
                notes);
    }

    /** Of one bonded knife. */
    static EventRows of(BondedEventYear year) {
        List<List<String>> rows = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        for (BondedEventAnswer answer : year.answers()) {
            rows.add(List.of(
                    words(answer.scale()),
                    Integer.toString(answer.scale().times()),
                    face(answer.scale()),
                    change(answer.scale()),
                    edge(answer.scale().edgeShy(), answer.scale().edgeProud()),
                    degrees(answer.scale()),
                    use(answer.glueUse()),
                    use(answer.splitUse()),
                    use(answer.pinUse()),
                    back(answer.scale())));
            notes("", answer.scale(), year.meanAbove(), notes);
        }
        return new EventRows(
                List.of(
                        List.of(
                                "What happens",
                                "",
                                "MC face",
                                "mean",
                                "edge",
                                "hottest",
                                "glue",
                                "scale",
                                "pins",
                                "back"),
                        List.of("Event", "times", "%", "points", "mm", "°C", "use", "use", "use", "within")),
                rows,
                "The worst of all times; edges a side, glued; use: part of its strength that glue, scale and wood beside the"
                        + " pins bear, 100 % parts. Back: until nine tenths of the change of the scale's water are gone. Advice"
                        + " was tried without events.",
                notes);
    }

    private static void notes(EventYear year, List<String> notes) {
        String lead = year.year().scale().name() + ": ";
        double margin = year.softeningMarginKelvin().value();
        if (margin < 0) {
            notes.add(lead
                    + String.format(
                            Locale.ROOT,
                            "it gets %.0f K hotter than it bears for long; it may soften, warp or lose strength.",
                            -margin));
        } else if (margin < NARROW_KELVIN) {
            notes.add(lead
                    + String.format(Locale.ROOT, "its heat comes within %.0f K of what it bears for long.", margin));
        }
        year.answers().forEach(answer -> notes(lead, answer, year.meanAbove(), notes));
    }

    private static void notes(String lead, EventAnswer answer, double meanAbove, List<String> notes) {
        if (answer.endGrainMetres().value() > 0) {
            Band depth = answer.endGrainMetres().times(1000);
            notes.add(lead
                    + String.format(
                            Locale.ROOT,
                            "%s, once: end grain that is bare drinks %.0f mm deep (%.0f to %.0f).",
                            words(answer),
                            depth.value(),
                            depth.low(),
                            depth.high()));
        }
        if (answer.times() > 2 && 100 * Math.abs(answer.leftBeforeLast()) >= NOTHING_POINTS) {
            notes.add(lead
                    + String.format(
                            Locale.ROOT,
                            "%s: before the second time it is %+.1f points off the year without, before the last %+.1f;"
                                    + " %+.1f on the mean of the year.",
                            words(answer),
                            100 * answer.leftBeforeSecond(),
                            100 * answer.leftBeforeLast(),
                            100 * meanAbove));
        }
    }

    private static String words(EventAnswer answer) {
        return answer.event().id().replace('-', ' ');
    }

    private static String use(Optional<Band> use) {
        return use.map(EventRows::use).orElse("unknown");
    }

    private static String use(Band use) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * use.value());
    }

    private static String degrees(EventAnswer answer) {
        return String.format(Locale.ROOT, "%.0f", answer.hottestCelsius().value());
    }

    private static String face(EventAnswer answer) {
        return percent(answer.faceDriest()) + "–" + percent(answer.faceWettest());
    }

    private static String percent(double fraction) {
        return String.format(Locale.ROOT, 100 * fraction < 9.95 ? "%.1f" : "%.0f", 100 * fraction);
    }

    private static String change(EventAnswer answer) {
        double gain = 100 * answer.meanGain().value();
        double loss = 100 * answer.meanLoss().value();
        if (Math.max(gain, loss) < NOTHING_POINTS) {
            return "none";
        }
        return gain >= loss ? String.format(Locale.ROOT, "+%.1f", gain) : String.format(Locale.ROOT, "−%.1f", loss);
    }

    private static String edge(Band edgeShy, Band edgeProud) {
        double shy = 1000 * edgeShy.value();
        double proud = 1000 * edgeProud.value();
        if (Math.max(shy, proud) < 0.005) {
            return "flush";
        }
        return shy >= proud
                ? String.format(Locale.ROOT, "%.2f shy", shy)
                : String.format(Locale.ROOT, "%.2f proud", proud);
    }

    private static String back(EventAnswer answer) {
        if (!answer.isBack()) {
            return "not back";
        }
        if (answer.backHours() == 0) {
            return "–";
        }
        return answer.backHours() < SOON_HOURS
                ? String.format(Locale.ROOT, "%.0f h", answer.backHours())
                : String.format(Locale.ROOT, "%.0f d", answer.backHours() / 24);
    }
}
