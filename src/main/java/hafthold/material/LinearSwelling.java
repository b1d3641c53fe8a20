package hafthold.material;

import hafthold.quantity.Band;
import hafthold.source.Figure;
import java.util.EnumMap;
import java.util.Map;

/**
 * Movement in proportion to moisture: strain = coefficient x (M2 - M1), as laminates, resins and hard tissues are
 * tabulated.
 *
 * @param coefficient strain per moisture content by axis, each zero or more
 */
public record LinearSwelling(Map<Axis, Figure> coefficient) implements Swelling {

    /** Keeps its own copy. */
    public LinearSwelling {
        coefficient = Map.copyOf(coefficient);
    }

    @Override
    public double perMoisture(Axis axis, double fromMoistureFraction) {
        return coefficient.get(axis).value();
    }

    @Override
    public double stillAboveFraction() {
        return Double.POSITIVE_INFINITY;
    }

    @Override
    public Swelling perHeavierMass(double factor) {
        Map<Axis, Figure> heavier = new EnumMap<>(Axis.class);
        coefficient.forEach((axis, figure) ->
                heavier.put(axis, figure.withBand(figure.band().times(factor))));
        return new LinearSwelling(heavier);
    }

    @Override
    public Band relativeBand(Axis axis) {
        Band band = coefficient.get(axis).band();
        return band.value() == 0 ? Band.exact(1) : new Band(band.low() / band.value(), 1, band.high() / band.value());
    }
}
