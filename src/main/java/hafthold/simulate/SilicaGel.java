package hafthold.simulate;

/**
 * Dry silica gel that takes up what a scale in the same bag gives off: water over dry mass q = 0.36 (1 - exp(-2 H)) at
 * relative humidity H. A judged curve through a supplier's 12 % at 24 % humidity and some 30 % near saturation; gel is
 * quick beside wood, so it is taken to be in balance with its air.
 *
 * @param kilograms dry mass, positive
 */
record SilicaGel(double kilograms) {
    private static final double MOST = 0.36;
    private static final double STEEPNESS = 2;

    /** Humidity it keeps after taking up so much water, kg. */
    double humidityFraction(double waterKilograms) {
        double share = Math.min(0.86, waterKilograms / kilograms / MOST);
        return Math.min(1, -Math.log(1 - share) / STEEPNESS);
    }
}
