package hafthold.simulate;

import hafthold.air.HylandWexlerSaturationPressure;
import hafthold.knife.FullTangKnife;
import hafthold.knife.Handle;
import hafthold.material.Cut;
import hafthold.material.Finish;
import hafthold.material.Hybrid;
import hafthold.material.ScaleMaterial;
import hafthold.quantity.Band;
import hafthold.transport.SettlingTime;
import hafthold.transport.Slab;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How soon a scale shows that it came into other air, and when it has come to rest there: one and three times the
 * e-folding time of its moisture at the mean air of the customer's year.
 *
 * <p>After one such time 63 % of a lasting change has come, after three 95 %; the slow end of the band is that of the
 * slowest water behind the tightest finish of their ranges, the quick end that of the quickest and the loosest (method of
 * {@link SettlingTime}). Seasons go on after that: they are no settling.
 *
 * @param foldingDays e-folding time, days, more than 0
 */
public record Settling(Band foldingDays) {
    private static final Comparator<Settling> SLOWER =
            Comparator.comparingDouble(settling -> settling.foldingDays().value());
    private static final double SECONDS_A_DAY = 86_400;
    private static final double TIMES_TO_REST = 3;
    private static final double DAYS_A_YEAR = 365;

    /** Days until most of a change shows: 63 % of it. */
    public Band showsDays() {
        return foldingDays;
    }

    /** Days until a change is over but for a twentieth: sanding before that sands the wrong shape. */
    public Band restDays() {
        return foldingDays.times(TIMES_TO_REST);
    }

    /**
     * Days before which nobody should sand it flush: until the slowest water has come to rest, or a whole year has
     * shown the full swing, whichever is sooner, but never before the usual time to rest (a judgement).
     */
    public double sandDays() {
        return Math.max(restDays().value(), Math.min(restDays().high(), DAYS_A_YEAR));
    }

    /**
     * Of one material in an order, of a hybrid its leading part, which moves it; empty for what takes up no water, which
     * follows the warmth at once.
     *
     * @param conditions handle, finish and destination
     */
    public static Optional<Settling> of(Conditions conditions, ScaleMaterial material, Cut cut) {
        return of(
                conditions, material, cut, YearMean.of(conditions.destination().repeatingYear()));
    }

    /** Likewise, where the mean of the repeating year is known. */
    static Optional<Settling> of(Conditions conditions, ScaleMaterial material, Cut cut, YearMean mean) {
        return of(material, cut, conditions.handle(), conditions.finish(), mean);
    }

    /** Of the slower scale of a bonded knife; likewise. */
    public static Optional<Settling> of(FullTangKnife knife, Destination destination) {
        YearMean mean = YearMean.of(destination.repeatingYear());
        return Stream.of(knife.cutLeft(), knife.cutRight())
                .distinct()
                .flatMap(cut -> of(knife.scale(), cut, SectionPlan.handle(knife), knife.finish(), mean).stream())
                .max(SLOWER);
    }

    private static Optional<Settling> of(ScaleMaterial material, Cut cut, Handle handle, Finish finish, YearMean mean) {
        Band coat = finish.resistance().band();
        return HandleEngine.partsOf(material, cut).stream()
                .filter(part -> part.material().water().isPresent())
                .map(part -> {
                    Band speed = part.material()
                            .water()
                            .orElseThrow()
                            .diffusivityReference()
                            .band();
                    return new Settling(new Band(
                            days(part, handle, finish.resisting(coat.low()), mean, speed.high() / speed.value()),
                            days(part, handle, finish, mean, 1),
                            days(part, handle, finish.resisting(coat.high()), mean, speed.low() / speed.value())));
                })
                .findFirst();
    }

    private static double days(Hybrid.Part part, Handle handle, Finish finish, YearMean air, double speedFactor) {
        return days(
                PartSlab.scale(part.material(), part.cut(), handle, finish, Doubt.NONE)
                        .orElseThrow(),
                air,
                speedFactor);
    }

    private static double days(Slab slab, YearMean air, double speedFactor) {
        return SettlingTime.eFoldingSeconds(
                        PartSlab.quicker(slab, speedFactor),
                        air.celsius(),
                        air.humidityFraction(),
                        new HylandWexlerSaturationPressure())
                / SECONDS_A_DAY;
    }
}
