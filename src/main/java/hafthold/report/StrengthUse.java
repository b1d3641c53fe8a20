package hafthold.report;

import hafthold.decide.FullTangFit;
import hafthold.quantity.Band;
import hafthold.simulate.FitYear;
import hafthold.simulate.FitYear.PinYear;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How much of its strength one part of a bonded handle uses.
 *
 * @param name what bears, in the words of the pictures
 * @param worst largest of the year, 1 is the limit
 * @param daily largest of each day, at the value of every input
 */
record StrengthUse(String name, Band worst, List<Double> daily) {

    /** Every part that bears something, in the order it is drawn. */
    static List<StrengthUse> of(FullTangFit fit, BenchStyle style) {
        FitYear year = fit.year();
        List<StrengthUse> uses = new ArrayList<>(List.of(
                new StrengthUse(
                        style.say("use.glue"), year.glueUse(), year.days().glueUse()),
                new StrengthUse(
                        style.say("use.middle"), year.middleUse(), year.days().middleUse()),
                new StrengthUse(
                        style.say("use.edge"), year.tearUse(), year.days().tearUse())));
        year.pins().stream()
                .map(PinYear::crackUse)
                .max(Comparator.comparingDouble(Band::value))
                .ifPresent(worst -> uses.add(new StrengthUse(
                        style.say("use.pins"), worst, year.days().pinUse())));
        return uses;
    }

    /** The part that comes closest to its limit. */
    static StrengthUse worst(FullTangFit fit, BenchStyle style) {
        return of(fit, style).stream()
                .max(Comparator.comparingDouble(use -> use.worst().value()))
                .orElseThrow();
    }

    /** Day of the largest use, counted from 0. */
    int worstDay() {
        int worst = 0;
        for (int day = 1; day < daily.size(); day++) {
            worst = daily.get(day) > daily.get(worst) ? day : worst;
        }
        return worst;
    }
}
