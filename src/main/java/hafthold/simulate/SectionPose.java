package hafthold.simulate;

/**
 * The widest cross-section at one hour, to be drawn: sizes as finished and displacements since then, metres, positive
 * away from the middle of the handle.
 *
 * @param hour hour of the year
 * @param halfWidth middle to edge
 * @param tangThickness whole tang
 * @param betweenThickness glue and liners of one side
 * @param scaleThickness one scale
 * @param edgeAtGlue scale edge where it meets the glue, against the steel edge
 * @param tangLine mean over the 2 mm next to the tang
 * @param edgeMid at half the scale's thickness
 * @param edgeOuter at the outer face
 * @param freeEdge if unglued
 * @param faceCentre outer face in the middle
 * @param faceEdge outer face at the edge
 */
public record SectionPose(
        int hour,
        double halfWidth,
        double tangThickness,
        double betweenThickness,
        double scaleThickness,
        double edgeAtGlue,
        double tangLine,
        double edgeMid,
        double edgeOuter,
        double freeEdge,
        double faceCentre,
        double faceEdge) {}
