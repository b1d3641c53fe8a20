package hafthold.report;

import hafthold.decide.FullTangFit;
import hafthold.quantity.Band;
import hafthold.simulate.FitYear;
import hafthold.simulate.FitYear.PinYear;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How much of its strength one part of a bonded handle uses.
 *
 * @param name what bears, in the words of the pictures
 * @param worst largest of the year, 1 is the limit
 * @param daily largest of each day, at the value of every input
 */
record StrengthUse(String name, Band worst, List<Double> daily) {

    /** Every part that bears something of a known strength, in the order it is drawn. */
    static List<StrengthUse> of(FullTangFit fit, BenchStyle style) {
        FitYear year = fit.year();
        List<StrengthUse> uses = new ArrayList<>();
        uses.add(new StrengthUse(
                style.say("use.glue"), year.glueUse(), year.days().glueUse()));
        year.middleUse()
                .ifPresent(use -> uses.add(new StrengthUse(
                        style.say("use.middle"), use, year.days().middleUse())));
        year.tearUse()
                .ifPresent(use -> uses.add(
                        new StrengthUse(style.say("use.edge"), use, year.days().tearUse())));
        year.pins().stream()
                .map(PinYear::crackUse)
                .flatMap(Optional::stream)
                .max(Comparator.comparingDouble(Band::value))
                .ifPresent(worst -> uses.add(new StrengthUse(
                        style.say("use.pins"), worst, year.days().pinUse())));
        return uses;
    }

    /** Whether all that the scale bears can be drawn; not where its strength across the grain is not known. */
    static boolean isScaleKnown(FullTangFit fit) {
        FitYear year = fit.year();
        return year.middleUse().isPresent()
                && year.tearUse().isPresent()
                && year.pins().stream().allMatch(pin -> pin.crackUse().isPresent());
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
