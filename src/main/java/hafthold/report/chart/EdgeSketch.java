package hafthold.report.chart;

import hafthold.report.chart.SvgSheet.Anchor;
import java.util.Locale;

/**
 * A handle cut across at its worst: tang in the middle, a scale on either side, the step drawn far too tall.
 *
 * @param id id unique in the page
 * @param title title
 * @param stepMillimetres step at mid-thickness of the scale, negative shy, positive proud
 * @param label words beside the step
 * @param isGlued whether the glue holds the scale near the tang
 * @param unitsPerMillimetre height the step is drawn with
 * @param words language of what it writes by itself
 */
public record EdgeSketch(
        String id,
        String title,
        double stepMillimetres,
        String label,
        boolean isGlued,
        double unitsPerMillimetre,
        ChartWords words) {
    /** Tallest step that fits the sketch, in its own units. */
    public static final double TALLEST_STEP = 26;

    /** Width of a scale of {@link #SCALE_MILLIMETRES} in the sketch. */
    private static final double SCALE_WIDTH = 62;

    private static final double SCALE_MILLIMETRES = 8;
    private static final int WIDTH = 240;
    private static final int HEIGHT = 123;
    private static final double MIDDLE = 120;
    private static final double HALF_TANG = 14;
    private static final double FLUSH = 52;
    private static final double FOOT = 104;

    /** How many times taller than to scale a step is drawn, for a scale of common thickness. */
    public static long exaggeration(double unitsPerMillimetre) {
        return Math.round(unitsPerMillimetre / (SCALE_WIDTH / SCALE_MILLIMETRES));
    }

    /** The picture. */
    public String svg() {
        SvgSheet sheet = new SvgSheet(id, WIDTH, HEIGHT, 12);
        double top = FLUSH - Math.max(-TALLEST_STEP, Math.min(TALLEST_STEP, stepMillimetres * unitsPerMillimetre));
        for (int side : new int[] {-1, 1}) {
            sheet.shape(scale(side, top), Ink.SCALE);
        }
        sheet.shape(
                String.format(
                        Locale.ROOT,
                        "M%.1f %.1fH%.1fV%.1fH%.1fZ",
                        MIDDLE - HALF_TANG,
                        FLUSH,
                        MIDDLE + HALF_TANG,
                        FOOT,
                        MIDDLE - HALF_TANG),
                Ink.STEEL);
        sheet.rule(8, FLUSH, WIDTH - 8, FLUSH, Ink.TEXT, HouseStyle.dashed(1, 2, 3));
        double labelBase = stepMillimetres < 0 ? FLUSH - 8 : top - 8;
        sheet.strongText(MIDDLE, labelBase, Anchor.MIDDLE, ink(), label);
        sheet.text(MIDDLE, FOOT + 12, Anchor.MIDDLE, Ink.MUTED, words.say("key.tang"));
        sheet.text(MIDDLE - HALF_TANG - SCALE_WIDTH / 2, FOOT + 12, Anchor.MIDDLE, Ink.MUTED, words.say("key.scale"));
        sheet.text(MIDDLE + HALF_TANG + SCALE_WIDTH / 2, FOOT + 12, Anchor.MIDDLE, Ink.MUTED, words.say("key.scale"));
        return sheet.svg(title, words.say("key.sketch", "step", label));
    }

    private Ink ink() {
        return stepMillimetres == 0 ? Ink.TEXT : stepMillimetres < 0 ? Ink.SHY : Ink.PROUD;
    }

    /** Outline of one scale; glued, its edge leaves the tang flush and reaches the step half way out. */
    private String scale(int side, double top) {
        double near = MIDDLE + side * HALF_TANG;
        double half = near + side * SCALE_WIDTH / 2;
        double far = near + side * SCALE_WIDTH;
        String edge = isGlued
                ? String.format(
                        Locale.ROOT,
                        "M%.1f %.1fC%.1f %.1f %.1f %.1f %.1f %.1fL%.1f %.1f",
                        near,
                        FLUSH,
                        near + side * 4,
                        top,
                        near + side * 12,
                        top,
                        half,
                        top,
                        far - side * 10,
                        top)
                : String.format(Locale.ROOT, "M%.1f %.1fL%.1f %.1f", near, top, far - side * 10, top);
        return edge
                + String.format(
                        Locale.ROOT,
                        "Q%.1f %.1f %.1f %.1fL%.1f %.1fL%.1f %.1fZ",
                        far,
                        top,
                        far,
                        top + 12,
                        far,
                        FOOT,
                        near,
                        FOOT);
    }
}
