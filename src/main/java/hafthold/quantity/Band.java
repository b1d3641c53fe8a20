package hafthold.quantity;

/**
 * A figure with the range it may honestly lie in: low, value, high, all in one unit that the holder names.
 *
 * @param low lower end of the plausible range, at most {@code value}
 * @param value the figure to work with
 * @param high upper end of the plausible range, at least {@code value}
 */
public record Band(double low, double value, double high) {

    /** Rejects numbers that are not finite or not in order. */
    public Band {
        if (!Double.isFinite(low) || !Double.isFinite(value) || !Double.isFinite(high)) {
            throw new IllegalArgumentException(
                    "a band needs three finite numbers, got " + low + ", " + value + ", " + high);
        }
        if (low > value || value > high) {
            throw new IllegalArgumentException(
                    "a band needs low <= value <= high, got " + low + ", " + value + ", " + high);
        }
    }

    /** A band without width. */
    public static Band exact(double value) {
        return new Band(value, value, value);
    }

    /** The band multiplied by a factor of zero or more. */
    public Band times(double factor) {
        if (factor < 0) {
            throw new IllegalArgumentException("factor must not be negative, got " + factor);
        }
        return new Band(low * factor, value * factor, high * factor);
    }

    /** True where low, value and high are one number. */
    public boolean isExact() {
        return low == value && value == high;
    }
}
