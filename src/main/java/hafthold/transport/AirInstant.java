package hafthold.transport;

/** Air at one instant as the slab feels it; rewritten in place so that the time loop allocates nothing. */
final class AirInstant {
    /** Degrees Celsius. */
    double temperatureCelsius;

    /** H, relative humidity, 0 to 1. */
    double humidity;

    /** q = p_sat/(R rho0): what passes the surface for a difference of 1 in activity, m/s. */
    double exchange;

    /** D at zero moisture content and this temperature, m2/s. */
    double diffusivity;
}
