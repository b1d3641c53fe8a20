package hafthold.report.chart;

import hafthold.simulate.SectionPose;

/**
 * One moment of a {@link SectionDrawing}.
 *
 * @param heading words over it
 * @param left scale on the left
 * @param right scale on the right; the same as the left one for a pair of twins
 */
public record SectionPanel(String heading, SectionPose left, SectionPose right) {

    boolean isOfTwins() {
        return left.equals(right);
    }
}
