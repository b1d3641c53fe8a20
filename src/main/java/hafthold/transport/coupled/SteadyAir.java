package hafthold.transport.coupled;

/** Air that stays as it is. */
record SteadyAir(double constantCelsius, double constantPascals) implements Surroundings {
    @Override
    public double temperatureCelsius(double seconds) {
        return constantCelsius;
    }

    @Override
    public double vapourPascals(double seconds) {
        return constantPascals;
    }
}
