package hafthold.transport;

import hafthold.source.PublishedModel;

/**
 * Moisture of a block that is open on all sides, in air that changes by steps: mean and core.
 *
 * <p>By the product rule, of a change of the air the part that is still to come in a block is the product of those of three
 * crossed sheets, in the mean as in the middle; changes one after another add up. Every product of three modes fades by
 * itself, so that a course through any air needs no memory of what was before. Unlike {@link EdgeUptake}, which is for the
 * slowest mode, this holds from the first hour: ends that drink along the grain show at once in a weighing.
 *
 * <p>D is one number while time passes; let it follow the moisture by how much of D t is let pass.
 */
@PublishedModel(
        source = "newman-1931",
        locator = "product of the solutions of crossed slabs",
        validity = "each face with its own film; D constant while a step lasts, the same everywhere in the block")
public final class BlockMoisture {
    private final SheetModes[] sheet;
    private final double[] mean;
    private final double[] core;
    private final double[] toCome;
    private double balance;
    private double meanToCome;
    private boolean isMeanKnown;

    /**
     * A block in balance throughout.
     *
     * @param thickness modes through its thickness
     * @param width across its width
     * @param length along its length
     * @param moistureFraction moisture content everywhere, kg/kg, zero or more
     */
    public BlockMoisture(SheetModes thickness, SheetModes width, SheetModes length, double moistureFraction) {
        sheet = new SheetModes[] {thickness, width, length};
        balance = moistureFraction;
        int size = thickness.size() * width.size() * length.size();
        mean = new double[size];
        core = new double[size];
        toCome = new double[size];
        int at = 0;
        for (int i = 0; i < thickness.size(); i++) {
            for (int j = 0; j < width.size(); j++) {
                for (int k = 0; k < length.size(); k++) {
                    mean[at] = thickness.mean(i) * width.mean(j) * length.mean(k);
                    core[at] = thickness.centre(i) * width.centre(j) * length.centre(k);
                    at++;
                }
            }
        }
    }

    private BlockMoisture(BlockMoisture other) {
        sheet = other.sheet;
        mean = other.mean;
        core = other.core;
        toCome = other.toCome.clone();
        balance = other.balance;
    }

    /** The same block as it is now, to go its own way. */
    public BlockMoisture copy() {
        return new BlockMoisture(this);
    }

    /** Brings it into air that would leave this moisture content in the end, kg/kg. */
    public void meet(double balanceFraction) {
        double step = balance - balanceFraction;
        if (step != 0) {
            for (int at = 0; at < toCome.length; at++) {
                toCome[at] += step;
            }
            meanToCome += step;
            balance = balanceFraction;
        }
    }

    /**
     * Lets time pass.
     *
     * @param diffused D t, m2, zero or more, with the D that the ratios of the sheets are over
     */
    public void pass(double diffused) {
        isMeanKnown = false;
        double[] byThickness = faded(sheet[0], diffused);
        double[] byWidth = faded(sheet[1], diffused);
        double[] byLength = faded(sheet[2], diffused);
        int at = 0;
        for (double thick : byThickness) {
            for (double wide : byWidth) {
                double both = thick * wide;
                for (double along : byLength) {
                    toCome[at++] *= both * along;
                }
            }
        }
    }

    private static double[] faded(SheetModes modes, double diffused) {
        double[] left = new double[modes.size()];
        for (int n = 0; n < left.length; n++) {
            left[n] = Math.exp(-modes.rate(n) * diffused);
        }
        return left;
    }

    /** Mean over the block, kg/kg. */
    public double meanFraction() {
        if (!isMeanKnown) {
            meanToCome = sum(mean);
            isMeanKnown = true;
        }
        return balance + meanToCome;
    }

    /** In the middle of the block, kg/kg. */
    public double coreFraction() {
        return balance + sum(core);
    }

    /** What the air of now would leave in it, kg/kg. */
    public double balanceFraction() {
        return balance;
    }

    /** Part of the core's distance from rest that the mean has once only the slowest mode is left. */
    public double meanOverCoreAtLast() {
        return mean[0] / core[0];
    }

    /** How fast the slowest mode fades, per D t in 1/m2. */
    public double slowestRate() {
        return sheet[0].rate(0) + sheet[1].rate(0) + sheet[2].rate(0);
    }

    private double sum(double[] weight) {
        double sum = 0;
        for (int at = 0; at < weight.length; at++) {
            sum += weight[at] * toCome[at];
        }
        return sum;
    }
}
