package hafthold.simulate;

import java.util.Locale;

/** How far resin has got into stabilised stock. */
public enum FillGrade {
    /** Filled right through: more than half of the lumens, the core too. */
    THROUGH,
    /** Some of the lumens filled, all through the block alike. */
    PART,
    /** A filled shell about a core that is open. */
    CORE_OPEN,
    /** Hardly any resin. */
    LIGHT;

    /** The word of keys and of data. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
