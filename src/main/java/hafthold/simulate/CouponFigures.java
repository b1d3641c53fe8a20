package hafthold.simulate;

import hafthold.material.Axis;
import hafthold.material.Material;
import hafthold.material.WaterUptake;

/**
 * Figures of a material as the bench and the tables know them, under one doubt.
 */
public final class CouponFigures {
    /** Moisture content from which movement is told, kg/kg. */
    public static final double FROM_FRACTION = 0.10;

    private static final double CELSIUS = 20;

    private final Material material;
    private final WaterUptake water;
    private final Doubt doubt;

    CouponFigures(Material material, Doubt doubt) {
        this.material = material;
        this.doubt = doubt;
        water = material.water().orElseThrow();
    }

    /** Strain per moisture content along an axis, from ten percent. */
    public double perMoisture(Axis axis) {
        return doubt.perMoisture(material, axis, FROM_FRACTION);
    }

    /** Water held at rest over what the tables say. */
    public double sorptionFactor() {
        return doubt.sorptionFactor(material);
    }

    /** Water held at rest in air of 20 C, kg/kg. */
    public double atRest(double humidityFraction) {
        return sorptionFactor() * water.isotherm().moistureFraction(humidityFraction, CELSIUS);
    }

    /** Diffusivity at no moisture and the temperature of the tables, m2/s. */
    public double diffusivity() {
        return water.diffusivityReference().value() * doubt.diffusivityFactor(material);
    }
}
