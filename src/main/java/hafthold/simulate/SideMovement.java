package hafthold.simulate;

import java.util.List;

/**
 * One scale of a bonded handle through the year: offsets from finish in metres, positive proud; stresses from glue-up in
 * pascals, the slow part relaxed.
 *
 * @param tangLine edge over the 2 mm next to the tang
 * @param mid edge at half the scale's thickness
 * @param outer edge at the outer face
 * @param free edge if unglued
 * @param dome outer face in the middle above its edges
 * @param end end at bolster and butt at half the scale's thickness, each
 * @param freeLength length of the scale beyond the steel if unglued, both ends together
 * @param pinSpan distance of the outermost pins' holes if unglued, beyond that in the steel
 * @param glue the glue lines
 * @param middleUse tension across the grain in mid-section over strength
 * @param tearUse pull on the scale's own wood at the glued edge over strength
 * @param set lasting loss of half the width after restrained swelling
 * @param joint worst differences between the parts of a hybrid, as if each were free
 * @param pins one a pin of the build
 * @param days day by day
 * @param poses the widest section at its lowest and its highest edge
 */
record SideMovement(
        Swing tangLine,
        Swing mid,
        Swing outer,
        Swing free,
        Swing dome,
        Swing end,
        Swing freeLength,
        Swing pinSpan,
        GlueLoad glue,
        double middleUse,
        double tearUse,
        double set,
        JointExtremes joint,
        List<PinMovement> pins,
        Days days,
        List<SectionPose> poses) {

    /**
     * The worst of all glue lines of a side, means over their last 1 and 2 mm.
     *
     * @param shear1 shear over 1 mm, either way, Pa
     * @param shear2 shear over 2 mm, either way, Pa
     * @param peel1 pull over 1 mm, Pa
     * @param peel2 pull over 2 mm, Pa
     * @param use stress over strength at the temperature of the hour
     * @param hour when that is largest
     */
    record GlueLoad(double shear1, double shear2, double peel1, double peel2, double use, int hour) {}

    /**
     * Day by day, at the widest section.
     *
     * @param edge mean offset of the edge at mid-thickness, m
     * @param free mean offset of the unglued edge, m
     * @param glueUse largest use of the glue's strength
     * @param middleUse largest use of the scale's strength across the grain
     * @param tearUse largest use of it at the glued edge
     * @param pinUse largest use of it beside the pins
     */
    record Days(
            double[] edge, double[] free, double[] glueUse, double[] middleUse, double[] tearUse, double[] pinUse) {}
}
