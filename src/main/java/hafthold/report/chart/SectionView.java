package hafthold.report.chart;

import hafthold.simulate.SectionPose;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * How a section is laid on paper: true to scale, movement drawn larger.
 *
 * @param middle place of the middle of the tang from the left
 * @param centre the same from the top
 * @param unitsPerMetre user units a metre
 * @param exaggeration how many times larger movement is drawn
 */
record SectionView(double middle, double centre, double unitsPerMetre, int exaggeration) {
    private static final List<Integer> STEPS = List.of(20, 15, 10, 5, 3, 2);
    private static final double LARGEST_SHARE = 0.3;

    /** The largest exaggeration that leaves the shape of both scales in sight; at most 20, so that nothing stays nothing. */
    static int exaggeration(List<SectionPanel> panels) {
        return STEPS.stream()
                .filter(step -> poses(panels)
                        .allMatch(pose -> step * largest(pose)
                                <= LARGEST_SHARE * Math.min(pose.scaleThickness(), pose.halfWidth())))
                .findFirst()
                .orElse(1);
    }

    static Stream<SectionPose> poses(List<SectionPanel> panels) {
        return panels.stream().flatMap(panel -> Stream.of(panel.left(), panel.right()));
    }

    /** How far the highest edge, glued or not, is drawn above flush, user units. */
    double highest(List<SectionPanel> panels) {
        return poses(panels)
                        .flatMapToDouble(pose -> DoubleStream.of(
                                0, pose.edgeAtGlue(), pose.edgeMid(), pose.edgeOuter(), pose.freeEdge()))
                        .max()
                        .orElse(0)
                * unitsPerMetre
                * exaggeration;
    }

    /** From the left, of a place so deep from the middle of the tang that has moved outwards. */
    double x(int side, double depth, double moved) {
        return middle + side * unitsPerMetre * (depth + exaggeration * moved);
    }

    /** From the top, of the upper edge of a width that has moved outwards. */
    double top(double halfWidth, double moved) {
        return centre - unitsPerMetre * (halfWidth + exaggeration * moved);
    }

    /** From the top, of the lower edge. */
    double bottom(double halfWidth, double moved) {
        return 2 * centre - top(halfWidth, moved);
    }

    private static double largest(SectionPose pose) {
        return DoubleStream.of(pose.edgeAtGlue(), pose.edgeMid(), pose.edgeOuter(), pose.faceCentre(), pose.faceEdge())
                .map(Math::abs)
                .max()
                .orElseThrow();
    }
}
