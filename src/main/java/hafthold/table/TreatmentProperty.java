package hafthold.table;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a row of {@code treatments.csv} may state: one unit each, and the factor from that unit to SI. */
public enum TreatmentProperty {
    /** Share of the swelling that is taken away at rest. */
    ANTI_SWELLING_EFFICIENCY("%", 0.01),
    /** Early rate of water uptake over that of the plain wood. */
    EARLY_UPTAKE_RATIO("-", 1),
    /** Mass of the treatment over the dry mass of the plain wood. */
    WEIGHT_GAIN("%", 0.01),
    /** Share of the lumens' volume that holds resin. */
    LUMENS_FILLED("%", 0.01),
    /** Density of the resin in the lumens. */
    FILLING_DENSITY("kg/m3", 1),
    /** Young's modulus of the resin in the lumens. */
    FILLING_MODULUS("GPa", 1e9),
    /** Young's modulus along the grain over that of the plain wood. */
    STIFFNESS_RATIO_ALONG("-", 1),
    /** Moduli across the grain and of shear over those of the plain wood. */
    STIFFNESS_RATIO_ACROSS("-", 1),
    /** Share of the change of stiffness across the grain that strength across the grain takes part in. */
    STRENGTH_SHARE("%", 0.01);

    private final String unit;
    private final double toSi;

    TreatmentProperty(String unit, double toSi) {
        this.unit = unit;
        this.toSi = toSi;
    }

    /** The unit a table row must be in. */
    public String unit() {
        return unit;
    }

    /** Factor from the table's unit to SI; percentages become fractions. */
    public double toSi() {
        return toSi;
    }

    /** The word used in tables. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The property of a table word. */
    static Optional<TreatmentProperty> ofWord(String word) {
        return Arrays.stream(values())
                .filter(property -> property.word().equals(word))
                .findFirst();
    }
}
