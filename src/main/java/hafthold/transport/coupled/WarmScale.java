package hafthold.transport.coupled;

import hafthold.air.AirSeries;
import hafthold.air.HylandWexlerSaturationPressure;
import hafthold.air.SaturationPressure;
import hafthold.material.MoistureDiffusivity;
import hafthold.material.SorptionIsotherm;
import hafthold.numeric.GradedGrid;
import hafthold.quantity.Temperature;
import hafthold.transport.Slab;

/**
 * A scale on its tang that takes time to warm up: the slab as moisture sees it and what heat needs to know besides. For
 * events of minutes and hours; a season needs no more than the slab at the temperature of its air.
 *
 * <p>Bound water diffuses along its content, as in the isothermal slab, and gives up its latent heat at the face. Above
 * saturation of the cell walls D stays at its value there. In wood the activation energy falls with moisture content
 * (siau-1984, from memory: 9200 cal/mol less 70 a per cent), so that a = 12 at 20 C is 10.7 at 55 C: without it water at 65 C
 * would enter wet wood a third too fast.
 *
 * @param slab thickness, density, isotherm, diffusivity, film and finish
 * @param conductivity across the thickness
 * @param drySpecificHeatJoulesPerKilogramKelvin c_dry, positive
 * @param tangHeatCapacityJoulesPerSquareMetreKelvin half the tang: density times heat times half its thickness; zero or
 *     more
 * @param activationFallJoulesPerMole by how much the activation energy of the diffusivity falls for a moisture content of 1
 *     kg/kg, J/mol, zero or more; {@link #WOOD_ACTIVATION_FALL_JOULES_PER_MOLE} for wood
 */
public record WarmScale(
        Slab slab,
        HeatConductivity conductivity,
        double drySpecificHeatJoulesPerKilogramKelvin,
        double tangHeatCapacityJoulesPerSquareMetreKelvin,
        double activationFallJoulesPerMole) {
    /** 70 cal/mol for each per cent of moisture content. */
    public static final double WOOD_ACTIVATION_FALL_JOULES_PER_MOLE = 7000 * 4.184;

    /** Steel, 7850 kg/m3 times 475 J/(kg K); common handbook values from memory. */
    public static final double STEEL_JOULES_PER_CUBIC_METRE_KELVIN = 7850 * 475.0;

    private static final int GAPS = 48;
    private static final double FINEST_SHARE = 1e-3;
    private static final double ACCURATE_FRACTION = 2e-5;
    private static final double ACCURATE_KELVIN = 0.01;
    private static final SaturationPressure SATURATION = new HylandWexlerSaturationPressure();

    /** Rejects what heat cannot be. */
    public WarmScale {
        if (!(drySpecificHeatJoulesPerKilogramKelvin > 0)
                || !(tangHeatCapacityJoulesPerSquareMetreKelvin >= 0)
                || !(activationFallJoulesPerMole >= 0)) {
            throw new IllegalArgumentException("a scale needs a positive specific heat and a tang of zero or more, got "
                    + drySpecificHeatJoulesPerKilogramKelvin + " J/(kg K), "
                    + tangHeatCapacityJoulesPerSquareMetreKelvin + " J/(m2 K)");
        }
    }

    /** A scale whose activation energy does not depend on moisture. */
    public WarmScale(
            Slab slab,
            HeatConductivity conductivity,
            double drySpecificHeatJoulesPerKilogramKelvin,
            double tangHeatCapacityJoulesPerSquareMetreKelvin) {
        this(slab, conductivity, drySpecificHeatJoulesPerKilogramKelvin, tangHeatCapacityJoulesPerSquareMetreKelvin, 0);
    }

    /** A start at one moisture content, kg/kg, and temperature, degrees Celsius, throughout. */
    public CoupledProfile evenly(double moistureFraction, double temperatureCelsius) {
        double thickness = slab.thicknessMetres();
        GradedGrid grid = GradedGrid.of(thickness, GAPS, FINEST_SHARE * thickness);
        return CoupledProfile.even(
                grid, moistureFraction * slab.dryDensityKilogramsPerCubicMetre(), temperatureCelsius);
    }

    /**
     * Leads the scale through air.
     *
     * @param start profile to start from, such as the last one of another history
     * @param air sample 0 is at the start; level after its last sample
     * @param seconds times to take profiles at, rising, the first above zero
     */
    public CoupledHistory inAir(CoupledProfile start, AirSeries air, double... seconds) {
        return through(
                new OpenFace(
                        slab.surfaceResistanceSquareMetreSecondPascalsPerKilogram(),
                        OpenFace.ROOM_HEAT_TRANSFER_WATTS_PER_SQUARE_METRE_KELVIN,
                        Surroundings.of(air, SATURATION)),
                start,
                seconds);
    }

    /**
     * Leads the scale through a spell under water.
     *
     * @param start profile to start from
     * @param face the water and what the finish holds back
     * @param seconds times to take profiles at, rising, the first above zero
     */
    public CoupledHistory underWater(CoupledProfile start, WetFace face, double... seconds) {
        return through(face, start, seconds);
    }

    /**
     * Leads the scale on with any face in front.
     *
     * @param front face in air or water
     * @param start profile to start from
     * @param seconds times to take profiles at, rising, the first above zero
     */
    public CoupledHistory through(Face front, CoupledProfile start, double... seconds) {
        double density = slab.dryDensityKilogramsPerCubicMetre();
        CoupledSlab coupled = new CoupledSlab(
                material(), new SealedFace(tangHeatCapacityJoulesPerSquareMetreKelvin), front, SATURATION);
        return CoupledSolution.through(
                coupled, start, new Accuracy(ACCURATE_FRACTION * density, ACCURATE_KELVIN), seconds);
    }

    private PorousMaterial material() {
        double density = slab.dryDensityKilogramsPerCubicMetre();
        return new PorousMaterial(
                new WoodStorage(slab.isotherm(), density),
                VapourPermeability.NONE,
                LiquidConductivity.NONE,
                boundWater(slab.isotherm(), slab.diffusivity(), density),
                conductivity,
                new HeatCapacity(
                        density * drySpecificHeatJoulesPerKilogramKelvin,
                        HeatCapacity.LIQUID_WATER_JOULES_PER_KILOGRAM_KELVIN));
    }

    private WaterDiffusivity boundWater(SorptionIsotherm isotherm, MoistureDiffusivity diffusivity, double density) {
        double reference = 1 / (diffusivity.referenceCelsius() + Temperature.ZERO_CELSIUS_KELVIN);
        double fall = activationFallJoulesPerMole / MoistureDiffusivity.GAS_CONSTANT;
        return (water, temperature) -> {
            double moisture = Math.min(water / density, isotherm.moistureFraction(1, temperature));
            double slower = fall * (1 / (temperature + Temperature.ZERO_CELSIUS_KELVIN) - reference);
            return diffusivity.squareMetresPerSecond(moisture, temperature) * Math.exp(slower * moisture);
        };
    }

    /** Mean moisture content of a profile, kg/kg. */
    public double meanFraction(CoupledProfile profile) {
        return profile.meanWaterKilogramsPerCubicMetre() / slab.dryDensityKilogramsPerCubicMetre();
    }

    /** Moisture content of a profile at the face, kg/kg. */
    public double surfaceFraction(CoupledProfile profile) {
        return profile.waterKilogramsPerCubicMetre(profile.grid().size() - 1) / slab.dryDensityKilogramsPerCubicMetre();
    }
}
