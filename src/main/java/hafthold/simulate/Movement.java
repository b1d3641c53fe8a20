package hafthold.simulate;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * One scale through the year, unglued and, where it is bonded, glued; what is not glued moves as if free.
 *
 * @param free unglued
 * @param glued bonded
 */
record Movement(FreeMovement free, Optional<GluedEdge> glued) {

    /**
     * Follows a scale.
     *
     * @param sections those under it; empty where it is not glued
     * @param warmer temperature above that at finish, K, one a sample of the courses of the parts
     */
    static Movement of(
            List<PartMotion> parts, Optional<GluedSections.Readings> sections, Conditions conditions, double[] warmer) {
        return new Movement(
                FreeMovement.of(parts, conditions, warmer),
                sections.map(handle ->
                        GluedEdge.of(parts, handle, conditions.pinExpansion().value(), warmer)));
    }

    /** Steel proud of the scale at mid-thickness, a side. */
    double edgeShy() {
        return glued(edge -> edge.mid().below(), free.edgeShy());
    }

    /** Scale proud of the steel at mid-thickness, a side. */
    double edgeProud() {
        return glued(edge -> edge.mid().above(), free.edgeProud());
    }

    /** Steel proud of the scale over the 2 mm next to the tang, a side. */
    double tangLineShy() {
        return glued(edge -> edge.tangLine().below(), free.edgeShy());
    }

    /** Scale proud of the steel over the 2 mm next to the tang, a side. */
    double tangLineProud() {
        return glued(edge -> edge.tangLine().above(), free.edgeProud());
    }

    /** Scale short of the steel at mid-thickness, each end. */
    double endShort() {
        return glued(edge -> edge.end().below(), free.endShort());
    }

    /** Scale beyond the steel at mid-thickness, each end. */
    double endLong() {
        return glued(edge -> edge.end().above(), free.endLong());
    }

    /** Pin head above the face. */
    double pinHeadProud() {
        return glued(edge -> edge.head().above(), free.pinHeadProud());
    }

    /** Pin head below the face. */
    double pinHeadSunk() {
        return glued(edge -> edge.head().below(), free.pinHeadSunk());
    }

    /** Largest edge offset at mid-thickness, either way. */
    double edgeEither() {
        return Math.max(edgeShy(), edgeProud());
    }

    /** Sample of the year with the largest edge step, either way. */
    int worstSample() {
        return glued.map(edge -> edge.mid().worstHour()).orElse(free.worstSample());
    }

    /** The same with its samples numbered as in the year they were taken from. */
    Movement at(int[] numbers) {
        return new Movement(free.at(numbers), glued.map(edge -> edge.at(numbers)));
    }

    private double glued(ToDoubleFunction<GluedEdge> quantity, double otherwise) {
        return glued.isPresent() ? quantity.applyAsDouble(glued.get()) : otherwise;
    }
}
