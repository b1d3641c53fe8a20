package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.air.HylandWexlerSaturationPressure;
import hafthold.material.Cut;
import hafthold.material.Hybrid;
import hafthold.material.Material;
import hafthold.material.ScaleMaterial;
import hafthold.quantity.Band;
import hafthold.transport.SettlingTime;
import java.util.Comparator;
import java.util.Optional;

/**
 * How soon a scale shows that it came into other air, and when it has come to rest there: one and three times the
 * e-folding time of its moisture at the mean air of the customer's year.
 *
 * <p>After one such time 63 % of a lasting change has come, after three 95 %; the slow end of the band is that of the
 * slowest water (method of {@link SettlingTime}). Seasons go on after that: they are no settling.
 *
 * @param foldingDays e-folding time, days, more than 0
 */
public record Settling(Band foldingDays) {
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
     * Of one material in an order, of a hybrid its slowest part; empty for what takes up no water, which follows the
     * warmth at once.
     *
     * @param conditions handle, finish and destination
     */
    public static Optional<Settling> of(Conditions conditions, ScaleMaterial material, Cut cut) {
        return HandleEngine.partsOf(material, cut).stream()
                .flatMap(part -> of(conditions, part).stream())
                .max(Comparator.comparingDouble(
                        settling -> settling.foldingDays().value()));
    }

    private static Optional<Settling> of(Conditions conditions, Hybrid.Part part) {
        Material material = part.material();
        return material.water().map(water -> {
            double value = water.diffusivityReference().value();
            Band speed = water.diffusivityReference().band();
            return new Settling(new Band(
                    days(conditions, part, speed.high() / value),
                    days(conditions, part, 1),
                    days(conditions, part, speed.low() / value)));
        });
    }

    private static double days(Conditions conditions, Hybrid.Part part, double speedFactor) {
        AirSeries air = conditions.destination().air();
        double celsius = 0;
        double humidity = 0;
        for (int hour = 0; hour < air.size(); hour++) {
            celsius += air.temperatureCelsius(hour) / air.size();
            humidity += air.relativeHumidityFraction(hour) / air.size();
        }
        return SettlingTime.eFoldingSeconds(
                        LayerMoisture.slab(
                                part.material(), part.cut(), conditions.handle(), conditions.finish(), speedFactor),
                        celsius,
                        humidity,
                        new HylandWexlerSaturationPressure())
                / SECONDS_A_DAY;
    }
}
