package hafthold.material;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Families of handle and fitting materials. */
public enum Family {
    WOOD,
    TREATED_WOOD,
    HYBRID,
    LAMINATE,
    POLYMER,
    HARD_TISSUE,
    MINERAL,
    METAL,
    LINER,
    ADHESIVE;

    /** The word used in tables and answers. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The family of a table word. */
    public static Optional<Family> ofWord(String word) {
        return Arrays.stream(values())
                .filter(family -> family.word().equals(word))
                .findFirst();
    }
}
