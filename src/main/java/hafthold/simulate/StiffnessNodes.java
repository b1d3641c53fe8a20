package hafthold.simulate;

import hafthold.material.Hybrid;
import hafthold.mechanics.BondedSection;
import hafthold.mechanics.HandleAxis;
import hafthold.mechanics.SectionInfluence;
import hafthold.mechanics.SectionOutput;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * A section whose scale is as stiff as a sample says, read between a few that are solved: on a parabola through the value,
 * half way and all the way to the furthest position on that side, answer by answer.
 *
 * <p>A scale of several parts takes the position of its first part for all of them.
 *
 * @param sections solved sections of one geometry
 * @param weights how much each counts; they add up to 1
 */
record StiffnessNodes(List<SectionInfluence> sections, double[] weights) {
    private static final double FAR = Draws.FURTHEST;

    /**
     * The section at the stiffness of a doubt.
     *
     * @param plan the section for a scale that is as stiff as another doubt says
     */
    static StiffnessNodes of(
            BondedEngine.Setup setup, List<Hybrid.Part> parts, Doubt doubt, Function<Doubt, BondedSection> plan) {
        double position = position(parts, doubt);
        if (position == 0) {
            return new StiffnessNodes(List.of(setup.influence(plan.apply(Doubt.NONE))), new double[] {1});
        }
        double side = Math.signum(position);
        List<SectionInfluence> sections = new ArrayList<>();
        sections.add(setup.influence(plan.apply(Doubt.NONE)));
        sections.add(setup.influence(plan.apply(Doubt.alone(Input.STIFFNESS, side * FAR / 2))));
        sections.add(setup.influence(plan.apply(Doubt.alone(Input.STIFFNESS, side * FAR))));
        double share = Math.abs(position) / FAR;
        return new StiffnessNodes(
                sections,
                new double[] {(1 - share) * (1 - 2 * share), 4 * share * (1 - share), share * (2 * share - 1)});
    }

    /** Position of the stiffness of a scale. */
    static double position(List<Hybrid.Part> parts, Doubt doubt) {
        return doubt.position(Input.STIFFNESS, parts.get(0).material());
    }

    /** Section of the value; all have its geometry and columns. */
    SectionInfluence first() {
        return sections.get(0);
    }

    /** An answer to amplitudes of the modes. */
    double value(SectionOutput output, double[] amplitudes) {
        double sum = 0;
        for (int node = 0; node < weights.length; node++) {
            sum += weights[node] * sections.get(node).value(output, amplitudes);
        }
        return sum;
    }

    /** Stress in a depth layer in mid-section, Pa. */
    double scaleStressPascals(HandleAxis axis, int depthLayer, double[] amplitudes) {
        double sum = 0;
        for (int node = 0; node < weights.length; node++) {
            sum += weights[node] * sections.get(node).scaleStressPascals(axis, depthLayer, amplitudes);
        }
        return sum;
    }
}
