package hafthold.decide;

import hafthold.knife.FitLimits;
import hafthold.quantity.Band;
import hafthold.simulate.EventYear;
import hafthold.simulate.FitYear;
import hafthold.simulate.HandleYear;
import hafthold.simulate.SofteningMargin;
import hafthold.simulate.StackYear;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * Holds everything that a year says against its limits.
 *
 * @param classes four classes of work, strictest first
 */
record Standings(List<FitLimits> classes) {
    private static final double CARE_USE = 2.0 / 3.0;
    private static final double NARROW_MARGIN_KELVIN = 10;
    /** A gap that is told: half of the last digit. */
    private static final double LOOSE_METRES = 0.005e-3;

    List<Standing> of(EventYear year) {
        List<Standing> standings = of(year.year());
        year.softening().map(Standings::softening).ifPresent(standings::add);
        return standings;
    }

    /** What tells one material from another: heat counts by the scale, as the glue is the same under all. */
    List<Standing> ofScale(EventYear year) {
        List<Standing> standings = of(year.year());
        year.scaleSoftening().map(Standings::softening).ifPresent(standings::add);
        return standings;
    }

    List<Standing> of(FitYear year) {
        List<Standing> standings = of(year.whole());
        year.softening().map(Standings::softening).ifPresent(standings::add);
        standings.addAll(held(year.whole(), year.glueUse(), larger(year.middleUse(), year.tearUse())));
        return standings;
    }

    /** What glue and scale bear; where one of them gives way the ends count as loose. */
    private List<Standing> held(HandleYear year, Band glueUse, Optional<Band> splitUse) {
        List<Standing> standings = new ArrayList<>();
        standings.add(use(Reason.Kind.GLUE_LINE, Optional.of(glueUse)));
        standings.add(use(Reason.Kind.SCALE_SPLIT, splitUse));
        if (glueUse.value() > 1 || splitUse.filter(use -> use.value() > 1).isPresent()) {
            standings.add(standing(
                    Reason.Kind.END_LETS_GO,
                    year.ends().lengthMismatch().times(0.5),
                    limits -> limits.gap().metres()));
        }
        return standings;
    }

    List<Standing> of(StackYear year) {
        List<Standing> standings = new ArrayList<>();
        standings.add(loose(standing(
                Reason.Kind.STACK_GAP, year.gap(), limits -> limits.gap().metres())));
        standings.add(standing(
                Reason.Kind.STACK_SET, year.set(), limits -> limits.gap().metres()));
        return standings;
    }

    /** What rattles asks for care, however small the gap: a loose handle is a hazard. */
    private static Standing loose(Standing gap) {
        Band size = gap.size().orElseThrow();
        return new Standing(
                gap.kind(),
                gap.size(),
                loose(size.low(), gap.leastIndex()),
                loose(size.value(), gap.index()),
                loose(size.high(), gap.mostIndex()),
                gap.use());
    }

    private static int loose(double gap, int index) {
        return gap > LOOSE_METRES ? Math.max(Standing.CARE_CLASS, index) : index;
    }

    /** The larger by its value; where one is not known, the other decides only if it alone is too much. */
    private static Optional<Band> larger(Optional<Band> one, Optional<Band> other) {
        boolean known = one.isPresent() && other.isPresent();
        return Stream.of(one, other)
                .flatMap(Optional::stream)
                .max(Comparator.comparingDouble(Band::value))
                .filter(use -> known || use.value() > 1);
    }

    private static Standing softening(SofteningMargin softening) {
        Band margin = softening.kelvin();
        int index = margin.value() < 0
                ? Standing.CHANGE_CLASS
                : margin.value() < NARROW_MARGIN_KELVIN ? Standing.CARE_CLASS : 0;
        return new Standing(
                Reason.Kind.SOFTENING,
                Optional.of(margin),
                index,
                index,
                index,
                Math.max(0, 1 - margin.value() / (2 * NARROW_MARGIN_KELVIN)));
    }

    List<Standing> of(HandleYear year) {
        List<Standing> standings = new ArrayList<>();
        standings.add(standing(
                Reason.Kind.EDGE_SHY,
                year.edge().bonded().shy(),
                limits -> limits.shy().metres()));
        standings.add(standing(
                Reason.Kind.EDGE_PROUD,
                year.edge().bonded().proud(),
                limits -> limits.proud().metres()));
        standings.add(standing(
                Reason.Kind.PIN_HEAD_PROUD,
                year.pins().headProud(),
                limits -> limits.pinHead().metres()));
        standings.add(standing(
                Reason.Kind.PIN_HEAD_SUNK,
                year.pins().headSunk(),
                limits -> limits.proud().metres()));
        standings.add(standing(
                Reason.Kind.PIN_GAP, year.pins().gap(), limits -> limits.gap().metres()));
        standings.add(standing(
                Reason.Kind.END_GAP,
                year.ends().shortBy(),
                limits -> limits.gap().metres()));
        standings.add(standing(
                Reason.Kind.END_PROUD,
                year.ends().longBy(),
                limits -> limits.proud().metres()));
        standings.add(use(Reason.Kind.PIN_CRACK, year.pins().crackUse()));
        standings.add(standing(
                Reason.Kind.RIDGE,
                year.joint().ridge(),
                limits -> limits.pinHead().metres()));
        year.joint().use().ifPresent(use -> standings.add(use(Reason.Kind.PARTS_JOINT, Optional.of(use))));
        year.load().ifPresent(load -> standings.addAll(held(year, load.glueUse(), load.splitUse())));
        return standings;
    }

    private Standing standing(Reason.Kind kind, Band size, ToDoubleFunction<FitLimits> limit) {
        return new Standing(
                kind,
                Optional.of(size),
                index(size.low(), limit),
                index(size.value(), limit),
                index(size.high(), limit),
                size.value() / limit.applyAsDouble(classes.get(Standing.CARE_CLASS)));
    }

    private int index(double size, ToDoubleFunction<FitLimits> limit) {
        int index = 0;
        while (index < classes.size() && size > limit.applyAsDouble(classes.get(index))) {
            index++;
        }
        return index;
    }

    private static Standing use(Reason.Kind kind, Optional<Band> use) {
        return use.map(known -> new Standing(
                        kind, use, index(known.low()), index(known.value()), index(known.high()), known.value()))
                .orElseGet(() -> new Standing(kind, use, 0, 0, Standing.CHANGE_CLASS, 0));
    }

    private static int index(double use) {
        return use > 1 ? Standing.CHANGE_CLASS : use > CARE_USE ? Standing.CARE_CLASS : 0;
    }
}
