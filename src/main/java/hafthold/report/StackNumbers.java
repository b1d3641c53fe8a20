package hafthold.report;

import hafthold.quantity.Band;
import hafthold.simulate.StackYear;
import hafthold.simulate.StackYear.PartYear;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** The numbers behind the pictures of a stack. */
final class StackNumbers {
    private StackNumbers() {}

    /** Movement of every part. */
    static NumbersTable parts(StackYear year) {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < year.parts().size(); i++) {
            PartYear part = year.parts().get(i);
            rows.add(List.of(
                    (i + 1) + " " + part.name(),
                    ChartNumbers.fixed(1000 * part.length(), 1),
                    ChartNumbers.millimetres(part.shrinks()),
                    ChartNumbers.millimetres(part.grows()),
                    ChartNumbers.millimetres(part.set()),
                    part.evidence().grade()));
        }
        return new NumbersTable(
                "mm along the tang, the year's most: value (low to high)",
                List.of("Part", "Length", "Shrinks", "Grows", "Crushed for good", "Rests on"),
                rows);
    }

    /** Monthly means of the length, monthly peaks of the room. */
    static NumbersTable year(StackYear year) {
        MonthlyMeans length = means(year, Band::value);
        MonthlyMeans low = means(year, Band::low);
        MonthlyMeans high = means(year, Band::high);
        MonthlyPeaks gap = MonthlyPeaks.of(year.dailyGap());
        List<List<String>> rows = new ArrayList<>();
        for (int month = 1; month <= 12; month++) {
            rows.add(List.of(
                    MonthWord.of(month),
                    ChartNumbers.fixed(length.of(month), 3),
                    ChartNumbers.fixed(low.of(month), 3) + " to " + ChartNumbers.fixed(high.of(month), 3),
                    ChartNumbers.fixed(1000 * gap.of(month), 3)));
        }
        return new NumbersTable(
                "mm between guard and nut: length as the mean of the month, room as its widest",
                List.of("Month", "Parts against the steel", "Range of that", "Room that opens"),
                rows);
    }

    private static MonthlyMeans means(StackYear year, ToDoubleFunction<Band> of) {
        return MonthlyMeans.of(year.dailyLength().stream()
                .map(day -> 1000 * of.applyAsDouble(day))
                .toList());
    }
}
