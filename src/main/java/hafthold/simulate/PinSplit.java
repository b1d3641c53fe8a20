package hafthold.simulate;

import hafthold.material.Axis;
import hafthold.material.Cut;
import hafthold.material.Material;
import hafthold.material.Property;
import hafthold.mechanics.LekhnitskiiHole;
import hafthold.mechanics.OrthotropicElasticity;
import hafthold.mechanics.PinContact;
import hafthold.mechanics.RosenHashinAggregate;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Tension that a hole puts into a scale when it closes on its pin.
 *
 * <p>With no gap to start from, contact stress grows in proportion to the squeeze as long as its direction, across to
 * along, stays the same; so contacts are solved for directions a few degrees apart, kept, and read between them on a
 * straight line.
 */
final class PinSplit {
    private static final double DEGREE = Math.PI / 180;
    private static final int STEP_DEGREES = 5;

    private final LekhnitskiiHole hole;
    private final boolean splitsAnyWay;
    private final Map<Integer, Double> perSqueeze = new ConcurrentHashMap<>();

    /**
     * Takes the scale as it lies.
     *
     * @param splitsAnyWay true where no grain runs along the handle
     */
    PinSplit(OrthotropicElasticity scale, boolean splitsAnyWay) {
        this.hole = LekhnitskiiHole.throughScale(scale);
        this.splitsAnyWay = splitsAnyWay;
    }

    /**
     * Largest tension that can split the scale, Pa.
     *
     * @param along overlap along the handle over the diameter, negative for a gap
     * @param across overlap across the handle over the diameter, negative for a gap
     */
    double tensionPascals(double along, double across) {
        double size = Math.hypot(along, across);
        if (along <= 0 && across <= 0) {
            return 0;
        }
        double direction = Math.atan2(across, along) / DEGREE / STEP_DEGREES;
        int below = (int) Math.floor(direction);
        double share = direction - below;
        return size * ((1 - share) * at(below) + share * at(below + 1));
    }

    private double at(int step) {
        return perSqueeze.computeIfAbsent(step, key -> solve(key * STEP_DEGREES));
    }

    private double solve(int degrees) {
        PinContact contact = hole.pinContact(Math.cos(degrees * DEGREE), Math.sin(degrees * DEGREE));
        if (!splitsAnyWay) {
            return contact.largestTensionAcrossPascals();
        }
        double largest = 0;
        for (int angle = 0; angle <= 90; angle++) {
            largest = Math.max(largest, contact.hoopPascals(angle * DEGREE));
        }
        return largest;
    }

    /**
     * What a scale bears across its grain, Pa; empty where the sheet does not say. Burl parts where grain that lies across
     * the pull does, which carries about half of the mean tension ({@link RosenHashinAggregate}).
     */
    static Optional<Double> strength(Material material, Cut cut, Doubt doubt) {
        return material.sheet()
                .figure(Property.TENSION_STRENGTH, Axis.ACROSS)
                .map(figure ->
                        doubt.strength(material, figure) / (cut == Cut.BURL ? BurlGrain.tensionAcross(material) : 1));
    }

    /** True where the wide face shows no grain that runs along the handle. */
    static boolean splitsAnyWay(Cut cut) {
        return cut == Cut.CROSS || cut == Cut.BURL || cut == Cut.NONE;
    }
}
