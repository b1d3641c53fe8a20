package hafthold.material;

/**
 * Water activity near one moisture content: its value, slope and curvature. Rewritten in place, so that time loops allocate
 * nothing.
 */
public final class LocalActivity {
    private double value;
    private double slope;
    private double curvature;

    /** Takes on new figures: activity 0 to 1, its first and its second derivative with moisture content in kg/kg. */
    public void set(double value, double slope, double curvature) {
        this.value = value;
        this.slope = slope;
        this.curvature = curvature;
    }

    /** Water activity, 0 to 1. */
    public double value() {
        return value;
    }

    /** First derivative with moisture content, per kg/kg. */
    public double slope() {
        return slope;
    }

    /** Second derivative with moisture content, per (kg/kg)^2. */
    public double curvature() {
        return curvature;
    }
}
