package hafthold.knife;

import hafthold.quantity.Length;

/**
 * How far a handle may move before it no longer belongs in a class of work; a workshop's judgement, editable.
 *
 * @param name class of work, such as good-new
 * @param shy steel proud of the scale, a side
 * @param proud scale proud of the steel, a side
 * @param pinHead pin head above the face
 * @param gap open gap beside a pin or at a joint
 */
public record FitLimits(String name, Length shy, Length proud, Length pinHead, Length gap) {

    /**
     * The state to sand in between the two ends of a year: there what stands shy takes as much of its limit as what stands
     * proud takes of its own, so that it lies nearer to the dry end, for sharp steel is the worse of the two.
     *
     * @param driest height or moisture at the dry end
     * @param dampest the same at the damp end
     */
    public double between(double driest, double dampest) {
        return (dampest * shy.metres() + driest * proud.metres()) / (shy.metres() + proud.metres());
    }
}
