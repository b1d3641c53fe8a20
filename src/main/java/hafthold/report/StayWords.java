package hafthold.report;

import hafthold.simulate.HandleYear;
import hafthold.simulate.StaySpan;
import java.util.Comparator;
import java.util.List;

/**
 * What a handle does stay by stay, in words and rows.
 *
 * @param style language and units
 * @param isStack whether it is a stack on a tang, which grows and shrinks in length
 */
record StayWords(BenchStyle style, boolean isStack) {
    private static final double SHOWS = 0.005e-3;

    /** The stay with the step furthest from flush; the first of equal ones. */
    static StaySpan worst(HandleYear year) {
        return year.stays().stream()
                .max(Comparator.comparingDouble((StaySpan span) -> Math.abs(span.worstMetres()))
                        .thenComparing(Comparator.comparing(StaySpan::from).reversed()))
                .orElseThrow();
    }

    /** A block of text for one answer, ending in a line feed; empty where the knife goes to one place. */
    String block(HandleYear year) {
        if (year.stays().isEmpty()) {
            return "";
        }
        StaySpan worst = worst(year);
        TextColumns columns = new TextColumns(26, 14, 11, 34);
        columns.row(
                "",
                style.say("stay.until"),
                style.say("stay.moisture"),
                style.say(isStack ? "stay.length" : "stay.edge", "unit", style.unit()));
        for (StaySpan span : year.stays()) {
            columns.row(
                    nameOf(span),
                    until(span),
                    moisture(span),
                    style.say(
                            "from-to",
                            "from",
                            step(span.lowestMetres(), false),
                            "to",
                            step(span.highestMetres(), false)));
        }
        return style.say("stay.heading", "name", new AnswerWords(style).nameOf(year)) + "\n" + columns.text()
                + Paragraph.plain(style.say(
                        "stay.worst",
                        "date",
                        worst.worstOn().toString(),
                        "stay",
                        nameOf(worst),
                        "step",
                        stepOf(worst.worstMetres())))
                + "\n";
    }

    /** Blocks of several answers. */
    String blocks(List<HandleYear> years) {
        StringBuilder text = new StringBuilder();
        years.stream()
                .map(this::block)
                .filter(block -> !block.isEmpty())
                .forEach(block -> text.append('\n').append(block));
        return text.toString();
    }

    /** Name of a stay. */
    String nameOf(StaySpan span) {
        return span.repeats() ? style.say("stay.repeats", "name", span.name()) : span.name();
    }

    /** When it ends. */
    String until(StaySpan span) {
        return span.repeats() ? style.say("stay.every-year") : span.to().toString();
    }

    /** Range of the mean moisture content, percent. */
    String moisture(StaySpan span) {
        return style.percent(span.moistureLowest()) + "–" + style.percent(span.moistureHighest());
    }

    /** A step with its unit. */
    String stepOf(double metres) {
        return step(metres, true);
    }

    private String step(double metres, boolean withUnit) {
        if (Math.abs(metres) < SHOWS) {
            return style.say(isStack ? "even" : "flush");
        }
        String size = style.hundredths(Math.abs(metres));
        String side = metres < 0 ? (isStack ? "short" : "shy") : isStack ? "long" : "proud";
        return style.say("side." + side, "size", withUnit ? style.withUnit(size) : size);
    }
}
