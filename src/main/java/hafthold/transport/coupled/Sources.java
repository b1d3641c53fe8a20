package hafthold.transport.coupled;

/** Water and heat set free inside a slab, as an exact solution made up beforehand needs them. */
public interface Sources {
    /** Nothing is set free. */
    Sources NONE = new Sources() {
        @Override
        public double waterKilogramsPerCubicMetreSecond(double metres, double seconds) {
            return 0;
        }

        @Override
        public double heatWattsPerCubicMetre(double metres, double seconds) {
            return 0;
        }
    };

    /** Water at a place in metres from the back and a time in seconds, kg/(m3 s). */
    double waterKilogramsPerCubicMetreSecond(double metres, double seconds);

    /** Heat at a place in metres from the back and a time in seconds, W/m3. */
    double heatWattsPerCubicMetre(double metres, double seconds);
}
