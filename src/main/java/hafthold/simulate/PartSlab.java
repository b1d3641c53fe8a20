package hafthold.simulate;

import hafthold.knife.Blank;
import hafthold.knife.Handle;
import hafthold.material.Cut;
import hafthold.material.Finish;
import hafthold.material.Material;
import hafthold.material.WaterUptake;
import hafthold.transport.EdgeUptake;
import hafthold.transport.Slab;
import hafthold.transport.StillAirFilm;
import java.util.Optional;

/** The slab that each part of a knife is as moisture sees it; empty for what takes up no water. */
final class PartSlab {
    private PartSlab() {}

    /** A scale, which takes up water by its outer face, edges and ends. */
    static Optional<Slab> scale(Material material, Cut cut, Handle handle, Finish finish, Doubt doubt) {
        return material.water()
                .map(water -> slab(
                        water,
                        handle.scaleThickness().metres(),
                        doubt.diffusivityFactor(material) * uptakeFactor(water, cut, handle),
                        scaleResistance(handle, finish)));
    }

    /**
     * A sheet between glue lines, which takes up water by its edges only.
     *
     * @param halfWidthMetres from the middle to the edge
     */
    static Optional<Slab> liner(Material material, double halfWidthMetres, Finish finish, Doubt doubt) {
        return material.water()
                .map(water -> slab(
                        water,
                        halfWidthMetres,
                        doubt.diffusivityFactor(material) * water.acrossRatio().value(),
                        resistance(finish)));
    }

    /**
     * A part that is open to the air all round, taken as a slab of half its smaller side.
     *
     * @param halfSizeMetres half the smaller side
     */
    static Optional<Slab> block(Material material, Cut cut, double halfSizeMetres, Finish finish) {
        return material.water()
                .map(water -> slab(
                        water,
                        halfSizeMetres,
                        cut.thickness()
                                .mean(
                                        water.alongRatio().value(),
                                        water.acrossRatio().value(),
                                        1),
                        resistance(finish)));
    }

    /** A bare blank as it is kept, its edges and ends counted in where they are open. */
    static Optional<Slab> blank(Material material, Cut cut, Blank blank) {
        return material.water().map(water -> {
            double along = water.alongRatio().value();
            double across = water.acrossRatio().value();
            double through = cut.thickness().mean(along, across, 1);
            double factor = EdgeUptake.factor(
                    blank.depthMetres(),
                    blank.toEdgeMetres(),
                    blank.toEndMetres(),
                    cut.width().mean(along, across, 1) / through,
                    cut.length().mean(along, across, 1) / through);
            double area = EdgeUptake.exposedAreaRatio(blank.depthMetres(), blank.toEdgeMetres(), blank.toEndMetres());
            return slab(
                    water,
                    blank.depthMetres(),
                    through * factor,
                    StillAirFilm.RESISTANCE_SQUARE_METRE_SECOND_PASCALS_PER_KILOGRAM / area);
        });
    }

    /** The same of a material that water passes through so many times as fast. */
    static Slab quicker(Slab slab, double factor) {
        return factor == 1
                ? slab
                : new Slab(
                        slab.thicknessMetres(),
                        slab.dryDensityKilogramsPerCubicMetre(),
                        slab.isotherm(),
                        slab.diffusivity().times(factor),
                        slab.surfaceResistanceSquareMetreSecondPascalsPerKilogram());
    }

    private static Slab slab(WaterUptake water, double thickness, double speedFactor, double resistance) {
        return new Slab(
                thickness,
                water.dryDensity().value(),
                water.isotherm(),
                water.diffusivity().times(speedFactor),
                resistance);
    }

    /** Diffusivity through the scale as it lies, its edges and ends counted in, over that through the material. */
    private static double uptakeFactor(WaterUptake water, Cut cut, Handle handle) {
        double along = water.alongRatio().value();
        double across = water.acrossRatio().value();
        double throughScale = cut.thickness().mean(along, across, 1);
        return throughScale
                * EdgeUptake.factor(
                        handle.scaleThickness().metres(),
                        handle.tangWidth().metres() / 2,
                        handle.length().metres() / 2,
                        cut.width().mean(along, across, 1) / throughScale,
                        cut.length().mean(along, across, 1) / throughScale);
    }

    /** Film and finish of the face, thinner in effect as edges and ends are open and finished too. */
    private static double scaleResistance(Handle handle, Finish finish) {
        return resistance(finish)
                / EdgeUptake.exposedAreaRatio(
                        handle.scaleThickness().metres(),
                        handle.tangWidth().metres() / 2,
                        handle.length().metres() / 2);
    }

    private static double resistance(Finish finish) {
        return StillAirFilm.RESISTANCE_SQUARE_METRE_SECOND_PASCALS_PER_KILOGRAM
                + finish.resistance().value();
    }
}
