package hafthold.mechanics;

/**
 * What a section answers. Offsets count from the state in which all free strains are zero, positive where the scale
 * stands proud of the steel.
 *
 * <p>"Edge" is the flank of the handle in a section across the width, the end at bolster or butt in a section along the
 * length. Stresses at a free edge have no finite peak in linear elasticity, so the glue line is answered as a mean over
 * its last 1 and 2 mm and over its thickness.
 */
public enum SectionOutput {
    /** Scale edge where it meets the glue, against the steel edge, m. */
    EDGE_AT_GLUE,
    /** Scale edge, mean over {@link #TANG_LINE_DEPTH_METRES} nearest the tang (all of a thinner scale), against the steel edge, m. */
    EDGE_TANG_LINE,
    /** Scale edge at half the scale's thickness, against the steel edge, m. */
    EDGE_MID,
    /** Scale edge at the outer face, against the steel edge, m. */
    EDGE_OUTER,
    /** Scale edge if unglued: half the size times the mean free strain over the depth, less that of the tang, m. */
    FREE_EDGE,
    /** Outer face in the middle, away from the tang's mid-plane, m. */
    FACE_CENTRE,
    /** Outer face at the edge, away from the tang's mid-plane, m. */
    FACE_EDGE,
    /** Outer face if nothing were glued: the sum of the free changes of thickness, m. */
    FREE_FACE,
    /** Shear in the glue on the tang, mean over the last 1 mm, Pa; positive where the scale wants to be larger. */
    GLUE_SHEAR_1_MM,
    /** Shear in the glue on the tang, mean over the last 2 mm, Pa. */
    GLUE_SHEAR_2_MM,
    /** Peel in the glue on the tang, mean over the last 1 mm, Pa; positive pulls the scale off. */
    GLUE_PEEL_1_MM,
    /** Peel in the glue on the tang, mean over the last 2 mm, Pa. */
    GLUE_PEEL_2_MM,
    /** As {@link #GLUE_SHEAR_1_MM} in the glue under the scale; the same line where there is no liner, Pa. */
    SCALE_GLUE_SHEAR_1_MM,
    /** As {@link #GLUE_SHEAR_2_MM} in the glue under the scale, Pa. */
    SCALE_GLUE_SHEAR_2_MM,
    /** As {@link #GLUE_PEEL_1_MM} in the glue under the scale, Pa. */
    SCALE_GLUE_PEEL_1_MM,
    /** As {@link #GLUE_PEEL_2_MM} in the glue under the scale, Pa. */
    SCALE_GLUE_PEEL_2_MM,
    /** Stress along the section in mid-section, mean over the scale's thickness, Pa; tension positive. */
    SCALE_STRESS_ALONG,
    /** Stress out of the section in mid-section, mean over the scale's thickness, Pa; tension positive. */
    SCALE_STRESS_OUT,
    /** Extension of the whole handle out of the section, a strain. */
    EXTENSION_OUT;

    /** Depth from the glue over which {@link #EDGE_TANG_LINE} is the mean, m. */
    public static final double TANG_LINE_DEPTH_METRES = 2e-3;
}
