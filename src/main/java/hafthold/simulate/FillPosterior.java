package hafthold.simulate;

import hafthold.quantity.Band;
import java.util.Map;
import java.util.Optional;

/**
 * How stabilised stock is filled, as far as its tests tell.
 *
 * @param chances of each grade
 * @param filledFraction share of all lumens that holds resin, 10, 50 and 90 % points
 * @param densityKilogramsPerCubicMetre of the block, likewise
 * @param lumenFraction share of the plain wood's volume that is open, at the most likely density
 * @param soakRatio what it drank over what plain wood would have; empty where it was not soaked
 * @param misfit of the best draw, in deviations
 */
public record FillPosterior(
        Map<FillGrade, Double> chances,
        Band filledFraction,
        Band densityKilogramsPerCubicMetre,
        double lumenFraction,
        Optional<Double> soakRatio,
        double misfit) {

    /** The likeliest grade. */
    public FillGrade likeliest() {
        return chances.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .orElseThrow()
                .getKey();
    }

    /** Its chance. */
    public double chance() {
        return chances.get(likeliest());
    }
}
