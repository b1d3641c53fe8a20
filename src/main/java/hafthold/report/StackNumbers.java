package hafthold.report;

import hafthold.quantity.Band;
import hafthold.simulate.StackYear;
import hafthold.simulate.StackYear.PartYear;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The numbers behind the pictures of a stack.
 *
 * @param style language and units
 */
record StackNumbers(BenchStyle style) {

    /** Movement of every part. */
    NumbersTable parts(StackYear year) {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < year.parts().size(); i++) {
            PartYear part = year.parts().get(i);
            rows.add(List.of(
                    (i + 1) + " " + part.name(),
                    style.fixed(style.shown(part.length()), 1),
                    new ChartNumbers(style).band(part.shrinks()),
                    new ChartNumbers(style).band(part.grows()),
                    new ChartNumbers(style).band(part.set()),
                    style.named("evidence", part.evidence().grade())));
        }
        return new NumbersTable(
                style.say("parts.caption", "unit", style.unit()),
                style.heads("part", "length", "shrinks", "grows", "crushed", "rests-on"),
                rows);
    }

    /** Monthly means of the length, monthly peaks of the room. */
    NumbersTable year(StackYear year) {
        MonthlyMeans length = means(year, Band::value);
        MonthlyMeans low = means(year, Band::low);
        MonthlyMeans high = means(year, Band::high);
        MonthlyPeaks gap = MonthlyPeaks.of(year.dailyGap());
        List<List<String>> rows = new ArrayList<>();
        for (int month = 1; month <= 12; month++) {
            rows.add(List.of(
                    style.month(month),
                    style.thousandths(length.of(month)),
                    style.say(
                            "from-to",
                            "from",
                            style.thousandths(low.of(month)),
                            "to",
                            style.thousandths(high.of(month))),
                    style.thousandths(gap.of(month))));
        }
        return new NumbersTable(
                style.say("stack-year.caption", "unit", style.unit()),
                style.heads("month", "parts", "range", "room-opens"),
                rows);
    }

    private static MonthlyMeans means(StackYear year, ToDoubleFunction<Band> of) {
        return MonthlyMeans.of(
                year.dailyLength().stream().map(of::applyAsDouble).toList());
    }
}
