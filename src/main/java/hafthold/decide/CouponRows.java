package hafthold.decide;

import hafthold.material.Axis;
import hafthold.material.GuggenheimAndersonDeBoerIsotherm;
import hafthold.material.HailwoodHorrobinIsotherm;
import hafthold.material.Material;
import hafthold.material.OwnFigure;
import hafthold.material.PowerIsotherm;
import hafthold.material.Property;
import hafthold.material.PropertySheet.Entry;
import hafthold.material.ShrinkageSwelling;
import hafthold.material.Swelling;
import hafthold.material.WaterUptake;
import hafthold.quantity.Band;
import hafthold.simulate.CouponFigures;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What a study puts into the shop's own tables: of each figure that the coupons tell, the row that gives it back. */
public final class CouponRows {
    private CouponRows() {}

    /** The rows; movement along each axis of a burl is scaled alike, since no direction of it can be told from another. */
    public static List<OwnFigure> of(CouponStudy study) {
        List<OwnFigure> rows = new ArrayList<>();
        Material material = study.material();
        WaterUptake water = material.water().orElseThrow();
        for (CouponFigure figure : study.told()) {
            switch (figure.kind()) {
                case ACROSS, THROUGH, ALONG ->
                    rows.add(movement(water.swelling(), figure.kind().axis(), figure.factor()));
                case ANY_WAY ->
                    Stream.of(Axis.ACROSS, Axis.THROUGH, Axis.ALONG)
                            .forEach(axis -> rows.add(movement(water.swelling(), axis, figure.factor())));
                case SORPTION -> rows.add(sorption(material, water, figure.factor()));
                case SPEED ->
                    rows.add(new OwnFigure(
                            Property.DIFFUSIVITY,
                            diffusivityAxis(material),
                            figure.factor().times(water.diffusivityReference().value())));
                case DENSITY ->
                    rows.add(new OwnFigure(
                            Property.DRY_DENSITY,
                            Axis.ANY,
                            figure.factor().times(water.dryDensity().value())));
                case WIDTH -> {
                    // follows from movement and water, which have rows of their own
                }
            }
        }
        return rows;
    }

    private static OwnFigure movement(Swelling swelling, Axis axis, Band factor) {
        double from = CouponFigures.FROM_FRACTION;
        Band moves = factor.times(swelling.perMoisture(axis, from));
        return swelling instanceof ShrinkageSwelling wood
                ? new OwnFigure(
                        Property.SHRINKAGE,
                        axis,
                        new Band(
                                wood.shrinkageThatMoves(moves.low(), from),
                                wood.shrinkageThatMoves(moves.value(), from),
                                wood.shrinkageThatMoves(moves.high(), from)))
                : new OwnFigure(Property.SWELLING_COEFFICIENT, axis, moves);
    }

    private static OwnFigure sorption(Material material, WaterUptake water, Band factor) {
        Property property = water.isotherm() instanceof GuggenheimAndersonDeBoerIsotherm
                ? Property.GAB_MONOLAYER
                : water.isotherm() instanceof PowerIsotherm ? Property.MOISTURE_SATURATION : Property.SORPTION_FACTOR;
        double tables = property == Property.SORPTION_FACTOR
                ? HailwoodHorrobinIsotherm.factorOf(water.isotherm())
                : material.sheet().figure(property).orElseThrow().value();
        return new OwnFigure(property, Axis.ANY, factor.times(tables));
    }

    private static Axis diffusivityAxis(Material material) {
        return Stream.of(Axis.THROUGH, Axis.ANY)
                .filter(axis -> material.sheet().figures().containsKey(new Entry(Property.DIFFUSIVITY, axis)))
                .findFirst()
                .orElse(Axis.ACROSS);
    }
}
