package hafthold.air;

import hafthold.quantity.Band;
import hafthold.source.Figure;

/**
 * A stretch of an event during which the knife is in one kind of surroundings.
 *
 * @param seconds how long, positive
 * @param around what touches the scale
 * @param celsius temperature; counted from 0 C where {@code counted} is {@link Counted#OWN}, else kelvin above that air
 * @param counted what the temperature is counted from
 * @param ramp whether the temperature is reached at the end, in a straight line from what went before, and not at once
 * @param film how well the surroundings pass heat and vapour on to the face
 */
public record EventPhase(double seconds, Around around, Figure celsius, Counted counted, boolean ramp, Film film) {

    /** What a temperature is counted from. */
    public enum Counted {
        /** From 0 C. */
        OWN,
        /** From the air about the knife at that hour. */
        KNIFE,
        /** From the outdoor air at that hour. */
        OUTDOORS
    }

    /**
     * The layer next to the face.
     *
     * <p>Heat transfer coefficients are usual textbook sizes (assumed); vapour follows heat by the boundary-layer analogy,
     * but for radiation, which carries none.
     */
    public enum Film {
        /** Still air: convection and radiation 9 W/(m2 K). */
        STILL(9, 1),
        /** A fan or wind of some metres a second: 25 W/(m2 K), vapour film a fifth. */
        MOVING(25, 0.2),
        /** Water that hardly moves: 200 W/(m2 K). */
        DIP(200, 0.2),
        /** Spray or stirred water: 500 W/(m2 K). */
        SPRAY(500, 0.2);

        private final double heatTransfer;
        private final double vapourShare;

        Film(double heatTransfer, double vapourShare) {
            this.heatTransfer = heatTransfer;
            this.vapourShare = vapourShare;
        }

        /** W/(m2 K). */
        public double heatTransferWattsPerSquareMetreKelvin() {
            return heatTransfer;
        }

        /** Resistance to vapour over that of still air. */
        public double vapourResistanceShare() {
            return vapourShare;
        }
    }

    /** What touches the scale. */
    public sealed interface Around permits Water, HeldHumidity, KeptVapour, ClosedBag {}

    /** Liquid water. */
    public record Water() implements Around {}

    /**
     * Air of a stated humidity.
     *
     * @param fraction relative humidity, 0 to 1
     */
    public record HeldHumidity(double fraction) implements Around {
        /** Rejects what is no humidity. */
        public HeldHumidity {
            requireHumidity(fraction);
        }
    }

    /** Air that is warmed or cooled and keeps the vapour it had; what is too much for it condenses. */
    public record KeptVapour() implements Around {}

    /**
     * A closed bag that no vapour passes. Its air holds next to nothing (2 litres at 20 C and 100 %: 0.035 g), so the wood
     * sets its humidity, unless gel or a pack does.
     *
     * @param gelGrams fresh silica gel in the bag, zero or more
     * @param packHumidityFraction humidity that a two-way pack keeps; zero for none
     */
    public record ClosedBag(double gelGrams, double packHumidityFraction) implements Around {
        /** Rejects what no bag holds. */
        public ClosedBag {
            requireHumidity(packHumidityFraction);
            if (!(gelGrams >= 0) || (gelGrams > 0 && packHumidityFraction > 0)) {
                throw new IllegalArgumentException("a bag holds zero or more grams of gel, or a pack, not both, got "
                        + gelGrams + " g, " + packHumidityFraction);
            }
        }
    }

    /** Rejects what takes no time. */
    public EventPhase {
        if (!(seconds > 0)) {
            throw new IllegalArgumentException("a phase takes time, got " + seconds + " s");
        }
    }

    /** Temperature with its range, in the sense of {@link #counted}. */
    public Band temperature() {
        return celsius.band();
    }

    private static void requireHumidity(double fraction) {
        if (!(fraction >= 0 && fraction <= 1)) {
            throw new IllegalArgumentException("a humidity lies between 0 and 1, got " + fraction);
        }
    }
}
