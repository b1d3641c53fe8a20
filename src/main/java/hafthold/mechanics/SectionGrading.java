package hafthold.mechanics;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Where grid lines lie: close together at the free edge and at the glue, where stress changes fast. */
final class SectionGrading {
    /** Distances of the first column sides from the free edge, m; glue stresses are means over the last two. */
    private static final double[] NEAR_EDGE = {0, 0.025e-3, 0.12e-3, 0.4e-3, 1e-3, 2e-3};

    private static final double FIRST_BEYOND = 1.6e-3;
    private static final double GROWTH = 1.6;

    /** Rows of the half tang, as shares of it from its mid-plane. */
    private static final double[] TANG = {0, 0.7, 0.97, 1};

    private static final double[] GLUE = {0, 0.2, 0.8, 1};
    /** Least rows of the scale, as shares of it from the glue; the sides of the depth layers come on top. */
    private static final double[] SCALE = {0, 0.004, 0.025, 0.08, 0.17, 0.3, 0.47, 0.65, 0.82, 0.93, 1};

    private static final double[] LINER = {0, 0.2, 0.8, 1};

    /** As {@link #NEAR_EDGE} where it must be quick; beyond, each column is twice as wide as the last. */
    private static final double[] QUICK_NEAR_EDGE = {0, 1e-3, 2e-3};

    private static final double QUICK_FIRST_BEYOND = 3e-3;
    private static final double QUICK_GROWTH = 2;

    private static final double[] QUICK_SCALE = {0, 0.1, 0.5, 1};
    private static final double[] ONE_ROW = {0, 1};

    private SectionGrading() {}

    /** Few elements: what the middle of an edge needs, not its corners. */
    static SectionGrid quick(BondedSection section) {
        List<SectionLayer> parts = section.parts();
        List<double[]> shares = new ArrayList<>();
        for (int part = 0; part < parts.size(); part++) {
            shares.add(part == parts.size() - 1 ? withSides(QUICK_SCALE, section.depthSharesOfScale()) : ONE_ROW);
        }
        return grid(
                section, columns(section.halfSizeMetres(), QUICK_NEAR_EDGE, QUICK_FIRST_BEYOND, QUICK_GROWTH), shares);
    }

    static SectionGrid grid(BondedSection section, int refinement) {
        int parts = section.parts().size();
        List<double[]> shares = new ArrayList<>();
        for (int part = 0; part < parts; part++) {
            shares.add(halved(shares(section, part, parts), refinement));
        }
        return grid(
                section,
                halved(columns(section.halfSizeMetres(), NEAR_EDGE, FIRST_BEYOND, GROWTH), refinement),
                shares);
    }

    private static SectionGrid grid(BondedSection section, double[] columns, List<double[]> shares) {
        List<SectionLayer> parts = section.parts();
        List<Double> y = new ArrayList<>(List.of(0.0));
        List<Integer> layerOfRow = new ArrayList<>();
        for (int part = 0; part < parts.size(); part++) {
            double bottom = y.get(y.size() - 1);
            for (int i = 1; i < shares.get(part).length; i++) {
                y.add(bottom + shares.get(part)[i] * parts.get(part).thicknessMetres());
                layerOfRow.add(part);
            }
        }
        return new SectionGrid(
                columns,
                y.stream().mapToDouble(Double::doubleValue).toArray(),
                layerOfRow.stream().mapToInt(Integer::intValue).toArray());
    }

    private static double[] shares(BondedSection section, int part, int parts) {
        if (part == 0) {
            return TANG;
        }
        if (part == parts - 1) {
            return withSides(SCALE, section.depthSharesOfScale());
        }
        return part % 2 == 1 ? GLUE : LINER;
    }

    /** The sides of the depth layers and those of the usual rows that do not lie right beside one. */
    private static double[] withSides(double[] rows, List<Double> depthShares) {
        List<Double> shares = new ArrayList<>(depthShares);
        for (int i = 1; i < rows.length - 1; i++) {
            double least = 0.3 * (rows[i] - rows[i - 1]);
            double share = rows[i];
            if (depthShares.stream().allMatch(side -> Math.abs(side - share) > least)) {
                shares.add(share);
            }
        }
        return shares.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    }

    private static double[] columns(double halfSize, double[] nearEdge, double firstBeyond, double growth) {
        List<Double> fromEdge = new ArrayList<>();
        for (double distance : nearEdge) {
            fromEdge.add(distance);
        }
        double done = nearEdge[nearEdge.length - 1];
        double rest = halfSize - done;
        int count = (int) Math.max(1, Math.round(Math.log1p((growth - 1) * rest / firstBeyond) / Math.log(growth)));
        double first = rest * (growth - 1) / (Math.pow(growth, count) - 1);
        for (int i = 1; i <= count; i++) {
            fromEdge.add(i == count ? halfSize : done + first * (Math.pow(growth, i) - 1) / (growth - 1));
        }
        Collections.reverse(fromEdge);
        return fromEdge.stream().mapToDouble(distance -> halfSize - distance).toArray();
    }

    private static double[] halved(double[] lines, int times) {
        double[] result = lines;
        for (int t = 0; t < times; t++) {
            double[] finer = new double[2 * result.length - 1];
            for (int i = 0; i < result.length; i++) {
                finer[2 * i] = result[i];
                if (i > 0) {
                    finer[2 * i - 1] = (result[i - 1] + result[i]) / 2;
                }
            }
            result = finer;
        }
        return result;
    }
}
