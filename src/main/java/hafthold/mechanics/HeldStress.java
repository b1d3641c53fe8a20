package hafthold.mechanics;

import hafthold.quantity.Band;
import hafthold.source.Evidence;
import hafthold.source.Figure;

/**
 * What is left of an elastic stress after it has been held for weeks, while glue creeps and wood relaxes.
 *
 * <p>A factor, not a model: the section and pin solvers are elastic, and seasons are slow. Bolts clamped across the
 * grain of wood for years indoors kept 15 to 40 % of their force (Journal of Wood Science, 2019, article
 * s10086-019-1802-8, abstract), creep tests of weeks keep more, a week of hard frost all of it.
 *
 * @param remainingShare share of the elastic stress that remains, 0 to 1
 */
public record HeldStress(Figure remainingShare) {
    /** One half, a quarter to all: assumed. */
    public static final HeldStress USUAL = new HeldStress(new Figure(
            new Band(0.25, 0.5, 1),
            Evidence.ASSUMED,
            "workshop-judgement",
            "creep of glue and relaxation of wood over weeks: half the elastic stress remains, a quarter to all"));

    /** Checks the share. */
    public HeldStress {
        if (remainingShare.band().low() < 0 || remainingShare.band().high() > 1) {
            throw new IllegalArgumentException("a share lies between 0 and 1, got " + remainingShare.band());
        }
    }

    /**
     * Size of a stress after weeks.
     *
     * @param elasticPascals stress by linear elasticity, Pa, of either sign
     * @return its size without the sign, Pa
     */
    public Band sizePascals(double elasticPascals) {
        return remainingShare.band().times(Math.abs(elasticPascals));
    }
}
