package hafthold.simulate;

/**
 * How often the year is run with other figures for what is not known, and from which seed these are drawn.
 *
 * @param samples 1 for a run with every input at its value and no band, else 30 to 10000
 * @param seed any number; the same seed gives the same answer on every machine
 */
public record Sampling(int samples, long seed) {
    /** Fewest samples that can be paired, and that have a tenth to cut off at either end. */
    public static final int FEWEST = 30;

    private static final int MOST = 10_000;

    /** Everything at its value, no band. */
    public static final Sampling VALUE_ONLY = new Sampling(1, 0);

    /** What is taken for want of a word. */
    public static final Sampling USUAL = new Sampling(100, 1);

    /** Rejects too few and too many. */
    public Sampling {
        if (samples != 1 && (samples < FEWEST || samples > MOST)) {
            throw new IllegalArgumentException(
                    "samples must be 1 (values only, no band) or " + FEWEST + " to " + MOST + ", got " + samples);
        }
    }

    /** True where there are bands. */
    boolean hasBands() {
        return samples > 1;
    }
}
