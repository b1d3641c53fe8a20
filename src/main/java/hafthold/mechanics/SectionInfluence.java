package hafthold.mechanics;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The answers of a {@link BondedSection} to unit free strains: a matrix with one row an answer and one column a mode.
 *
 * <p>Elasticity is linear, so any state is the sum of modes times amplitudes, and a year is a matrix product. Columns:
 * tang (equal in all directions), glue (likewise), each liner in length, width and thickness, the scale in length,
 * width and thickness for each depth layer counted from the glue, and, where the extension out of the section is held,
 * that extension. Amplitudes are strains, counted from the glue-up for stresses and from the finish for offsets.
 */
public final class SectionInfluence {
    private final BondedSection section;
    private final OutOfSection extension;
    private final int columns;
    private final Map<SectionOutput, double[]> outputs = new EnumMap<>(SectionOutput.class);
    private final double[][] stressAlong;
    private final double[][] stressOut;

    SectionInfluence(BondedSection section, OutOfSection extension, SectionGrid grid) {
        this.section = section;
        this.extension = extension;
        PlaneStiffness[] material = section.parts().stream()
                .map(part -> part.elasticity().inSection(section.along()))
                .toArray(PlaneStiffness[]::new);
        List<FreeStrain> modes = new SectionModes(section, grid).freeStrains();
        SectionReading reading = new SectionReading(section, new SectionSolution(grid, material, modes));
        this.columns = extension == OutOfSection.HELD ? modes.size() : modes.size() - 1;
        double[] released = extension == OutOfSection.HELD ? new double[columns] : released(reading.force());
        for (SectionOutput output : SectionOutput.values()) {
            outputs.put(output, withExtension(reading.row(output), released));
        }
        this.stressAlong = new double[section.depthLayers()][];
        this.stressOut = new double[section.depthLayers()][];
        for (int k = 0; k < section.depthLayers(); k++) {
            stressAlong[k] = withExtension(reading.stressAlong(k), released);
            stressOut[k] = withExtension(reading.stressOut(k), released);
        }
    }

    /** Extension of each mode that leaves no force out of the section. */
    private static double[] released(double[] force) {
        int extensionMode = force.length - 1;
        double[] result = new double[extensionMode];
        for (int m = 0; m < extensionMode; m++) {
            result[m] = -force[m] / force[extensionMode];
        }
        return result;
    }

    /** A row with an extension added to each of its first modes; the last mode of the full row is unit extension. */
    private static double[] withExtension(double[] row, double[] extension) {
        double[] result = Arrays.copyOf(row, extension.length);
        for (int m = 0; m < extension.length; m++) {
            result[m] += extension[m] * row[row.length - 1];
        }
        return result;
    }

    /** Section these answers belong to. */
    public BondedSection section() {
        return section;
    }

    /** Number of modes, the length of every amplitude array. */
    public int columns() {
        return columns;
    }

    /** Column of the tang's free strain, the same in every direction. */
    public int tangColumn() {
        return SectionModes.TANG;
    }

    /** Column of the free strain of all glue lines, the same in every direction. */
    public int glueColumn() {
        return SectionModes.GLUE;
    }

    /**
     * Column of a liner's free strain along an axis.
     *
     * @param liner 0 for the liner next to the tang
     */
    public int linerColumnOf(int liner, HandleAxis axis) {
        if (liner < 0 || liner >= section.layup().liners().size()) {
            throw new IndexOutOfBoundsException(
                    "no liner " + liner + " among " + section.layup().liners().size());
        }
        return SectionModes.linerColumn(liner, axis);
    }

    /**
     * Column of the scale's free strain along an axis in one depth layer.
     *
     * @param depthLayer 0 at the glue to {@code section().depthLayers() - 1} at the outer face
     */
    public int scaleColumnOf(HandleAxis axis, int depthLayer) {
        requireLayer(depthLayer);
        return SectionModes.scaleColumn(section, axis, depthLayer);
    }

    /**
     * Column of a given extension out of the section.
     *
     * @throws IllegalStateException where the extension settles by itself
     */
    public int extensionColumn() {
        if (extension == OutOfSection.FREE) {
            throw new IllegalStateException("the extension out of this section settles free of force");
        }
        return columns - 1;
    }

    /** Amplitudes of a free strain of the scale that is the same at every depth. */
    public double[] evenScaleStrain(double length, double width, double thickness) {
        double[] amplitudes = new double[columns];
        for (int k = 0; k < section.depthLayers(); k++) {
            amplitudes[SectionModes.scaleColumn(section, HandleAxis.LENGTH, k)] = length;
            amplitudes[SectionModes.scaleColumn(section, HandleAxis.WIDTH, k)] = width;
            amplitudes[SectionModes.scaleColumn(section, HandleAxis.THICKNESS, k)] = thickness;
        }
        return amplitudes;
    }

    /**
     * An answer for a state of free strain.
     *
     * @param amplitudes one strain a column
     * @return in the unit the output states
     */
    public double value(SectionOutput output, double[] amplitudes) {
        return dot(outputs.get(output), amplitudes);
    }

    /** All answers to one unit of each mode, a copy: what a loop over a year multiplies its amplitudes with. */
    public double[] coefficients(SectionOutput output) {
        return outputs.get(output).clone();
    }

    /** An answer to one unit of one mode. */
    public double coefficient(SectionOutput output, int column) {
        return outputs.get(output)[column];
    }

    /**
     * Stress of the scale in mid-section, mean over one depth layer; tension positive.
     *
     * @param axis width or length
     * @param depthLayer 0 at the glue
     * @param amplitudes one strain a column
     * @return Pa
     */
    public double scaleStressPascals(HandleAxis axis, int depthLayer, double[] amplitudes) {
        requireLayer(depthLayer);
        if (axis == HandleAxis.THICKNESS) {
            throw new IllegalArgumentException("no stress is kept through the thickness: nothing holds the outer face");
        }
        return dot((axis == section.along() ? stressAlong : stressOut)[depthLayer], amplitudes);
    }

    /** Largest {@link #scaleStressPascals} over the depth, Pa; negative where all of the scale is squeezed. */
    public double largestScaleTensionPascals(HandleAxis axis, double[] amplitudes) {
        double largest = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < section.depthLayers(); k++) {
            largest = Math.max(largest, scaleStressPascals(axis, k, amplitudes));
        }
        return largest;
    }

    private void requireLayer(int depthLayer) {
        if (depthLayer < 0 || depthLayer >= section.depthLayers()) {
            throw new IndexOutOfBoundsException("no depth layer " + depthLayer + " among " + section.depthLayers());
        }
    }

    private double dot(double[] row, double[] amplitudes) {
        if (amplitudes.length != columns) {
            throw new IllegalArgumentException("expected " + columns + " amplitudes, got " + amplitudes.length);
        }
        double sum = 0;
        for (int m = 0; m < columns; m++) {
            sum += row[m] * amplitudes[m];
        }
        return sum;
    }
}
