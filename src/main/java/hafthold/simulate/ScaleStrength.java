package hafthold.simulate;

import hafthold.material.Hybrid;
import hafthold.quantity.Band;
import java.util.List;
import java.util.Optional;

/**
 * Whether a use of strength across the grain can be stated: not where a sheet is silent about what its material bears,
 * since a missing strength must not read as a limit that holds.
 *
 * @param isKnown true where the sheet of every part states it
 */
record ScaleStrength(boolean isKnown) {

    /** That of a scale of one or more parts. */
    static ScaleStrength of(List<Hybrid.Part> parts) {
        return new ScaleStrength(parts.stream()
                .allMatch(part -> PinSplit.strength(part.material(), part.cut(), Doubt.NONE)
                        .isPresent()));
    }

    /**
     * A use of strength as far as it can be stated.
     *
     * @param ofKnown use of those parts whose strength is known; where they give way, the others do not matter
     */
    Optional<Band> use(Band ofKnown) {
        return isKnown || ofKnown.value() > 1 ? Optional.of(ofKnown) : Optional.empty();
    }

    /**
     * The same beside pins: what is not squeezed does not split, however weak it is.
     *
     * @param squeeze overlap of pin and hole
     */
    Optional<Band> besidePins(Band squeeze, Band ofKnown) {
        return squeeze.high() <= 0 ? Optional.of(ofKnown) : use(ofKnown);
    }
}
