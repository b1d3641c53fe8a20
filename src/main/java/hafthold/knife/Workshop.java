package hafthold.knife;

import java.util.Map;
import java.util.Optional;

/**
 * What a workshop says of itself on what it hands out; every text is its own.
 *
 * @param name of the shop
 * @param contact how to reach it
 * @param promises what it stands by, by the word of the verdict: stays, care, change, refuse, unknown
 * @param prices what it asks, by the id of the material
 */
public record Workshop(
        Optional<String> name, Optional<String> contact, Map<String, String> promises, Map<String, String> prices) {
    /** A shop that has said nothing. */
    public static final Workshop UNNAMED = new Workshop(Optional.empty(), Optional.empty(), Map.of(), Map.of());

    /** Keeps its own copies. */
    public Workshop {
        promises = Map.copyOf(promises);
        prices = Map.copyOf(prices);
    }
}
