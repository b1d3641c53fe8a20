package hafthold.material;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a property row of the material tables may state: one unit each, and the factor from that unit to SI. */
public enum Property {
    /** Dry mass per volume. */
    DRY_DENSITY("kg/m3", 1),
    /** Equilibrium moisture of this wood over that of the handbook equation. */
    SORPTION_FACTOR("-", 1),
    /** Moisture content in saturated air, of a power-law isotherm. */
    MOISTURE_SATURATION("%", 0.01),
    /** Exponent of humidity in a power-law isotherm. */
    SORPTION_EXPONENT("-", 1),
    /** Monolayer moisture of a Guggenheim-Anderson-de Boer isotherm. */
    GAB_MONOLAYER("%", 0.01),
    /** Constant C of a Guggenheim-Anderson-de Boer isotherm. */
    GAB_C("-", 1),
    /** Constant K of a Guggenheim-Anderson-de Boer isotherm. */
    GAB_K("-", 1),
    /** Moisture diffusivity through the scale at zero moisture and the reference temperature. */
    DIFFUSIVITY("m2/s", 1),
    /** Exponent of moisture content (kg/kg) in the diffusivity. */
    DIFFUSIVITY_MOISTURE_EXPONENT("-", 1),
    /** Activation energy of the diffusivity. */
    DIFFUSIVITY_ACTIVATION("kJ/mol", 1000),
    /** Temperature the diffusivity is stated at. */
    DIFFUSIVITY_REFERENCE_TEMPERATURE("C", 1),
    /** Diffusivity along grain or sheet over that through the scale. */
    DIFFUSIVITY_ALONG_RATIO("-", 1),
    /** Liquid water that a face takes up, mass per area over the square root of time, 20 C. */
    WATER_ABSORPTION("kg/(m2 s^0.5)", 1),
    /** Shrinkage from green to oven-dry, of the green size. */
    SHRINKAGE("%", 0.01),
    /** Fibre saturation point. */
    FIBRE_SATURATION("%", 0.01),
    /** Strain per moisture content. */
    SWELLING_COEFFICIENT("%/%", 1),
    /** Linear thermal expansion at held moisture. */
    THERMAL_EXPANSION("1e-6/K", 1e-6),
    /** Young's modulus. */
    YOUNGS_MODULUS("GPa", 1e9),
    /** Shear modulus of a plane. */
    SHEAR_MODULUS("GPa", 1e9),
    /** Poisson's ratio of a plane: strain in the second axis from stress in the first. */
    POISSON_RATIO("-", 1),
    /** Tension strength. */
    TENSION_STRENGTH("MPa", 1e6),
    /** Shear strength; of an adhesive, lap shear strength. */
    SHEAR_STRENGTH("MPa", 1e6),
    /** Strain at which the material yields or crushes. */
    YIELD_STRAIN("%", 0.01),
    /** Highest temperature for lasting use. */
    SERVICE_TEMPERATURE("C", 1),
    /** Temperature at which a resin softens (glass transition). */
    SOFTENING_TEMPERATURE("C", 1),
    /** Thermal conductivity. */
    THERMAL_CONDUCTIVITY("W/(m K)", 1),
    /** Specific heat. */
    SPECIFIC_HEAT("J/(kg K)", 1);

    private final String unit;
    private final double toSi;

    Property(String unit, double toSi) {
        this.unit = unit;
        this.toSi = toSi;
    }

    /** True for what decides how far and how fast a scale moves, apart from the law of its diffusivity. */
    public boolean setsMovement() {
        return switch (this) {
            case SORPTION_FACTOR,
                    MOISTURE_SATURATION,
                    SORPTION_EXPONENT,
                    GAB_MONOLAYER,
                    GAB_C,
                    GAB_K,
                    DIFFUSIVITY,
                    SHRINKAGE,
                    FIBRE_SATURATION,
                    SWELLING_COEFFICIENT,
                    THERMAL_EXPANSION -> true;
            default -> false;
        };
    }

    /** The unit a table row must be in. */
    public String unit() {
        return unit;
    }

    /** Factor from the table's unit to SI (temperatures stay in degrees Celsius, percentages become fractions). */
    public double toSi() {
        return toSi;
    }

    /** The word used in tables. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The property of a table word. */
    public static Optional<Property> ofWord(String word) {
        return Arrays.stream(values())
                .filter(property -> property.word().equals(word))
                .findFirst();
    }
}
