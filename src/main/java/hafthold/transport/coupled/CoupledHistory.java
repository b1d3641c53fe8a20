package hafthold.transport.coupled;

import java.util.List;

/**
 * Profiles of a slab at the times asked for, with the books of water and heat. Immutable.
 *
 * @param seconds the times, rising, counted from the start
 * @param profiles one a time
 * @param waterInKilogramsPerSquareMetre water that came in by both faces and from sources over all that time
 * @param heatInJoulesPerSquareMetre heat that came in likewise
 * @param waterBalanceResidual change of content less income, over content plus all that passed: rounding, below 1e-10
 * @param heatBalanceResidual the same for heat
 * @param steps time steps tried, refused ones included
 */
public record CoupledHistory(
        List<Double> seconds,
        List<CoupledProfile> profiles,
        double waterInKilogramsPerSquareMetre,
        double heatInJoulesPerSquareMetre,
        double waterBalanceResidual,
        double heatBalanceResidual,
        int steps) {
    /** Copies the lists. */
    public CoupledHistory {
        seconds = List.copyOf(seconds);
        profiles = List.copyOf(profiles);
    }

    /** The last profile: where a further slab can start from. */
    public CoupledProfile last() {
        return profiles.get(profiles.size() - 1);
    }
}
