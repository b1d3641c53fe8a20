package hafthold.transport.coupled;

import hafthold.air.SaturationPressure;
import hafthold.material.HailwoodHorrobinIsotherm;
import hafthold.material.MoistureDiffusivity;
import hafthold.material.SorptionIsotherm;
import hafthold.numeric.GradedGrid;

/**
 * A solution made up beforehand for 7 mm of wood, s = x/h:
 *
 * <pre>
 * M = 0.1 + 0.03 s^2 + 0.02 sin(2 pi t/2 d) cos(pi s)     T = 20 + 4 sin(2 pi t/1 d) cos(pi s/2)  in C
 * </pre>
 *
 * <p>What must be set free inside and what the air must be are worked out from the equations by hand.
 */
final class MadeUpSolution implements Sources, Surroundings {
    static final double THICKNESS = 0.007;
    static final double DENSITY = 600;
    static final double RESISTANCE = 1 / 2.5e-8;
    static final double HEAT_TRANSFER = 9;
    private static final double DRY_HEAT = 1250;
    private static final double WATER_HEAT = 4186;
    private static final double SLOW = 2 * Math.PI / 172_800;
    private static final double FAST = 2 * Math.PI / 86_400;

    final SaturationPressure saturation = new BuildingStandardSaturation();
    final SorptionIsotherm isotherm = new HailwoodHorrobinIsotherm();
    final MoistureDiffusivity diffusivity = new MoistureDiffusivity(1e-11, 15, 38_500, 20);

    CoupledSlab slab() {
        PorousMaterial material = new PorousMaterial(
                new WoodStorage(isotherm, DENSITY),
                VapourPermeability.NONE,
                LiquidConductivity.NONE,
                (w, t) -> diffusivity.squareMetresPerSecond(w / DENSITY, t),
                (w, t) -> conductivity(w / DENSITY),
                new HeatCapacity(DENSITY * DRY_HEAT, WATER_HEAT));
        return new CoupledSlab(
                material,
                SealedFace.BARE,
                new OpenFace(RESISTANCE, HEAT_TRANSFER, this),
                saturation,
                CoupledSlab.LATENT_HEAT_JOULES_PER_KILOGRAM,
                this);
    }

    CoupledProfile start(GradedGrid grid) {
        double[] water = new double[grid.size()];
        double[] temperature = new double[grid.size()];
        for (int i = 0; i < water.length; i++) {
            water[i] = DENSITY * moisture(grid.position(i), 0);
            temperature[i] = temperature(grid.position(i), 0);
        }
        return new CoupledProfile(grid, water, temperature);
    }

    private static double conductivity(double moisture) {
        return 0.13 + 0.3 * moisture;
    }

    double moisture(double x, double t) {
        double s = x / THICKNESS;
        return 0.1 + 0.03 * s * s + 0.02 * Math.sin(SLOW * t) * Math.cos(Math.PI * s);
    }

    double temperature(double x, double t) {
        return 20 + 4 * Math.sin(FAST * t) * Math.cos(0.5 * Math.PI * x / THICKNESS);
    }

    private double moistureSlope(double x, double t) {
        double s = x / THICKNESS;
        return (0.06 * s - 0.02 * Math.PI * Math.sin(SLOW * t) * Math.sin(Math.PI * s)) / THICKNESS;
    }

    private double temperatureSlope(double x, double t) {
        double s = x / THICKNESS;
        return -2 * Math.PI * Math.sin(FAST * t) * Math.sin(0.5 * Math.PI * s) / THICKNESS;
    }

    /** rho0 [M_t - D M_xx - D (a M_x + Ea/(R T^2) T_x) M_x]. */
    @Override
    public double waterKilogramsPerCubicMetreSecond(double x, double t) {
        double s = x / THICKNESS;
        double d = diffusivity.squareMetresPerSecond(moisture(x, t), temperature(x, t));
        double rate = 0.02 * SLOW * Math.cos(SLOW * t) * Math.cos(Math.PI * s);
        double bend = (0.06 - 0.02 * Math.PI * Math.PI * Math.sin(SLOW * t) * Math.cos(Math.PI * s))
                / (THICKNESS * THICKNESS);
        double kelvin = temperature(x, t) + 273.15;
        double speed = diffusivity.activationJoulesPerMole() / (MoistureDiffusivity.GAS_CONSTANT * kelvin * kelvin);
        double slope = moistureSlope(x, t);
        double coefficientSlope = d * (diffusivity.moistureExponent() * slope + speed * temperatureSlope(x, t));
        return DENSITY * (rate - d * bend - coefficientSlope * slope);
    }

    /** C T_t - lambda T_xx - lambda1 M_x T_x. */
    @Override
    public double heatWattsPerCubicMetre(double x, double t) {
        double wave = Math.cos(0.5 * Math.PI * x / THICKNESS);
        double m = moisture(x, t);
        double rate = 4 * FAST * Math.cos(FAST * t) * wave;
        double bend = -Math.PI * Math.PI * Math.sin(FAST * t) * wave / (THICKNESS * THICKNESS);
        return DENSITY * (DRY_HEAT + WATER_HEAT * m) * rate
                - conductivity(m) * bend
                - 0.3 * moistureSlope(x, t) * temperatureSlope(x, t);
    }

    double waterOut(double t) {
        double d = diffusivity.squareMetresPerSecond(moisture(THICKNESS, t), temperature(THICKNESS, t));
        return -DENSITY * d * moistureSlope(THICKNESS, t);
    }

    @Override
    public double vapourPascals(double t) {
        double celsius = temperature(THICKNESS, t);
        double activity = isotherm.waterActivity(moisture(THICKNESS, t), celsius);
        return activity * saturation.pascals(celsius) - RESISTANCE * waterOut(t);
    }

    @Override
    public double temperatureCelsius(double t) {
        double conducted = -conductivity(moisture(THICKNESS, t)) * temperatureSlope(THICKNESS, t);
        double latent = CoupledSlab.LATENT_HEAT_JOULES_PER_KILOGRAM * waterOut(t);
        return temperature(THICKNESS, t) - (conducted - latent) / HEAT_TRANSFER;
    }
}
