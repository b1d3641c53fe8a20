package hafthold.mechanics;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * The unit free strains of a section and the column each has: tang, glue, liners from the tang outwards in length,
 * width and thickness, scale in length, width and thickness for each depth layer from the glue, and last the extension
 * out of the section.
 */
final class SectionModes {
    static final int TANG = 0;
    static final int GLUE = 1;
    private static final int FIRST_LINER = 2;
    private static final int AXES = HandleAxis.values().length;

    private final BondedSection section;
    private final SectionGrid grid;

    SectionModes(BondedSection section, SectionGrid grid) {
        this.section = section;
        this.grid = grid;
    }

    static int linerColumn(int liner, HandleAxis axis) {
        return FIRST_LINER + AXES * liner + axis.place();
    }

    static int scaleColumn(BondedSection section, HandleAxis axis, int depthLayer) {
        return FIRST_LINER + AXES * section.layup().liners().size() + axis.place() * section.depthLayers() + depthLayer;
    }

    List<FreeStrain> freeStrains() {
        List<FreeStrain> modes = new ArrayList<>();
        int parts = section.parts().size();
        modes.add(new FreeStrain(0, grid.firstRow(GLUE), 1, 1, 1));
        BitSet glue = new BitSet();
        for (int part = GLUE; part < parts; part += 2) {
            glue.set(grid.firstRow(part), grid.firstRow(part + 1));
        }
        modes.add(new FreeStrain(glue, 1, 1, 1));
        for (int part = FIRST_LINER; part < parts - 1; part += 2) {
            for (HandleAxis axis : HandleAxis.values()) {
                modes.add(along(axis, grid.firstRow(part), grid.firstRow(part + 1)));
            }
        }
        int[] sides = depthSides();
        for (HandleAxis axis : HandleAxis.values()) {
            for (int k = 0; k < section.depthLayers(); k++) {
                modes.add(along(axis, sides[k], sides[k + 1]));
            }
        }
        modes.add(new FreeStrain(0, grid.rows(), 0, 0, -1));
        return modes;
    }

    /** First row of each depth layer of the scale, and the number of rows at the end. */
    int[] depthSides() {
        double bottom = grid.rowSide(grid.firstRow(section.parts().size() - 1));
        return section.depthSharesOfScale().stream()
                .mapToInt(share ->
                        grid.rowAt(bottom + share * section.layup().scale().thicknessMetres()))
                .toArray();
    }

    private FreeStrain along(HandleAxis axis, int firstRow, int endRow) {
        return new FreeStrain(
                firstRow,
                endRow,
                axis == section.along() ? 1 : 0,
                axis == HandleAxis.THICKNESS ? 1 : 0,
                axis == section.out() ? 1 : 0);
    }
}
