package hafthold.transport.coupled;

/** A material in which only heat moves. */
final class DryMaterial {
    private DryMaterial() {}

    static PorousMaterial of(double wattsPerMetreKelvin, double joulesPerCubicMetreKelvin) {
        return new PorousMaterial(
                new MoistureStorage() {
                    @Override
                    public double relativeHumidityFraction(double w, double t) {
                        return Math.min(1, w / 100);
                    }

                    @Override
                    public double waterKilogramsPerCubicMetre(double humidity, double t) {
                        return 100 * humidity;
                    }
                },
                VapourPermeability.NONE,
                LiquidConductivity.NONE,
                WaterDiffusivity.NONE,
                (w, t) -> wattsPerMetreKelvin,
                new HeatCapacity(joulesPerCubicMetreKelvin, 0));
    }
}
