package hafthold.decide;

import hafthold.knife.FitLimits;
import hafthold.quantity.Band;
import hafthold.simulate.HandleYear;
import hafthold.source.Evidence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * Holds a year against the classes of work, strictest first.
 *
 * <p>Every movement falls in the strictest class whose limit its value keeps; the worst of them decides. Keeping the
 * second class (good, new) stays, the third (seasonal) asks for care, the fourth (retouch) for a change of the build;
 * what keeps none is refused. A squeeze that uses up the strength beside a pin asks for a change, two thirds of it for
 * care. A sunk pin head is a comfort like a proud scale and has its limit.
 */
public final class Judgement {
    private static final int CARE_CLASS = 2;
    private static final int CHANGE_CLASS = 3;
    private static final double CARE_CRACK_USE = 2.0 / 3.0;

    private final List<FitLimits> classes;

    /** Takes four classes of work, strictest first. */
    public Judgement(List<FitLimits> classes) {
        if (classes.size() != CHANGE_CLASS + 1) {
            throw new IllegalArgumentException(
                    "a judgement needs four classes of work, strictest first, got " + classes.size());
        }
        this.classes = List.copyOf(classes);
    }

    /** The verdict on a year. */
    public Verdict verdict(HandleYear year) {
        if (year.evidence() == Evidence.UNKNOWN) {
            return Verdict.UNKNOWN;
        }
        int worst = standings(year).stream().mapToInt(Standing::index).max().orElseThrow();
        if (worst > CHANGE_CLASS) {
            return Verdict.REFUSE;
        }
        if (worst == CHANGE_CLASS) {
            return Verdict.CHANGE;
        }
        return worst == CARE_CLASS ? Verdict.CARE : Verdict.STAYS;
    }

    /** Everything that does not keep the strictest class, the deciding one first. */
    public List<Reason> reasons(HandleYear year) {
        return standings(year).stream()
                .filter(standing -> standing.index() > 0)
                .sorted(Comparator.comparingDouble(Standing::use).reversed())
                .map(this::reason)
                .toList();
    }

    /** The largest movement over its seasonal limit: what materials are ranked by. */
    public double seasonalUse(HandleYear year) {
        return standings(year).stream().mapToDouble(Standing::use).max().orElseThrow();
    }

    private Reason reason(Standing standing) {
        boolean keeps = standing.index() < classes.size();
        FitLimits heldTo = classes.get(Math.min(standing.index(), classes.size() - 1));
        return new Reason(standing.kind(), standing.size(), heldTo, keeps);
    }

    private List<Standing> standings(HandleYear year) {
        List<Standing> standings = new ArrayList<>();
        standings.add(standing(
                Reason.Kind.EDGE_SHY, year.edgeShy(), limits -> limits.shy().metres()));
        standings.add(standing(
                Reason.Kind.EDGE_PROUD,
                year.edgeProud(),
                limits -> limits.proud().metres()));
        standings.add(standing(
                Reason.Kind.PIN_HEAD_PROUD,
                year.pinHeadProud(),
                limits -> limits.pinHead().metres()));
        standings.add(standing(
                Reason.Kind.PIN_HEAD_SUNK,
                year.pinHeadSunk(),
                limits -> limits.proud().metres()));
        standings.add(standing(
                Reason.Kind.PIN_GAP, year.pinGap(), limits -> limits.gap().metres()));
        standings.add(standing(
                Reason.Kind.END_GAP, year.endShort(), limits -> limits.gap().metres()));
        standings.add(standing(
                Reason.Kind.END_PROUD, year.endLong(), limits -> limits.proud().metres()));
        standings.add(crack(year.pinCrackUse()));
        return standings;
    }

    private Standing standing(Reason.Kind kind, Band size, Function<FitLimits, Double> limit) {
        int index = 0;
        while (index < classes.size() && size.value() > limit.apply(classes.get(index))) {
            index++;
        }
        return new Standing(kind, size, index, size.value() / limit.apply(classes.get(CARE_CLASS)));
    }

    private static Standing crack(Band use) {
        int index = use.value() > 1 ? CHANGE_CLASS : use.value() > CARE_CRACK_USE ? CARE_CLASS : 0;
        return new Standing(Reason.Kind.PIN_CRACK, use, index, use.value());
    }

    /**
     * Where one movement stands.
     *
     * @param index strictest class kept, the number of classes where none is
     * @param use size over the seasonal limit
     */
    private record Standing(Reason.Kind kind, Band size, int index, double use) {}
}
