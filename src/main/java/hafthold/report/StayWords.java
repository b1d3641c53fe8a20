package hafthold.report;

import hafthold.simulate.HandleYear;
import hafthold.simulate.StaySpan;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** What a handle does stay by stay, in words and rows. */
final class StayWords {
    private StayWords() {}

    /** The stay with the step furthest from flush; the first of equal ones. */
    static StaySpan worst(HandleYear year) {
        return year.stays().stream()
                .max(Comparator.comparingDouble((StaySpan span) -> Math.abs(span.worstMetres()))
                        .thenComparing(Comparator.comparing(StaySpan::from).reversed()))
                .orElseThrow();
    }

    /** A block of text for one answer, ending in a line feed; empty where the knife goes to one place. */
    static String block(HandleYear year, boolean stack) {
        if (year.stays().isEmpty()) {
            return "";
        }
        StaySpan worst = worst(year);
        StringBuilder text = new StringBuilder("Stay by stay, ")
                .append(AnswerWords.nameOf(year))
                .append(" (days' means, at the value)\n");
        TextColumns columns = new TextColumns(26, 14, 11, 34);
        columns.row("", "until", "MC %", stack ? "length against the steel, mm" : "edge, mm a side");
        for (StaySpan span : year.stays()) {
            columns.row(
                    nameOf(span),
                    until(span),
                    moisture(span),
                    step(span.lowestMetres(), stack) + " to " + step(span.highestMetres(), stack));
        }
        return text.append(columns.text())
                .append("Worst on ")
                .append(worst.worstOn())
                .append(", ")
                .append(nameOf(worst))
                .append(": ")
                .append(step(worst.worstMetres(), stack).replace(" ", " mm "))
                .append('\n')
                .toString();
    }

    /** Blocks of several answers. */
    static String blocks(List<HandleYear> years) {
        StringBuilder text = new StringBuilder();
        years.stream()
                .map(year -> block(year, false))
                .filter(block -> !block.isEmpty())
                .forEach(block -> text.append('\n').append(block));
        return text.toString();
    }

    /** Name of a stay. */
    static String nameOf(StaySpan span) {
        return span.name() + (span.repeats() ? ", from then on" : "");
    }

    /** When it ends. */
    static String until(StaySpan span) {
        return span.repeats() ? "every year" : span.to().toString();
    }

    /** Range of the mean moisture content, percent. */
    static String moisture(StaySpan span) {
        return percent(span.moistureLowest()) + "–" + percent(span.moistureHighest());
    }

    /** A step of an edge with its unit. */
    static String edgeOf(double metres) {
        return step(metres, false).replace(" ", " mm ");
    }

    private static String percent(double fraction) {
        return String.format(Locale.ROOT, "%.1f", 100 * fraction);
    }

    private static String step(double metres, boolean stack) {
        double millimetres = Math.abs(1000 * metres);
        if (millimetres < 0.005) {
            return stack ? "even" : "flush";
        }
        String side = metres < 0 ? (stack ? "short" : "shy") : stack ? "long" : "proud";
        return String.format(Locale.ROOT, "%.2f ", millimetres) + side;
    }
}
