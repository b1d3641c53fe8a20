package hafthold.simulate;

import hafthold.material.Axis;
import hafthold.material.Cut;
import hafthold.material.Family;
import hafthold.material.Hybrid;
import hafthold.material.Material;
import hafthold.material.Property;
import hafthold.material.ScaleMaterial;
import hafthold.mechanics.BlockedSwelling;
import hafthold.mechanics.BlockedSwelling.State;
import hafthold.quantity.Band;
import hafthold.source.Figure;
import hafthold.source.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a scale does inside itself over the year, told as findings with numbers: the line between the parts of a hybrid,
 * the layers of a tooth, the set that hard tissue keeps. Only the first enters the ranking, as {@link PartsJoint}.
 */
final class PartingFindings {
    /** A ridge thinner than this is not told. */
    private static final double LEAST_RIDGE_METRES = 0.005e-3;

    private static final double ANY_TIME = 1;

    private PartingFindings() {}

    /** Findings about a material; empty for one of a piece. */
    static List<Finding> of(
            ScaleMaterial material,
            Cut cut,
            PartsJoint joint,
            FreeMovement movement,
            Conditions conditions,
            MoistureCourse course,
            double finishFraction) {
        List<Finding> findings = new ArrayList<>();
        if (material instanceof Hybrid hybrid) {
            line(hybrid, joint).ifPresent(findings::add);
        } else if (material instanceof Material whole) {
            BurlGrain.finding(whole, cut).ifPresent(findings::add);
            set(whole, movement, conditions).ifPresent(findings::add);
            ToothLayers.finding(whole, finishFraction - course.least()).ifPresent(findings::add);
        }
        return findings;
    }

    private static Optional<Finding> line(Hybrid hybrid, PartsJoint joint) {
        if (joint.ridge().high() < LEAST_RIDGE_METRES) {
            return Optional.empty();
        }
        String text = "Along the line between "
                + hybrid.parts().get(0).material().name() + " and "
                + hybrid.parts().get(1).material().name() + " a ridge of "
                + range(joint.ridge().times(1000), "%.2f") + " mm comes and goes on the face (both parts free)";
        return Optional.of(estimate(
                hybrid.id(),
                text
                        + joint.use()
                                .map(share -> "; the joint uses " + range(share, "%.1f")
                                        + " of the strength across the weaker part, half of the stress relaxed"
                                        + (share.value() > 1 ? ": expect hairlines along it." : "."))
                                .orElse("; the strength of its joint is not known.")));
    }

    private static Optional<Finding> set(Material material, FreeMovement movement, Conditions conditions) {
        Optional<Figure> yield = material.sheet().figure(Property.YIELD_STRAIN, Axis.ACROSS);
        if (material.family() != Family.HARD_TISSUE || material.water().isEmpty() || yield.isEmpty()) {
            return Optional.empty();
        }
        double half = conditions.handle().tangWidth().metres() / 2;
        double most = set(movement, half, yield.get().band().low());
        double usual = set(movement, half, yield.get().value());
        if (most * 1000 < 0.01) {
            return Optional.empty();
        }
        double least = set(movement, half, yield.get().band().high());
        return Optional.of(estimate(
                material.id(),
                "Held tight while damp it gives way at " + percent(yield.get().value()) + " ("
                        + yield.get().sourceKey() + ") and keeps a set: "
                        + range(new Band(1000 * least, 1000 * usual, 1000 * most), "%.2f")
                        + " mm a side short once it dries back, if steel held it all round."));
    }

    private static double set(FreeMovement movement, double half, double yield) {
        return half
                * new BlockedSwelling(yield, 0, ANY_TIME)
                        .after(State.UNUSED, movement.edgeProud() / half, 0)
                        .set();
    }

    static Finding estimate(String subject, String text) {
        return new Finding(Finding.Kind.ESTIMATE, subject, text);
    }

    static String range(Band band, String form) {
        return String.format(
                Locale.ROOT, form + " (" + form + " to " + form + ")", band.value(), band.low(), band.high());
    }

    static String percent(double fraction) {
        return String.format(Locale.ROOT, "%.1f %%", 100 * fraction);
    }
}
