package hafthold.knife;

import hafthold.quantity.Mass;
import java.util.Optional;

/**
 * What was tried on a block that has resin in it.
 *
 * @param before weight dried and before the resin
 * @param after weight with the cured resin
 * @param floats whether the block floats in water; empty where nobody tried
 * @param coreFloats whether a piece sawn from its middle floats
 * @param soak what it took up under water
 */
public record FillTrial(
        Optional<Mass> before,
        Optional<Mass> after,
        Optional<Boolean> floats,
        Optional<Boolean> coreFloats,
        Optional<Soak> soak) {

    /** Rejects a treatment that took away more than the water in the wood. */
    public FillTrial {
        if (before.isPresent() && after.isPresent()) {
            double ratio = after.get().kilograms() / before.get().kilograms();
            if (!(ratio >= LEAST_RATIO && ratio <= MOST_RATIO)) {
                throw new UnfitBuildException(
                        "after",
                        after.get().grams() + " g",
                        "the weight with the cured resin, up to four times that before, "
                                + before.get().grams() + " g");
            }
        }
    }

    private static final double LEAST_RATIO = 0.9;
    private static final double MOST_RATIO = 4;

    /**
     * A soak under water of room temperature, all faces open.
     *
     * @param dry weight before
     * @param wet weight after, its surface wiped
     * @param seconds how long, positive
     */
    public record Soak(Mass dry, Mass wet, double seconds) {

        /** Rejects what weighs less when wet. */
        public Soak {
            if (!(dry.kilograms() > 0) || wet.kilograms() < dry.kilograms() || wet.kilograms() > 4 * dry.kilograms()) {
                throw new UnfitBuildException(
                        "soak_after", wet.grams() + " g", "the weight after the soak, at least that before");
            }
        }

        /** Water taken up, kg. */
        public double kilograms() {
            return wet.kilograms() - dry.kilograms();
        }
    }

    /** True where there is nothing to judge by. */
    public boolean isEmpty() {
        return after.isEmpty() && floats.isEmpty() && coreFloats.isEmpty() && soak.isEmpty();
    }

    /** True where it was weighed before and after. */
    public boolean isWeighed() {
        return before.isPresent() && after.isPresent();
    }
}
