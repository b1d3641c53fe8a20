package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.air.CommonYear;
import hafthold.air.HylandWexlerSaturationPressure;
import hafthold.material.Material;
import hafthold.transport.BlockMoisture;
import hafthold.transport.SheetModes;
import hafthold.transport.Slab;
import java.util.OptionalInt;

/**
 * A scale on the day it is sanded flush, so many days after it was glued to its tang: what the blank held at glue-up fades,
 * and what the bare scale holds in the workshop's air comes in its place.
 *
 * <p>How much is left fades by the modes of a sheet, at the diffusivity of the workshop's mean air. Stock that was read today
 * counts as the scale itself where it is sanded before so many days have passed, as it then has been glued already.
 */
final class GluedStock implements StockDays {
    private static final double SECONDS_A_DAY = 86_400;

    private final Material material;
    private final StockDays blank;
    private final StockDays scale;
    private final SheetModes modes;
    private final double diffusivity;
    private final int days;
    private final OptionalInt readOn;

    /**
     * A scale.
     *
     * @param blank what it is made of
     * @param scale the bare scale on its tang, had it always lain there
     * @param slab that scale as moisture sees it
     * @param air a year of hours in the workshop
     * @param days from glue-up to sanding
     * @param readOn day from 0 on 1 January on which the stock was read; empty where it was not
     */
    GluedStock(
            Material material,
            StockDays blank,
            StockDays scale,
            Slab slab,
            AirSeries air,
            int days,
            OptionalInt readOn) {
        this.material = material;
        this.blank = blank;
        this.scale = scale;
        this.days = days;
        this.readOn = readOn;
        YearMean mean = YearMean.of(air);
        double moisture = slab.isotherm().moistureFraction(mean.humidityFraction(), mean.celsius());
        diffusivity = slab.diffusivity().squareMetresPerSecond(moisture, mean.celsius());
        double exchange = new HylandWexlerSaturationPressure().pascals(mean.celsius())
                * slab.isotherm().waterActivitySlope(moisture, mean.celsius())
                / (slab.surfaceResistanceSquareMetreSecondPascalsPerKilogram()
                        * slab.dryDensityKilogramsPerCubicMetre());
        double depth = slab.thicknessMetres();
        modes = SheetModes.open(depth, depth * exchange / diffusivity, 1);
    }

    @Override
    public double[] under(Doubt doubt) {
        double[] ofBlank = blank.under(doubt);
        double[] ofScale = scale.under(doubt);
        double[] left = left(doubt);
        double[] sanded = new double[CommonYear.DAYS];
        for (int day = 0; day < sanded.length; day++) {
            int glued = Math.min(days, sinceReading(day));
            int from = Math.floorMod(day - glued, CommonYear.DAYS);
            sanded[day] = Math.max(0, ofScale[day] + (ofBlank[from] - ofScale[from]) * left[glued]);
        }
        return sanded;
    }

    private int sinceReading(int day) {
        return readOn.isPresent() ? Math.floorMod(day - readOn.getAsInt(), CommonYear.DAYS) : days;
    }

    /** Part of a change that is still to come after each number of days. */
    private double[] left(Doubt doubt) {
        BlockMoisture memory = new BlockMoisture(modes, SheetModes.closed(), SheetModes.closed(), 1);
        memory.meet(0);
        double aDay = diffusivity * doubt.diffusivityFactor(material) * SECONDS_A_DAY;
        double[] left = new double[days + 1];
        for (int day = 0; day <= days; day++) {
            left[day] = memory.meanFraction();
            memory.pass(aDay);
        }
        return left;
    }
}
