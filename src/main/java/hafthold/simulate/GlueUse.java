package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.mechanics.SectionOutput;
import hafthold.simulate.SideMovement.GlueLoad;
import java.util.Arrays;
import java.util.Optional;

/** Gathers the worst of all glue lines of a side, hour by hour. */
final class GlueUse {
    private final Optional<GlueStrength> strength;
    private final AirSeries air;
    private final boolean liners;
    private final double[] use;
    private final double[] pull;
    private double shear1;
    private double shear2;
    private double peel1;
    private double peel2;

    /**
     * Starts with nothing.
     *
     * @param liners whether there is glue under the scale besides that on the tang
     */
    GlueUse(Optional<GlueStrength> strength, AirSeries air, boolean liners) {
        this.strength = strength;
        this.air = air;
        this.liners = liners;
        use = new double[air.size()];
        pull = new double[air.size()];
    }

    /** Counts the glue lines of a section in. */
    void add(SectionDrive section, FreeStrains stressing) {
        line(
                section,
                stressing.series(),
                SectionOutput.GLUE_SHEAR_1_MM,
                SectionOutput.GLUE_SHEAR_2_MM,
                SectionOutput.GLUE_PEEL_1_MM,
                SectionOutput.GLUE_PEEL_2_MM);
        if (liners) {
            line(
                    section,
                    stressing.series(),
                    SectionOutput.SCALE_GLUE_SHEAR_1_MM,
                    SectionOutput.SCALE_GLUE_SHEAR_2_MM,
                    SectionOutput.SCALE_GLUE_PEEL_1_MM,
                    SectionOutput.SCALE_GLUE_PEEL_2_MM);
        }
    }

    private void line(
            SectionDrive section,
            double[][] series,
            SectionOutput shearOver1,
            SectionOutput shearOver2,
            SectionOutput peelOver1,
            SectionOutput peelOver2) {
        double[] shear = section.year(shearOver2, series);
        double[] peel = section.year(peelOver2, series);
        shear1 = Math.max(shear1, Swing.of(section.year(shearOver1, series)).either());
        shear2 = Math.max(shear2, Swing.of(shear).either());
        peel1 = Math.max(peel1, Swing.of(section.year(peelOver1, series)).above());
        peel2 = Math.max(peel2, Swing.of(peel).above());
        Arrays.setAll(pull, hour -> Math.max(pull[hour], peel[hour]));
        strength.ifPresent(glue -> Arrays.setAll(
                use, hour -> Math.max(use[hour], glue.use(shear[hour], peel[hour], air.temperatureCelsius(hour)))));
    }

    /** Use of the glue's strength hour by hour. */
    double[] use() {
        return use;
    }

    /** Largest pull over the last 2 mm so far, hour by hour, Pa, not negative. */
    double[] pull() {
        return pull.clone();
    }

    /** The year's worst. */
    GlueLoad load() {
        Swing swing = Swing.of(use);
        return new GlueLoad(shear1, shear2, peel1, peel2, swing.most(), swing.mostHour());
    }
}
