package hafthold.source;

import hafthold.quantity.Band;
import hafthold.quantity.Length;
import java.util.Map;

/** What puts a {@link Message} into words: texts by their keys, and how numbers and lengths are written. */
public interface Language {

    /**
     * The text of a key with its holes filled.
     *
     * @param filling words by the names of the holes
     */
    String say(String key, Map<String, String> filling);

    /** The text of a key where the language has one, else these words. */
    String sayOr(String key, String words);

    /** A number with fixed decimals. */
    String number(double number, int decimals);

    /** Likewise, with both ends of its band. */
    String number(Band band, int decimals);

    /** A dimension of a knife with its unit. */
    String size(Length length);

    /** A movement to a hundredth of a millimetre with its band and unit. */
    String movement(Band metres);
}
