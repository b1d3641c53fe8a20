package hafthold.material;

import java.util.Arrays;
import java.util.Optional;

/**
 * Principal directions of a material, and the planes between them. Wood: along is longitudinal (L), across is
 * tangential (T), through is radial (R). Sheet goods: lengthwise, crosswise, through the thickness.
 */
public enum Axis {
    /** The same in every direction. */
    ANY("any", "any"),
    /** Along the grain, or lengthwise of a sheet. */
    ALONG("along", "longitudinal"),
    /** Tangential to the growth rings, or crosswise of a sheet. */
    ACROSS("across", "tangential"),
    /** Radial, or through the thickness of a sheet. */
    THROUGH("through", "radial"),
    /** The plane of along and across, for shear and Poisson figures. */
    ALONG_ACROSS("along-across", "LT"),
    /** The plane of along and through. */
    ALONG_THROUGH("along-through", "LR"),
    /** The plane of across and through. */
    ACROSS_THROUGH("across-through", "RT");

    private final String word;
    private final String woodWord;

    Axis(String word, String woodWord) {
        this.word = word;
        this.woodWord = woodWord;
    }

    /** The word used in tables. */
    public String word() {
        return word;
    }

    /** The axis of a table word; wood rows may use longitudinal, tangential, radial, LT, LR, RT. */
    public static Optional<Axis> ofWord(String word) {
        return Arrays.stream(values())
                .filter(axis -> axis.word.equals(word) || axis.woodWord.equals(word))
                .findFirst();
    }
}
