package hafthold.air;

import java.util.Locale;
import java.util.Optional;

/** How the monthly humidity of a place was come by, and so how far it may be off. */
public enum HumidityKind {
    /** Printed by the weather service as relative humidity. */
    PUBLISHED(2),
    /** Worked out from the printed mean vapour pressure; rounding and ice make it doubtful in frost. */
    DERIVED_FROM_VAPOUR_PRESSURE(2),
    /** Monthly means of one typical-year file. */
    TYPICAL_YEAR(6),
    /** Remembered; the print was not seen again. */
    MEMORY(3),
    /** Mean of stations near by. */
    NEIGHBOUR_STATIONS(4);

    private static final double FROST_CELSIUS = 0;
    private static final double HARD_FROST_CELSIUS = -15;
    private static final double FROST_POINTS = 4;
    private static final double HARD_FROST_POINTS = 8;

    private final double points;

    HumidityKind(double points) {
        this.points = points;
    }

    /**
     * Uncertainty of a month's mean humidity, either way.
     *
     * <p>The figures are this project's judgement. Humidity derived from vapour pressure: 2 points from 0 C up, 4 in frost
     * down to -15 C, 8 below.
     *
     * @param meanCelsius the month's mean temperature, degrees Celsius
     * @return percentage points of relative humidity
     */
    public double uncertaintyPoints(double meanCelsius) {
        if (this != DERIVED_FROM_VAPOUR_PRESSURE || meanCelsius >= FROST_CELSIUS) {
            return points;
        }
        return meanCelsius >= HARD_FROST_CELSIUS ? FROST_POINTS : HARD_FROST_POINTS;
    }

    /** The word used in tables: the name in lower case. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The kind that a table's word means; empty for any other word. */
    public static Optional<HumidityKind> of(String word) {
        for (HumidityKind kind : values()) {
            if (kind.word().equals(word)) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }
}
