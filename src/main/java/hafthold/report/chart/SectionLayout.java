package hafthold.report.chart;

import hafthold.simulate.SectionPose;
import java.util.List;

/**
 * Where the sections of a {@link SectionDrawing} lie: beside each other on a wide sheet, below each other on a narrow
 * one.
 *
 * @param format size of the sheet
 * @param panels the moments
 * @param unitsPerMetre user units a metre, the same for all
 */
record SectionLayout(SheetFormat format, List<SectionPanel> panels, double unitsPerMetre) {
    private static final double HEAD = 22;
    private static final double FOOT = 30;

    static SectionLayout of(SheetFormat format, List<SectionPanel> panels, String widest) {
        SectionPose pose = panels.get(0).left();
        double through = pose.tangThickness() + 2 * (pose.betweenThickness() + pose.scaleThickness());
        boolean isWide = format == SheetFormat.WIDE;
        double panel = isWide ? format.width() / (double) panels.size() : format.width();
        double room = panel / 2 - format.widthOf(widest) - SectionCallouts.AWAY - 2;
        double out = SectionView.exaggeration(panels)
                * SectionView.poses(panels)
                        .mapToDouble(each -> Math.max(0, Math.max(each.faceCentre(), each.faceEdge())))
                        .max()
                        .orElse(0);
        double height = isWide ? 340 : 270;
        return new SectionLayout(format, panels, Math.min(room / (through / 2 + out), height / (2 * pose.halfWidth())));
    }

    double line() {
        return format.fontSize() + 3.0;
    }

    /** From the flush line at the bottom to the words below. */
    double below() {
        return line() + Math.max(4, bulge());
    }

    /** How far the highest edge is drawn above flush. */
    double bulge() {
        return view(0).highest(panels);
    }

    /** From the head of a panel to its flush line at the top. */
    double toFlush() {
        return HEAD + 2 * line() + 16 + bulge();
    }

    int height() {
        return (int) Math.ceil(rows() * panelHeight() + FOOT);
    }

    SectionView view(int index) {
        int exaggeration = SectionView.exaggeration(panels);
        double half = panels.get(0).left().halfWidth() * unitsPerMetre;
        SectionView bare = new SectionView(0, 0, unitsPerMetre, exaggeration);
        double flush = HEAD + 2 * line() + 16 + bare.highest(panels);
        return new SectionView(middle(index), top(index) + flush + half, unitsPerMetre, exaggeration);
    }

    double top(int index) {
        return format == SheetFormat.WIDE ? 0 : index * panelHeight();
    }

    double middle(int index) {
        return format == SheetFormat.WIDE ? format.width() * (index + 0.5) / panels.size() : format.width() / 2.0;
    }

    double panelWidth() {
        return format == SheetFormat.WIDE ? format.width() / (double) panels.size() : format.width();
    }

    private int rows() {
        return format == SheetFormat.WIDE ? 1 : panels.size();
    }

    private double panelHeight() {
        double half = panels.get(0).left().halfWidth() * unitsPerMetre;
        double bulge = new SectionView(0, 0, unitsPerMetre, SectionView.exaggeration(panels)).highest(panels);
        return HEAD + 2 * line() + 16 + bulge + 2 * half + 2 * line() + Math.max(4, bulge) + 14;
    }
}
