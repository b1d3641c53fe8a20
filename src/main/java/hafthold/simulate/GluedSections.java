package hafthold.simulate;

import hafthold.knife.Bond;
import hafthold.knife.Handle;
import hafthold.material.Cut;
import hafthold.material.Material;
import hafthold.mechanics.BondedSection;
import hafthold.mechanics.HandleAxis;
import hafthold.mechanics.Layup;
import hafthold.mechanics.OrthotropicElasticity;
import hafthold.mechanics.SectionInfluence;
import hafthold.mechanics.SectionLayer;
import hafthold.mechanics.SectionOutput;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Sections of one handle under scales of any stiffness, solved quickly, once a stiffness: many materials of a rack share
 * the figures of their class.
 *
 * <p>The scale's free strain may differ in two halves of its depth, enough for the mean and the first moment of its
 * moisture, see {@link MoistureCourse#halfFractions}.
 */
final class GluedSections {
    private static final List<Double> HALVES = List.of(0.0, 0.5, 1.0);

    private final Handle handle;
    private final double tangPerKelvin;
    private final double gluePerKelvin;
    private final SectionLayer tang;
    private final SectionLayer glue;
    private final Map<OrthotropicElasticity, Readings> solved = new ConcurrentHashMap<>();

    /**
     * What is asked of both sections of a handle.
     *
     * @param tangLine edge over the 2 mm next to the tang
     * @param mid edge at half the scale's thickness
     * @param face outer face in the middle
     * @param end end at half the scale's thickness
     * @param across what glue and scale bear in the section across the width
     * @param along likewise in that along the blade
     * @param halfThickness from the mid-plane of the tang to the outer face, m
     * @param tangPerKelvin thermal expansion of the tang, 1/K
     * @param gluePerKelvin thermal expansion of the glue, 1/K
     */
    record Readings(
            GluedReading tangLine,
            GluedReading mid,
            GluedReading face,
            GluedReading end,
            Bearing across,
            Bearing along,
            double halfThickness,
            double tangPerKelvin,
            double gluePerKelvin) {}

    /**
     * Stresses of one section, Pa.
     *
     * @param shear in the glue over its last 2 mm
     * @param peel in the glue over its last 2 mm, positive where it pulls
     * @param middle in mid-section along the section, in the outermost eighth at the tang and at the air
     */
    record Bearing(GluedReading shear, GluedReading peel, List<GluedReading> middle) {

        static Bearing of(SectionInfluence section) {
            return new Bearing(
                    GluedReading.of(section, SectionOutput.GLUE_SHEAR_2_MM),
                    GluedReading.of(section, SectionOutput.GLUE_PEEL_2_MM),
                    List.of(GluedReading.ofMiddleStress(section, false), GluedReading.ofMiddleStress(section, true)));
        }
    }

    GluedSections(Handle handle, Bond bond) {
        this.handle = handle;
        this.tangPerKelvin = SectionPlan.expansion(bond.steel());
        this.gluePerKelvin = SectionPlan.expansion(bond.adhesive());
        this.tang = layer(bond.tangThickness().metres(), bond.steel());
        this.glue = layer(bond.glueThickness().metres(), bond.adhesive());
    }

    /** Sections under a scale of this stiffness. */
    Readings under(OrthotropicElasticity scale) {
        return solved.computeIfAbsent(scale, this::solve);
    }

    private Readings solve(OrthotropicElasticity scale) {
        Layup layup =
                new Layup(tang, glue, new SectionLayer(handle.scaleThickness().metres(), scale));
        SectionInfluence width = influence(HandleAxis.WIDTH, handle.tangWidth().metres() / 2, layup);
        SectionInfluence length = influence(HandleAxis.LENGTH, handle.length().metres() / 2, layup);
        return new Readings(
                GluedReading.of(width, SectionOutput.EDGE_TANG_LINE),
                GluedReading.of(width, SectionOutput.EDGE_MID),
                GluedReading.of(width, SectionOutput.FACE_CENTRE),
                GluedReading.of(length, SectionOutput.EDGE_MID),
                Bearing.of(width),
                Bearing.of(length),
                tang.thicknessMetres() / 2
                        + glue.thicknessMetres()
                        + handle.scaleThickness().metres(),
                tangPerKelvin,
                gluePerKelvin);
    }

    private static SectionInfluence influence(HandleAxis along, double halfSize, Layup layup) {
        return new BondedSection(along, halfSize, layup, HALVES).quickInfluence();
    }

    private static SectionLayer layer(double thickness, Material material) {
        return new SectionLayer(thickness, ScaleElasticity.of(material, Cut.NONE, Doubt.NONE));
    }
}
