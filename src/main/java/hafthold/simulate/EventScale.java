package hafthold.simulate;

import hafthold.air.EventPhase;
import hafthold.air.HylandWexlerSaturationPressure;
import hafthold.air.SaturationPressure;
import hafthold.knife.Handle;
import hafthold.material.Axis;
import hafthold.material.Cut;
import hafthold.material.Family;
import hafthold.material.Finish;
import hafthold.material.Material;
import hafthold.material.Property;
import hafthold.source.Figure;
import hafthold.transport.EdgeUptake;
import hafthold.transport.Slab;
import hafthold.transport.coupled.Face;
import hafthold.transport.coupled.HeatConductivity;
import hafthold.transport.coupled.OpenFace;
import hafthold.transport.coupled.Surroundings;
import hafthold.transport.coupled.WarmScale;
import hafthold.transport.coupled.WetFace;
import hafthold.transport.coupled.WoodHandbookConductivity;
import java.util.Optional;

/**
 * A scale, or a liner by its edge, as events find it: the slab of the year that also takes time to warm up.
 *
 * @param slab the same as that of the year without events
 * @param scale the slab with its heat
 * @param finishResistance Z of the finish as the slab feels it, m2 s Pa/kg
 * @param dryKilograms dry mass of both scales: what shares its water with a closed bag
 */
record EventScale(Slab slab, WarmScale scale, double finishResistance, double dryKilograms) {
    private static final SaturationPressure SATURATION = new HylandWexlerSaturationPressure();
    /** Where a sheet says nothing: between resins and laminates (assumed). */
    private static final double USUAL_SPECIFIC_HEAT = 1400;

    private static final double USUAL_CONDUCTIVITY = 0.3;

    /** A scale; empty for what takes up no water. */
    static Optional<EventScale> of(Material material, Cut cut, Handle handle, Finish finish, double tang, Doubt doubt) {
        double exposed = EdgeUptake.exposedAreaRatio(
                handle.scaleThickness().metres(),
                handle.tangWidth().metres() / 2,
                handle.length().metres() / 2);
        return PartSlab.scale(material, cut, handle, finish, doubt)
                .map(slab -> of(
                        slab,
                        material,
                        finish.resistance().value() / exposed,
                        tang,
                        2
                                * slab.dryDensityKilogramsPerCubicMetre()
                                * slab.thicknessMetres()
                                * handle.tangWidth().metres()
                                * handle.length().metres()));
    }

    /** A liner, which is warmed and wetted by its edge; empty for what takes up no water. */
    static Optional<EventScale> ofLiner(Material material, double halfWidth, Finish finish, Doubt doubt) {
        return PartSlab.liner(material, halfWidth, finish, doubt)
                .map(slab -> of(slab, material, finish.resistance().value(), 0, 1e-3));
    }

    private static EventScale of(Slab slab, Material material, double finish, double tangMetres, double dryKilograms) {
        boolean wood = material.family() == Family.WOOD || material.family() == Family.TREATED_WOOD;
        double density = slab.dryDensityKilogramsPerCubicMetre();
        HeatConductivity conductivity =
                wood ? new WoodHandbookConductivity(density) : even(figure(material, Property.THERMAL_CONDUCTIVITY));
        return new EventScale(
                slab,
                new WarmScale(
                        slab,
                        conductivity,
                        figure(material, Property.SPECIFIC_HEAT)
                                .map(Figure::value)
                                .orElse(USUAL_SPECIFIC_HEAT),
                        WarmScale.STEEL_JOULES_PER_CUBIC_METRE_KELVIN * tangMetres / 2,
                        wood ? WarmScale.WOOD_ACTIVATION_FALL_JOULES_PER_MOLE : 0),
                finish,
                dryKilograms);
    }

    private static Optional<Figure> figure(Material material, Property property) {
        return material.sheet().figure(property, Axis.THROUGH);
    }

    private static HeatConductivity even(Optional<Figure> figure) {
        double lambda = figure.map(Figure::value).orElse(USUAL_CONDUCTIVITY);
        return (water, temperature) -> lambda;
    }

    /** The face in air. */
    Face inAir(EventPhase.Film film, Surroundings air) {
        double still = slab.surfaceResistanceSquareMetreSecondPascalsPerKilogram() - finishResistance;
        return new OpenFace(
                still * film.vapourResistanceShare() + finishResistance,
                film.heatTransferWattsPerSquareMetreKelvin(),
                air);
    }

    /** The face under water. */
    Face inWater(EventPhase.Film film, double celsius) {
        return new WetFace(
                WetFace.BARE_SQUARE_METRE_SECOND_PASCALS_PER_KILOGRAM + finishResistance,
                film.heatTransferWattsPerSquareMetreKelvin(),
                celsius);
    }

    /** The face in a bag that takes and gives nothing. */
    Face shut(EventPhase.Film film, Surroundings air) {
        return new OpenFace(Double.POSITIVE_INFINITY, film.heatTransferWattsPerSquareMetreKelvin(), air);
    }

    static SaturationPressure saturation() {
        return SATURATION;
    }
}
