package hafthold.transport;

import hafthold.air.AirSeries;
import hafthold.material.HailwoodHorrobinIsotherm;
import hafthold.material.MoistureDiffusivity;
import hafthold.material.SorptionIsotherm;
import java.util.Arrays;

/**
 * The test panel of US Forest Products Laboratory paper FPL 462 as a slab: ponderosa pine sapwood, 3 x 5 x 5/8 in, finished
 * all round, taken from 30 to 90 % relative humidity at 80 F. The panel's size, its density (400 kg/m3) and the diffusivity
 * of pine (Siau 1984 at this density) rest on memory.
 *
 * @param speed factor on the diffusivity of pine: panels take up water by end grain early, which a slab lacks
 */
record FinishedPanel(double speed) {
    /** Fits all finishes of the paper best, together to 1.1 points; from 1 to 6 the resistances change by 8 %. */
    static final double FITTED_SPEED = 2.5;

    private static final double CELSIUS = (80 - 32) / 1.8;
    private static final double DRY = 0.30;
    private static final double DAMP = 0.90;
    private static final double HALF_THICKNESS = 0.5 * 5 / 8 * 0.0254;
    private static final double HALF_WIDTH = 1.5 * 0.0254;
    private static final double HALF_LENGTH = 2.5 * 0.0254;
    private static final double ALONG_RATIO = 20;
    private static final double DENSITY = 400;
    private static final SorptionIsotherm PINE = new HailwoodHorrobinIsotherm();
    private static final MoistureDiffusivity DIFFUSIVITY = new MoistureDiffusivity(3.7e-11, 8.7, 0, CELSIUS);
    private static final double STEP_SECONDS = 2 * 3600;
    private static final int STEPS_A_DAY = 12;
    private static final int DAYS = 14;

    /** Weight gain after each day from the first to the fourteenth behind a finish, as moisture content. */
    double[] gains(double finishResistance) {
        double edges = EdgeUptake.factor(HALF_THICKNESS, HALF_WIDTH, HALF_LENGTH, 1, ALONG_RATIO);
        double area = EdgeUptake.exposedAreaRatio(HALF_THICKNESS, HALF_WIDTH, HALF_LENGTH);
        double resistance =
                (StillAirFilm.RESISTANCE_SQUARE_METRE_SECOND_PASCALS_PER_KILOGRAM + finishResistance) / area;
        Slab slab = new Slab(HALF_THICKNESS, DENSITY, PINE, DIFFUSIVITY.times(speed * edges), resistance);
        double[] temperature = new double[DAYS * STEPS_A_DAY + 1];
        double[] humidity = new double[temperature.length];
        Arrays.fill(temperature, CELSIUS);
        Arrays.fill(humidity, DAMP);
        double start = PINE.moistureFraction(DRY, CELSIUS);
        MoistureHistory history =
                TransientMoisture.from(slab, start, new AirSeries(STEP_SECONDS, temperature, humidity));
        double[] gains = new double[DAYS + 1];
        for (int day = 1; day <= DAYS; day++) {
            gains[day] = history.meanFraction(day * STEPS_A_DAY) - start;
        }
        return gains;
    }

    /** Percent less gain than bare wood after a number of days. */
    double effectiveness(double[] bare, double[] finished, int day) {
        return 100 * (1 - finished[day] / bare[day]);
    }
}
