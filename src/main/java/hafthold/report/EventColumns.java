package hafthold.report;

import hafthold.material.Cut;
import hafthold.quantity.Band;
import hafthold.simulate.BondedEventAnswer;
import hafthold.simulate.BondedEventYear;
import hafthold.simulate.EventAnswer;
import hafthold.simulate.EventYear;
import java.util.List;
import java.util.Locale;

/** What events do, a row for each of them and each material, as it is read in a terminal. */
final class EventColumns {
    private static final double SOON_HOURS = 72;
    private static final double NOTHING_POINTS = 0.05;

    private EventColumns() {}

    /** The rows and what they mean; empty where nothing happens. */
    static String of(List<EventYear> years, int width) {
        if (years.isEmpty()) {
            return "";
        }
        TextColumns columns = new TextColumns(22, 7, 13, 5, 9, 9, 9, 8, 9);
        columns.row("What happens", "", "", "", "MC face", "mean", "edge", "hottest", "back");
        columns.row("Material", "Cut", "Event", "times", "%", "points", "mm", "°C", "within");
        for (EventYear year : years) {
            for (EventAnswer answer : year.answers()) {
                columns.row(
                        year.year().materialName(),
                        year.year().cut() == Cut.NONE ? "–" : year.year().cut().word(),
                        answer.event().id().replace('-', ' '),
                        Integer.toString(answer.times()),
                        face(answer),
                        change(answer),
                        edge(answer.edgeShy(), answer.edgeProud()),
                        String.format(
                                Locale.ROOT, "%.0f", answer.hottestCelsius().value()),
                        back(answer));
            }
        }
        StringBuilder text = new StringBuilder(columns.text());
        text.append(Paragraph.hanging(
                "",
                "The worst of all times. Face: highest MC of the outermost skin, lowest where it dries. Mean: change of the"
                        + " whole scale from just before, unglued edge a side; back: until nine tenths of that change are gone.",
                width));
        for (EventYear year : years) {
            notes(year, text, width);
        }
        return text.append('\n').toString();
    }

    /** Of one bonded knife: a row an event. */
    static String of(BondedEventYear year, int width) {
        TextColumns columns = new TextColumns(13, 5, 9, 9, 11, 8, 6, 6, 6, 9);
        columns.row("What happens", "", "MC face", "mean", "edge", "hottest", "glue", "scale", "pins", "back");
        columns.row("Event", "times", "%", "points", "mm", "°C", "use", "use", "use", "within");
        for (BondedEventAnswer answer : year.answers()) {
            columns.row(
                    answer.scale().event().id().replace('-', ' '),
                    Integer.toString(answer.scale().times()),
                    face(answer.scale()),
                    change(answer.scale()),
                    edge(answer.edgeShy(), answer.edgeProud()),
                    String.format(
                            Locale.ROOT, "%.0f", answer.scale().hottestCelsius().value()),
                    use(answer.glueUse()),
                    use(answer.splitUse()),
                    use(answer.pinUse()),
                    back(answer.scale()));
        }
        StringBuilder text = new StringBuilder(columns.text());
        text.append(Paragraph.hanging(
                "",
                "The worst of all times; edges a side, glued; use: part of its strength that glue, scale and wood beside the"
                        + " pins bear, 100 % parts. Back: until nine tenths of the change of the scale's water are gone. Advice"
                        + " below was tried without events.",
                width));
        for (BondedEventAnswer answer : year.answers()) {
            answerNotes("", answer.scale(), year.meanAbove(), text, width);
        }
        return text.append('\n').toString();
    }

    private static String use(Band use) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * use.value());
    }

    private static void notes(EventYear year, StringBuilder text, int width) {
        String lead = year.year().materialName() + ": ";
        double margin = year.softeningMarginKelvin().value();
        if (margin < 10) {
            text.append(Paragraph.hanging(
                    "  - ",
                    lead
                            + (margin < 0
                                    ? String.format(
                                            Locale.ROOT,
                                            "the event is %.0f K hotter than %s bears for long; it may soften, warp or lose"
                                                    + " strength.",
                                            -margin,
                                            year.softens())
                                    : String.format(
                                            Locale.ROOT, "%.0f K are left to what %s bears.", margin, year.softens())),
                    width));
        }
        for (EventAnswer answer : year.answers()) {
            answerNotes(lead, answer, year.meanAbove(), text, width);
        }
    }

    private static void answerNotes(String lead, EventAnswer answer, double meanAbove, StringBuilder text, int width) {
        if (answer.endGrainMetres().value() > 0) {
            Band depth = answer.endGrainMetres().times(1000);
            text.append(Paragraph.hanging(
                    "  - ",
                    lead
                            + String.format(
                                    Locale.ROOT,
                                    "bare end grain drinks %.0f mm deep (%.0f to %.0f) in one %s.",
                                    depth.value(),
                                    depth.low(),
                                    depth.high(),
                                    answer.event().id().replace('-', ' ')),
                    width));
        }
        if (answer.times() > 2 && 100 * Math.abs(answer.leftBeforeLast()) >= NOTHING_POINTS) {
            text.append(Paragraph.hanging(
                    "  - ",
                    lead
                            + String.format(
                                    Locale.ROOT,
                                    "before the second %s it is still %+.1f points off, before the last %+.1f; %+.1f on the"
                                            + " mean of the year.",
                                    answer.event().id().replace('-', ' '),
                                    100 * answer.leftBeforeSecond(),
                                    100 * answer.leftBeforeLast(),
                                    100 * meanAbove),
                    width));
        }
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
