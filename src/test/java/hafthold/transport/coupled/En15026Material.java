package hafthold.transport.coupled;

/**
 * The material of EN 15026:2007, Annex A; its functions were read in an open implementation of the benchmark and stand by
 * the reference figures, not in the print.
 */
final class En15026Material {
    private static final double VAPOUR_GAS_CONSTANT = 8.314 / 0.018;
    private static final double WATER_DENSITY = 1000;
    private static final double MOST_WATER = 146;
    private static final double REFERENCE_KELVIN = 293.15;

    private En15026Material() {}

    static PorousMaterial functions() {
        return new PorousMaterial(
                new RetentionCurve(),
                En15026Material::permeability,
                En15026Material::conductivity,
                WaterDiffusivity.NONE,
                (w, t) -> 1.5 + 15.8 / 1000 * w,
                new HeatCapacity(1.824e6, 4187));
    }

    private static double permeability(double w, double t) {
        double dry = 1 - w / MOST_WATER;
        return 1 / (VAPOUR_GAS_CONSTANT * REFERENCE_KELVIN) * 26.1e-6 / 200 * dry / (0.503 * dry * dry + 0.497);
    }

    private static double conductivity(double w, double t) {
        double d = w - 73;
        return Math.exp(-39.2619
                + d * (0.0704 + d * (-1.7420e-4 + d * (-2.7953e-6 + d * (-1.1566e-7 + d * 2.5969e-9)))));
    }

    /**
     * w = 146 / (1 + (8e-8 s)^1.6)^0.375, s = -rho_w R_v T ln(phi) at T = 293.15 K: only with suction and retention both at
     * that one temperature do the figures come out; at the actual one they are 1 % off.
     */
    private record RetentionCurve() implements MoistureStorage {
        private static final double PASCALS = WATER_DENSITY * VAPOUR_GAS_CONSTANT * REFERENCE_KELVIN;

        @Override
        public double waterKilogramsPerCubicMetre(double relativeHumidityFraction, double temperatureCelsius) {
            double suction = -PASCALS * Math.log(relativeHumidityFraction);
            return MOST_WATER / Math.pow(1 + Math.pow(8e-8 * suction, 1.6), 0.375);
        }

        @Override
        public double relativeHumidityFraction(double waterKilogramsPerCubicMetre, double temperatureCelsius) {
            return Math.exp(-suctionPascals(waterKilogramsPerCubicMetre, temperatureCelsius) / PASCALS);
        }

        @Override
        public double suctionPascals(double waterKilogramsPerCubicMetre, double temperatureCelsius) {
            double share = Math.min(1, waterKilogramsPerCubicMetre / MOST_WATER);
            return Math.pow(Math.max(0, Math.pow(share, -1 / 0.375) - 1), 1 / 1.6) / 8e-8;
        }
    }
}
