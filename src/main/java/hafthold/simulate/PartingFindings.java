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
import hafthold.source.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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

    private static Optional<Finding> line(Hybrid hybrid, PartsJoint line) {
        if (line.ridge().high() < LEAST_RIDGE_METRES) {
            return Optional.empty();
        }
        Message joint = line.use()
                .map(use -> Message.of(
                        use.value() > 1 ? "note.ridge.hairlines" : "note.ridge.use",
                        Map.of("use", Message.number(use, 1))))
                .orElse(Message.of("note.ridge.unknown"));
        return Optional.of(estimate(
                hybrid.id(),
                Message.of(
                        "note.ridge",
                        Map.of(
                                "one",
                                        Message.verbatim(
                                                hybrid.parts().get(0).material().name()),
                                "other",
                                        Message.verbatim(
                                                hybrid.parts().get(1).material().name()),
                                "ridge", Message.movement(line.ridge()),
                                "joint", joint))));
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
                Message.of(
                        "note.tissue-set",
                        Map.of(
                                "yield", Message.number(100 * yield.get().value(), 1),
                                "source", Message.verbatim(yield.get().sourceKey()),
                                "set", Message.movement(new Band(least, usual, most))))));
    }

    private static double set(FreeMovement movement, double half, double yield) {
        return half
                * new BlockedSwelling(yield, 0, ANY_TIME)
                        .after(State.UNUSED, movement.edgeProud() / half, 0)
                        .set();
    }

    static Finding estimate(String subject, Message message) {
        return new Finding(Finding.Kind.ESTIMATE, subject, message);
    }
}
