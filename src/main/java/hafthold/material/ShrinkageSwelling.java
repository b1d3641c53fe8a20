package hafthold.material;

import hafthold.quantity.Band;
import hafthold.source.Figure;
import hafthold.source.PublishedModel;
import java.util.Map;

/**
 * Movement of wood from its total shrinkage: strain = S (M2 - M1) / (FSP (1 - S) + S M1), no movement above the fibre
 * saturation point.
 *
 * <p>Wood Handbook equation 13-3, written there with S and M in percent and 30 % for FSP; here fractions throughout.
 *
 * @param shrinkage S by axis, green to oven-dry as a fraction of the green size, each in (0, 1)
 * @param fibreSaturationFraction FSP in kg/kg
 */
@PublishedModel(
        source = "wood-handbook-2010",
        locator = "chapter 13, equation 13-3",
        validity = "below the fibre saturation point; linear between green and oven-dry")
public record ShrinkageSwelling(Map<Axis, Figure> shrinkage, double fibreSaturationFraction) implements Swelling {

    /** Keeps its own copy. */
    public ShrinkageSwelling {
        shrinkage = Map.copyOf(shrinkage);
        if (!(fibreSaturationFraction > 0)) {
            throw new IllegalArgumentException("fibre saturation must be positive, got " + fibreSaturationFraction);
        }
    }

    @Override
    public double perMoisture(Axis axis, double fromMoistureFraction) {
        double s = shrinkage.get(axis).value();
        return s / (fibreSaturationFraction * (1 - s) + s * fromMoistureFraction);
    }

    /**
     * Equation 13-3 turned round: the shrinkage, as a fraction, of a wood that moves so much.
     *
     * @param perMoisture strain per kg/kg of the size at a moisture content
     * @param fromMoistureFraction that moisture content, kg/kg, below the fibre saturation point
     */
    public double shrinkageThatMoves(double perMoisture, double fromMoistureFraction) {
        return perMoisture
                * fibreSaturationFraction
                / (1 + perMoisture * (fibreSaturationFraction - fromMoistureFraction));
    }

    @Override
    public double stillAboveFraction() {
        return fibreSaturationFraction;
    }

    @Override
    public Swelling perHeavierMass(double factor) {
        return new ShrinkageSwelling(shrinkage, fibreSaturationFraction / factor);
    }

    @Override
    public Band relativeBand(Axis axis) {
        Band band = shrinkage.get(axis).band();
        return new Band(band.low() / band.value(), 1, band.high() / band.value());
    }
}
