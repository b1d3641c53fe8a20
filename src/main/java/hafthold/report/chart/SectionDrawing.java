package hafthold.report.chart;

import hafthold.report.chart.SvgSheet.Anchor;
import hafthold.simulate.SectionPose;
import java.util.List;

/**
 * The handle cut across at its widest place, to scale, at two moments beside each other; movement is drawn larger and
 * the picture says by how much.
 *
 * @param id id unique in the page
 * @param title title
 * @param description what the picture shows, for those who cannot see it
 * @param panels the moments
 * @param leftWords below the left scale
 * @param rightWords below the right scale
 * @param middleWords below the tang
 * @param words language of what it writes by itself
 */
public record SectionDrawing(
        String id,
        String title,
        String description,
        List<SectionPanel> panels,
        String leftWords,
        String rightWords,
        String middleWords,
        ChartWords words) {

    /** Keeps its own copy. */
    public SectionDrawing {
        panels = List.copyOf(panels);
        if (panels.isEmpty()) {
            throw new IllegalArgumentException("a section drawing needs at least one moment");
        }
    }

    /** How many times larger than to scale movement is drawn. */
    public int exaggeration() {
        return SectionView.exaggeration(panels);
    }

    /** The picture in one format, for a page. */
    public String svg(SheetFormat format) {
        return sheet(format).svg(title, description);
    }

    /** The wide picture for a file of its own, its title in sight. */
    public String fileSvg() {
        return sheet(SheetFormat.WIDE).fileSvg(title, description);
    }

    private SvgSheet sheet(SheetFormat format) {
        SectionLayout layout = SectionLayout.of(format, panels, words.say(SectionCallouts.WIDEST));
        SvgSheet sheet = new SvgSheet(id, format, layout.height());
        for (int i = 0; i < panels.size(); i++) {
            panel(sheet, layout, i);
        }
        sheet.text(
                format.width() / 2.0,
                layout.height() - 6.0,
                Anchor.MIDDLE,
                Ink.MUTED,
                words.say(
                        format == SheetFormat.WIDE ? "key.to-scale" : "key.to-scale.short",
                        "times",
                        Integer.toString(exaggeration()),
                        "unit",
                        words.unit()));
        return sheet;
    }

    private void panel(SvgSheet sheet, SectionLayout layout, int index) {
        SectionPanel panel = panels.get(index);
        SectionView view = layout.view(index);
        SectionPose pose = panel.left();
        ScaleOutline left = new ScaleOutline(panel.left(), -1, view);
        ScaleOutline right = new ScaleOutline(panel.right(), 1, view);
        double reach = left.foot() + pose.scaleThickness();
        for (ScaleOutline scale : List.of(left, right)) {
            sheet.shape(scale.path(), Ink.SCALE);
            sheet.shape(scale.between(), Ink.GLUE);
            double face = view.x(scale.side(), reach, 0);
            sheet.rule(
                    face,
                    view.top(pose.halfWidth(), 0),
                    face,
                    view.bottom(pose.halfWidth(), 0),
                    Ink.TEXT,
                    HouseStyle.dashed(1, 2, 3));
        }
        tang(sheet, view, pose);
        for (double flush : new double[] {view.top(pose.halfWidth(), 0), view.bottom(pose.halfWidth(), 0)}) {
            sheet.rule(
                    view.x(-1, reach, 0) - 14,
                    flush,
                    view.x(1, reach, 0) + 14,
                    flush,
                    Ink.TEXT,
                    HouseStyle.dashed(1, 2, 3));
        }
        new SectionCallouts(sheet, layout, view, words).write(panel, left, right);
        double base = view.bottom(pose.halfWidth(), 0) + layout.below();
        double out = left.foot() + pose.scaleThickness() / 2;
        double apart = layout.format().widthOf(leftWords + rightWords) / 2 + 14;
        double shift = Math.max(0, apart - (view.x(1, out, 0) - view.x(-1, out, 0))) / 2;
        sheet.text(view.x(-1, out, 0) - shift, base, Anchor.MIDDLE, Ink.MUTED, leftWords);
        sheet.text(view.x(1, out, 0) + shift, base, Anchor.MIDDLE, Ink.MUTED, rightWords);
        sheet.text(view.middle(), base + layout.line(), Anchor.MIDDLE, Ink.MUTED, middleWords);
    }

    private static void tang(SvgSheet sheet, SectionView view, SectionPose pose) {
        double half = pose.tangThickness() / 2;
        sheet.shape(
                "M" + SvgSheet.number(view.x(-1, half, 0)) + " " + SvgSheet.number(view.top(pose.halfWidth(), 0)) + "H"
                        + SvgSheet.number(view.x(1, half, 0)) + "V"
                        + SvgSheet.number(view.bottom(pose.halfWidth(), 0)) + "H"
                        + SvgSheet.number(view.x(-1, half, 0)) + "Z",
                Ink.STEEL);
    }
}
