package hafthold.mechanics;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Reads the answers of a section from its displacements: one row an answer, one number a mode.
 */
final class SectionReading {

    private final BondedSection section;
    private final SectionSolution solution;
    private final SectionGrid grid;
    private final int scaleRow;
    private final double scaleBottom;
    private final Map<SectionOutput, double[]> outputs = new EnumMap<>(SectionOutput.class);
    private final double[][] stressAlong;
    private final double[][] stressOut;

    SectionReading(BondedSection section, SectionSolution solution) {
        this.section = section;
        this.solution = solution;
        this.grid = solution.grid();
        this.scaleRow = grid.firstRow(section.parts().size() - 1);
        this.scaleBottom = grid.rowSide(scaleRow);
        this.stressAlong = new double[section.depthLayers()][solution.modes()];
        this.stressOut = new double[section.depthLayers()][solution.modes()];
        for (SectionOutput output : SectionOutput.values()) {
            outputs.put(output, new double[solution.modes()]);
        }
        edge();
        face();
        glue(1, 1e-3, SectionOutput.GLUE_SHEAR_1_MM, SectionOutput.GLUE_PEEL_1_MM);
        glue(1, 2e-3, SectionOutput.GLUE_SHEAR_2_MM, SectionOutput.GLUE_PEEL_2_MM);
        int last = section.parts().size() - 2;
        glue(last, 1e-3, SectionOutput.SCALE_GLUE_SHEAR_1_MM, SectionOutput.SCALE_GLUE_PEEL_1_MM);
        glue(last, 2e-3, SectionOutput.SCALE_GLUE_SHEAR_2_MM, SectionOutput.SCALE_GLUE_PEEL_2_MM);
        scaleStress();
        row(SectionOutput.EXTENSION_OUT)[solution.modes() - 1] = 1;
    }

    double[] row(SectionOutput output) {
        return outputs.get(output);
    }

    /** Stress along the section on its middle plane, mean over a depth layer, Pa. */
    double[] stressAlong(int depthLayer) {
        return stressAlong[depthLayer];
    }

    /** Stress out of the section on its middle plane, mean over a depth layer, Pa. */
    double[] stressOut(int depthLayer) {
        return stressOut[depthLayer];
    }

    private void edge() {
        double thickness = section.layup().scale().thicknessMetres();
        double band = Math.min(SectionOutput.TANG_LINE_DEPTH_METRES, thickness);
        edgeAt(scaleBottom, row(SectionOutput.EDGE_AT_GLUE));
        edgeAt(scaleBottom + thickness / 2, row(SectionOutput.EDGE_MID));
        edgeAt(grid.rowSide(grid.rows()), row(SectionOutput.EDGE_OUTER));
        edgeMean(scaleBottom, scaleBottom + band, row(SectionOutput.EDGE_TANG_LINE));
        int steelCorner = 2 * grid.firstRow(1);
        for (SectionOutput output : List.of(
                SectionOutput.EDGE_AT_GLUE,
                SectionOutput.EDGE_TANG_LINE,
                SectionOutput.EDGE_MID,
                SectionOutput.EDGE_OUTER)) {
            solution.addDisplacement(2 * grid.columns(), steelCorner, 0, -1, row(output));
        }
        double[] free = row(SectionOutput.FREE_EDGE);
        free[0] = -section.halfSizeMetres();
        for (int k = 0; k < section.depthLayers(); k++) {
            free[SectionModes.scaleColumn(section, section.along(), k)] =
                    section.halfSizeMetres() * layerThickness(k) / thickness;
        }
    }

    private double layerThickness(int k) {
        return (section.depthSharesOfScale().get(k + 1)
                        - section.depthSharesOfScale().get(k))
                * section.layup().scale().thicknessMetres();
    }

    private void edgeAt(double y, double[] target) {
        int row = scaleRow;
        while (row < grid.rows() - 1 && y > grid.rowSide(row + 1)) {
            row++;
        }
        double t = (y - grid.rowSide(row)) / grid.height(row);
        int c = 2 * grid.columns();
        solution.addDisplacement(c, 2 * row, 0, (1 - t) * (1 - 2 * t), target);
        solution.addDisplacement(c, 2 * row + 1, 0, 4 * t * (1 - t), target);
        solution.addDisplacement(c, 2 * row + 2, 0, t * (2 * t - 1), target);
    }

    private void edgeMean(double from, double to, double[] target) {
        int c = 2 * grid.columns();
        for (int row = scaleRow; row < grid.rows() && grid.rowSide(row) < to; row++) {
            double share = Math.min(1, (to - grid.rowSide(row)) / grid.height(row));
            for (int place = 0; place < 3; place++) {
                double weight = SerendipityRectangle.edgeIntegral(place, share) * grid.height(row) / (to - from);
                solution.addDisplacement(c, 2 * row + place, 0, weight, target);
            }
        }
    }

    private void face() {
        solution.addDisplacement(0, 2 * grid.rows(), 1, 1, row(SectionOutput.FACE_CENTRE));
        solution.addDisplacement(2 * grid.columns(), 2 * grid.rows(), 1, 1, row(SectionOutput.FACE_EDGE));
        double[] free = row(SectionOutput.FREE_FACE);
        List<SectionLayer> parts = section.parts();
        free[0] = parts.get(0).thicknessMetres();
        free[1] = section.layup().glue().thicknessMetres()
                * (1 + section.layup().liners().size());
        for (int liner = 0; liner < section.layup().liners().size(); liner++) {
            free[SectionModes.linerColumn(liner, HandleAxis.THICKNESS)] =
                    section.layup().liners().get(liner).thicknessMetres();
        }
        for (int k = 0; k < section.depthLayers(); k++) {
            free[SectionModes.scaleColumn(section, HandleAxis.THICKNESS, k)] = layerThickness(k);
        }
    }

    private void glue(int part, double length, SectionOutput shear, SectionOutput peel) {
        int firstRow = grid.firstRow(part);
        int endRow = grid.firstRow(part + 1);
        double[][] stress = new double[4][solution.modes()];
        for (int column = grid.columnAtFromEdge(length); column < grid.columns(); column++) {
            for (int row = firstRow; row < endRow; row++) {
                solution.addStress(column, row, stress);
            }
        }
        double area = length * (grid.rowSide(endRow) - grid.rowSide(firstRow));
        for (int m = 0; m < solution.modes(); m++) {
            row(shear)[m] = stress[3][m] / area;
            row(peel)[m] = stress[1][m] / area;
        }
    }

    private void scaleStress() {
        int[] sides = new SectionModes(section, grid).depthSides();
        for (int k = 0; k < section.depthLayers(); k++) {
            double height = grid.rowSide(sides[k + 1]) - grid.rowSide(sides[k]);
            for (int r = sides[k]; r < sides[k + 1]; r++) {
                solution.addMiddleStress(r, grid.height(r) / height, stressAlong[k], stressOut[k]);
            }
            double share = height / section.layup().scale().thicknessMetres();
            for (int m = 0; m < solution.modes(); m++) {
                row(SectionOutput.SCALE_STRESS_ALONG)[m] += share * stressAlong[k][m];
                row(SectionOutput.SCALE_STRESS_OUT)[m] += share * stressOut[k][m];
            }
        }
    }

    /** Force out of the section, Pa m2, of one quarter of the handle. */
    double[] force() {
        double[][] stress = new double[4][solution.modes()];
        for (int c = 0; c < grid.columns(); c++) {
            for (int r = 0; r < grid.rows(); r++) {
                solution.addStress(c, r, stress);
            }
        }
        return stress[2];
    }
}
