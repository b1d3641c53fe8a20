package hafthold.simulate;

import hafthold.mechanics.HandleAxis;
import hafthold.mechanics.SectionInfluence;
import hafthold.mechanics.SectionOutput;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/**
 * One answer of a section to unit free strains, its scale in two halves of the depth: what is left of a solved section
 * once it is known what will be asked.
 *
 * @param perTang answer to unit strain of the tang
 * @param perGlue answer to unit strain of the glue
 * @param perScale answers to unit strain of the scale, by half (tang, air) and place of the axis; never written to
 */
record GluedReading(double perTang, double perGlue, double[][] perScale) {
    /** Halves of the scale's depth. */
    static final int HALVES = 2;

    private static final HandleAxis[] AXES = HandleAxis.values();

    /** Reads an answer off a solved section of two depth layers. */
    static GluedReading of(SectionInfluence section, SectionOutput output) {
        return of(section, column -> section.coefficient(output, column));
    }

    /** Reads the stress along the section in mid-section, mean over one half of the depth, Pa. */
    static GluedReading ofMiddleStress(SectionInfluence section, int half) {
        return of(section, column -> {
            double[] unit = new double[section.columns()];
            unit[column] = 1;
            return section.scaleStressPascals(section.section().along(), half, unit);
        });
    }

    private static GluedReading of(SectionInfluence section, IntToDoubleFunction answer) {
        double[][] perScale = new double[HALVES][AXES.length];
        for (int half = 0; half < HALVES; half++) {
            for (HandleAxis axis : AXES) {
                perScale[half][place(axis)] = answer.applyAsDouble(section.scaleColumnOf(axis, half));
            }
        }
        return new GluedReading(
                answer.applyAsDouble(section.tangColumn()), answer.applyAsDouble(section.glueColumn()), perScale);
    }

    /**
     * What moisture and warmth make of it: for each part the answer to unit change of moisture in its half at the tang and
     * in that at the air, and last that to one kelvin.
     */
    double[] drive(List<PartMotion> parts, double tangPerKelvin, double gluePerKelvin) {
        double[] drive = new double[HALVES * parts.size() + 1];
        double perKelvin = perTang * tangPerKelvin + perGlue * gluePerKelvin;
        for (int p = 0; p < parts.size(); p++) {
            PartMotion part = parts.get(p);
            for (int half = 0; half < HALVES; half++) {
                double moisture = 0;
                double warmth = 0;
                for (HandleAxis axis : AXES) {
                    double unit = perScale[half][place(axis)];
                    PartMotion.Rate rate = SectionDrive.rate(part, axis);
                    moisture += unit * rate.perMoisture();
                    warmth += unit * rate.perKelvin();
                }
                drive[HALVES * p + half] = part.share() * moisture;
                perKelvin += part.share() * warmth;
            }
        }
        drive[drive.length - 1] = perKelvin;
        return drive;
    }

    private static int place(HandleAxis axis) {
        return switch (axis) {
            case LENGTH -> 0;
            case WIDTH -> 1;
            case THICKNESS -> 2;
        };
    }
}
