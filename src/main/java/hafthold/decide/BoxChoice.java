package hafthold.decide;

import hafthold.air.SaturatedSalt;
import hafthold.quantity.Band;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How a box is held at its humidity.
 *
 * @param salt a harmless salt whose air comes near enough; empty where there is none
 * @param saltHumidity its relative humidity at the box's temperature, 0 to 1
 * @param packPercent humidity that a conditioned pack of gel would be bought at or made for, whole percent
 */
public record BoxChoice(Optional<SaturatedSalt> salt, Optional<Band> saltHumidity, long packPercent) {
    /** A salt further off than that makes another moisture than is wanted: some 0.6 points of wood. */
    private static final double NEAR = 0.04;

    /**
     * For air of a humidity.
     *
     * @param salts those to choose from; only harmless ones are
     * @param humidityFraction wanted, 0 to 1
     * @param celsius temperature of the box
     */
    static BoxChoice of(List<SaturatedSalt> salts, double humidityFraction, double celsius) {
        Optional<SaturatedSalt> near = salts.stream()
                .filter(SaturatedSalt::isHarmless)
                .min(Comparator.comparingDouble(salt -> off(salt, humidityFraction, celsius)))
                .filter(salt -> off(salt, humidityFraction, celsius) <= NEAR);
        return new BoxChoice(
                near, near.map(salt -> salt.humidityFraction(celsius)), Math.round(100 * humidityFraction));
    }

    private static double off(SaturatedSalt salt, double humidityFraction, double celsius) {
        return Math.abs(salt.humidityFraction(celsius).value() - humidityFraction);
    }
}
