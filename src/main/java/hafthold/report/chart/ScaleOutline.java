package hafthold.report.chart;

import hafthold.simulate.SectionPose;

/**
 * Outline of one scale after it has moved: through the reckoned points of its edge without overshooting them, its face
 * a parabola through middle and edges.
 *
 * @param pose sizes and movement
 * @param side -1 left, 1 right
 * @param view where it is drawn
 */
record ScaleOutline(SectionPose pose, int side, SectionView view) {
    private static final double TANG_LINE_DEPTH = 0.001;

    /** Depth of the glued face of the scale from the middle of the tang, m. */
    double foot() {
        return pose.tangThickness() / 2 + pose.betweenThickness();
    }

    /** Depths of the reckoned points from the foot, m. */
    double[] depths() {
        double thickness = pose.scaleThickness();
        return new double[] {0, Math.min(TANG_LINE_DEPTH, thickness / 4), thickness / 2, thickness};
    }

    /** Movement of the edge there, m. */
    double[] steps() {
        return new double[] {pose.edgeAtGlue(), pose.tangLine(), pose.edgeMid(), pose.edgeOuter()};
    }

    /** Path of the whole outline. */
    String path() {
        StringBuilder path = new StringBuilder("M").append(point(0, true));
        edge(path, true);
        face(path);
        edge(path, false);
        return path.append('Z').toString();
    }

    /** Path of glue and liners between tang and scale. */
    String between() {
        double half = pose.halfWidth();
        double tang = view.x(side, pose.tangThickness() / 2, 0);
        return "M" + pair(tang, view.top(half, 0)) + "L" + point(0, true) + "L" + point(0, false) + "L"
                + pair(tang, view.bottom(half, 0)) + "Z";
    }

    /** From the left, of a point of the edge. */
    double x(int point) {
        double share = depths()[point] / pose.scaleThickness();
        return view.x(side, foot() + depths()[point], share * pose.faceEdge());
    }

    /** From the top, of a point of the upper edge. */
    double y(int point) {
        return view.top(pose.halfWidth(), steps()[point]);
    }

    private void edge(StringBuilder path, boolean outwards) {
        double[] depth = depths();
        double[] slope = slopes();
        for (int k = 1; k < depth.length; k++) {
            int from = outwards ? k - 1 : depth.length - k;
            int to = outwards ? k : from - 1;
            double third = (depth[to] - depth[from]) / 3;
            path.append('C')
                    .append(handle(from, third, slope[from], outwards))
                    .append(' ')
                    .append(handle(to, -third, slope[to], outwards))
                    .append(' ')
                    .append(point(to, outwards));
        }
    }

    private void face(StringBuilder path) {
        double edge = view.x(side, foot() + pose.scaleThickness(), pose.faceEdge());
        double middle = view.x(side, foot() + pose.scaleThickness(), pose.faceCentre());
        path.append('Q')
                .append(pair(2 * middle - edge, view.centre()))
                .append(' ')
                .append(point(3, false));
    }

    /** Slopes at the points by the harmonic mean, which never overshoots. */
    private double[] slopes() {
        double[] depth = depths();
        double[] step = steps();
        double[] secant = new double[depth.length - 1];
        for (int k = 0; k < secant.length; k++) {
            secant[k] = (step[k + 1] - step[k]) / (depth[k + 1] - depth[k]);
        }
        double[] slope = new double[depth.length];
        slope[0] = secant[0];
        slope[depth.length - 1] = secant[secant.length - 1];
        for (int k = 1; k < secant.length; k++) {
            double product = secant[k - 1] * secant[k];
            slope[k] = product <= 0 ? 0 : 2 * product / (secant[k - 1] + secant[k]);
        }
        return slope;
    }

    private String handle(int point, double away, double slope, boolean isTop) {
        double along = x(point) + side * view.unitsPerMetre() * away;
        double moved = steps()[point] + slope * away;
        return pair(along, isTop ? view.top(pose.halfWidth(), moved) : view.bottom(pose.halfWidth(), moved));
    }

    private String point(int point, boolean isTop) {
        return pair(x(point), isTop ? y(point) : view.bottom(pose.halfWidth(), steps()[point]));
    }

    private static String pair(double x, double y) {
        return SvgSheet.number(x) + " " + SvgSheet.number(y);
    }
}
