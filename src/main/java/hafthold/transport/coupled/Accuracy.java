package hafthold.transport.coupled;

/**
 * Largest local error of a time step.
 *
 * @param waterKilogramsPerCubicMetre in water content, kg/m3, positive
 * @param kelvin in temperature, positive
 */
public record Accuracy(double waterKilogramsPerCubicMetre, double kelvin) {
    /** Rejects what is not positive. */
    public Accuracy {
        if (!(waterKilogramsPerCubicMetre > 0) || !(kelvin > 0)) {
            throw new IllegalArgumentException("accuracy asks for positive errors, got " + waterKilogramsPerCubicMetre
                    + " kg/m3, " + kelvin + " K");
        }
    }
}
