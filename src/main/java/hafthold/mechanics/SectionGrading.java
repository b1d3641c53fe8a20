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

    private SectionGrading() {}

    static SectionGrid grid(BondedSection section, int refinement) {
        List<SectionLayer> parts = section.parts();
        List<Double> y = new ArrayList<>(List.of(0.0));
        List<Integer> layerOfRow = new ArrayList<>();
        for (int part = 0; part < parts.size(); part++) {
            double bottom = y.get(y.size() - 1);
            double[] shares = halved(shares(section, part, parts.size()), refinement);
            for (int i = 1; i < shares.length; i++) {
                y.add(bottom + shares[i] * parts.get(part).thicknessMetres());
                layerOfRow.add(part);
            }
        }
        return new SectionGrid(
                halved(columns(section.halfSizeMetres()), refinement),
                y.stream().mapToDouble(Double::doubleValue).toArray(),
                layerOfRow.stream().mapToInt(Integer::intValue).toArray());
    }

    private static double[] shares(BondedSection section, int part, int parts) {
        if (part == 0) {
            return TANG;
        }
        if (part == parts - 1) {
            return scale(section.depthSharesOfScale());
        }
        return part % 2 == 1 ? GLUE : LINER;
    }

    /** The sides of the depth layers and those of the usual rows that do not lie right beside one. */
    private static double[] scale(List<Double> depthShares) {
        List<Double> shares = new ArrayList<>(depthShares);
        for (int i = 1; i < SCALE.length - 1; i++) {
            double least = 0.3 * (SCALE[i] - SCALE[i - 1]);
            double share = SCALE[i];
            if (depthShares.stream().allMatch(side -> Math.abs(side - share) > least)) {
                shares.add(share);
            }
        }
        return shares.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    }

    private static double[] columns(double halfSize) {
        List<Double> fromEdge = new ArrayList<>();
        for (double distance : NEAR_EDGE) {
            fromEdge.add(distance);
        }
        double done = NEAR_EDGE[NEAR_EDGE.length - 1];
        double rest = halfSize - done;
        int count = (int) Math.max(1, Math.round(Math.log1p((GROWTH - 1) * rest / FIRST_BEYOND) / Math.log(GROWTH)));
        double first = rest * (GROWTH - 1) / (Math.pow(GROWTH, count) - 1);
        for (int i = 1; i <= count; i++) {
            fromEdge.add(i == count ? halfSize : done + first * (Math.pow(GROWTH, i) - 1) / (GROWTH - 1));
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
