package hafthold.simulate;

import hafthold.air.HylandWexlerSaturationPressure;
import hafthold.knife.Blank;
import hafthold.material.Cut;
import hafthold.material.Hybrid;
import hafthold.material.ScaleMaterial;
import hafthold.material.WaterUptake;
import hafthold.quantity.Band;
import hafthold.transport.BlockMoisture;
import hafthold.transport.SheetModes;
import hafthold.transport.StillAirFilm;
import java.util.Optional;

/**
 * How long a bare blank takes to come near to rest in air that is held: as crossed sheets, so that ends count from the first
 * hour, with a diffusivity that follows its moisture and the speed of watched boards ({@link BlockPiece} does the same for
 * blocks on the shelf). It starts even throughout.
 *
 * @param celsius temperature of the air
 * @param humidityFraction its relative humidity, 0 to 1
 * @param withinFraction how near its mean must come, kg/kg, more than 0
 */
public record RestTime(double celsius, double humidityFraction, double withinFraction) {
    private static final HylandWexlerSaturationPressure SATURATION = new HylandWexlerSaturationPressure();
    private static final double SECONDS_A_DAY = 86_400;

    /** Most that a step may bring the slowest wave nearer to rest, share of it. */
    private static final double STEP = 0.01;

    /**
     * Days of a blank, of a hybrid its leading part, from the quickest water of its range to the slowest; empty for what takes
     * up no water.
     *
     * @param startFraction its moisture content, kg/kg
     */
    public Optional<Band> days(ScaleMaterial material, Cut cut, Blank blank, double startFraction) {
        return HandleEngine.partsOf(material, cut).stream()
                .filter(part -> part.material().water().isPresent())
                .findFirst()
                .map(part -> {
                    Band speed = part.material()
                            .water()
                            .orElseThrow()
                            .diffusivityReference()
                            .band();
                    double usual = DryingSpeed.of(part.material());
                    return new Band(
                            days(part, blank, startFraction, usual * speed.high() / speed.value()),
                            days(part, blank, startFraction, usual),
                            days(part, blank, startFraction, usual * speed.low() / speed.value()));
                });
    }

    private double days(Hybrid.Part part, Blank blank, double startFraction, double quicker) {
        WaterUptake water = part.material().water().orElseThrow();
        double rest = water.isotherm().moistureFraction(humidityFraction, celsius);
        double atRest = quicker * water.diffusivity().squareMetresPerSecond(rest, celsius);
        BlockMoisture moisture = block(part.cut(), blank, water, startFraction, atRest);
        moisture.meet(rest);
        double diffused = STEP / moisture.slowestRate();
        double seconds = 0;
        double left = Math.abs(startFraction - rest);
        while (left > withinFraction) {
            double seen = BlockPiece.seenFraction(moisture, water.swelling().stillAboveFraction());
            double speed = quicker * water.diffusivity().squareMetresPerSecond(seen, celsius);
            moisture.pass(diffused);
            double then = Math.abs(moisture.meanFraction() - rest);
            double share = then > withinFraction ? 1 : Math.log(left / withinFraction) / Math.log(left / then);
            seconds += share * diffused / speed;
            left = then;
        }
        return seconds / SECONDS_A_DAY;
    }

    private BlockMoisture block(Cut cut, Blank blank, WaterUptake water, double startFraction, double diffusivity) {
        double along = water.alongRatio().value();
        double across = water.acrossRatio().value();
        double rest = water.isotherm().moistureFraction(humidityFraction, celsius);
        double perMetre = SATURATION.pascals(celsius)
                * water.isotherm().waterActivitySlope(rest, celsius)
                / (StillAirFilm.RESISTANCE_SQUARE_METRE_SECOND_PASCALS_PER_KILOGRAM
                        * water.dryDensity().value()
                        * diffusivity);
        return new BlockMoisture(
                sheet(blank.depthMetres(), cut.thickness().mean(along, across, 1), perMetre),
                sheet(blank.toEdgeMetres(), cut.width().mean(along, across, 1), perMetre),
                sheet(blank.toEndMetres(), cut.length().mean(along, across, 1), perMetre),
                startFraction);
    }

    /** From where no water passes to the open face; closed where that is nowhere. */
    private static SheetModes sheet(double metres, double ratio, double filmPerMetre) {
        return Double.isInfinite(metres)
                ? SheetModes.closed()
                : SheetModes.open(metres, metres * filmPerMetre / ratio, ratio);
    }
}
