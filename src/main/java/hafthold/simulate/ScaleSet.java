package hafthold.simulate;

import hafthold.material.Axis;
import hafthold.material.Hybrid;
import hafthold.material.Property;
import hafthold.mechanics.BlockedSwelling;
import hafthold.mechanics.SectionOutput;
import hafthold.source.Figure;
import java.util.List;
import java.util.Optional;

/**
 * What a glued scale loses for good: wood held at the tang yields across its grain when it swells beyond its yield strain,
 * and stays smaller when it dries. Counted from glue-up, over two years, by the share of its swelling that the glue holds
 * back at mid-thickness.
 */
final class ScaleSet {
    private static final int HOURS_A_DAY = 24;
    private static final double SECONDS_A_DAY = 86_400;
    private static final int YEARS = 2;

    private ScaleSet() {}

    /**
     * Loss of half the width, m.
     *
     * @param sinceGlueUp strains since glue-up, unrelaxed
     * @param lastingShare share of a stress that is left after weeks
     */
    static double metres(StiffnessNodes width, List<Hybrid.Part> parts, FreeStrains sinceGlueUp, double lastingShare) {
        double[] even = width.first().evenScaleStrain(0, 1, 0);
        double held = 1 - width.value(SectionOutput.EDGE_MID, even) / width.value(SectionOutput.FREE_EDGE, even);
        double largest = 0;
        for (int p = 0; p < parts.size(); p++) {
            PartMotion motion = sinceGlueUp.scale().get(p);
            Optional<Figure> yield = parts.get(p).material().sheet().figure(Property.YIELD_STRAIN, Axis.ACROSS);
            if (yield.isPresent() && parts.get(p).material().water().isPresent()) {
                double set = strain(yield.get().value(), held, motion, lastingShare, sinceGlueUp.closed() ? YEARS : 1);
                largest = Math.max(
                        largest, motion.share() * set * width.first().section().halfSizeMetres());
            }
        }
        return largest;
    }

    private static double strain(double yieldStrain, double held, PartMotion motion, double lastingShare, int rounds) {
        BlockedSwelling swelling =
                new BlockedSwelling(yieldStrain, 1 - lastingShare, FreeStrains.RELAXATION_DAYS * SECONDS_A_DAY);
        BlockedSwelling.State state = BlockedSwelling.State.UNUSED;
        int days = motion.course().hours() / HOURS_A_DAY;
        for (int day = 0; day < rounds * days; day++) {
            int hour = day % days * HOURS_A_DAY;
            state = swelling.after(state, held * motion.width().strain(motion.moistureChange(hour), 0), SECONDS_A_DAY);
        }
        return state.set();
    }
}
