package hafthold.report.chart;

import hafthold.report.chart.SvgSheet.Anchor;
import hafthold.simulate.SectionPose;
import java.util.ArrayList;
import java.util.List;

/**
 * The numbers about one section: each edge step over its place, the movement of the face beside it.
 *
 * @param sheet where they are written
 * @param layout of the sheet
 * @param view of the section
 * @param words language and unit of what is written
 */
record SectionCallouts(SvgSheet sheet, SectionLayout layout, SectionView view, ChartWords words) {
    /** The widest words beside a face. */
    static final String WIDEST = "key.face-out";

    /** From a face to its words. */
    static final double AWAY = 12;

    private static final double SHOWS = 0.005;
    private static final List<String> PLACES = List.of("key.by-tang", "key.half-way", "key.outer");

    /**
     * One number with its place.
     *
     * @param words where it is measured
     * @param millimetres positive proud
     * @param x from the left
     * @param y from the top
     */
    private record Callout(String words, double millimetres, double x, double y) {

        Ink ink() {
            return Math.abs(millimetres) < SHOWS ? Ink.TEXT : millimetres < 0 ? Ink.SHY : Ink.PROUD;
        }
    }

    /** Everything about a panel. */
    void write(SectionPanel panel, ScaleOutline left, ScaleOutline right) {
        double centre = view.middle();
        double half = layout.panelWidth() / 2;
        double head = view.top(panel.left().halfWidth(), 0) - layout.toFlush();
        sheet.strongText(centre, head + layout.format().fontSize() + 2, Anchor.MIDDLE, Ink.TEXT, panel.heading());
        row(edge(left), centre - half + 2, centre - 6);
        if (panel.isOfTwins()) {
            row(List.of(unglued(right)), centre + 6, centre + half - 2);
        } else {
            row(edge(right), centre + 6, centre + half - 2);
            face(left);
        }
        face(right);
    }

    private List<Callout> edge(ScaleOutline scale) {
        List<Callout> callouts = new ArrayList<>();
        for (int i = 0; i < PLACES.size(); i++) {
            int point = i + 1;
            callouts.add(
                    new Callout(words.say(PLACES.get(i)), 1000 * scale.steps()[point], scale.x(point), scale.y(point)));
        }
        return callouts;
    }

    /** Where the edge would stand without glue: a dashed line over the scale. */
    private Callout unglued(ScaleOutline scale) {
        SectionPose pose = scale.pose();
        double y = view.top(pose.halfWidth(), pose.freeEdge());
        double outer = view.x(scale.side(), scale.foot() + pose.scaleThickness(), 0);
        sheet.rule(view.x(scale.side(), scale.foot(), 0), y, outer, y, Ink.TEXT, HouseStyle.dashed(1.4, 6, 4));
        return new Callout(
                words.say("key.not-glued"),
                1000 * pose.freeEdge(),
                view.x(scale.side(), scale.foot() + pose.scaleThickness() / 2, 0),
                y);
    }

    private void row(List<Callout> callouts, double from, double to) {
        double number = baseLine();
        double[] wanted = callouts.stream().mapToDouble(Callout::x).toArray();
        double[] widths = callouts.stream()
                .mapToDouble(callout -> layout.format().widthOf(callout.words()) + 6)
                .toArray();
        double[] centres = LabelSpread.apart(wanted, widths, from, to);
        for (int i = 0; i < callouts.size(); i++) {
            Callout callout = callouts.get(i);
            sheet.rule(centres[i], number + 4, callout.x(), callout.y(), Ink.TEXT, HouseStyle.solid(0.8));
            sheet.shape(dot(callout.x(), callout.y()), Ink.TEXT);
            sheet.text(centres[i], number - layout.line(), Anchor.MIDDLE, Ink.MUTED, callout.words());
            sheet.strongText(centres[i], number, Anchor.MIDDLE, callout.ink(), number(callout));
        }
    }

    /** Base line of the numbers over the upper edge. */
    private double baseLine() {
        double half = layout.panels().get(0).left().halfWidth();
        return view.top(half, 0) - layout.bulge() - 12;
    }

    private void face(ScaleOutline scale) {
        SectionPose pose = scale.pose();
        double moved = 1000 * pose.faceCentre();
        double x = view.x(scale.side(), scale.foot() + pose.scaleThickness(), pose.faceCentre());
        double away = scale.side() * AWAY;
        double face = view.x(scale.side(), scale.foot() + pose.scaleThickness(), 0);
        double start = scale.side() < 0 ? Math.min(x, face) : Math.max(x, face);
        Anchor anchor = scale.side() < 0 ? Anchor.END : Anchor.START;
        Callout callout = new Callout("", moved, x, view.centre());
        sheet.rule(x, view.centre(), start + away * 0.8, view.centre(), Ink.TEXT, HouseStyle.solid(0.8));
        sheet.shape(dot(x, view.centre()), Ink.TEXT);
        String way = words.say(Math.abs(moved) < SHOWS ? "key.face" : moved < 0 ? "key.face-in" : WIDEST);
        sheet.text(start + away, view.centre() - layout.line() + 6, anchor, Ink.MUTED, way);
        sheet.strongText(start + away, view.centre() + 6, anchor, callout.ink(), number(callout));
    }

    private String number(Callout callout) {
        double moved = Math.abs(callout.millimetres());
        return moved < SHOWS ? "0" : words.hundredths(moved / 1000);
    }

    private static String dot(double x, double y) {
        return "M" + SvgSheet.number(x - 2) + " " + SvgSheet.number(y) + "a2 2 0 1 0 4 0a2 2 0 1 0 -4 0Z";
    }
}
