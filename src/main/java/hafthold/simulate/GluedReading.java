package hafthold.simulate;

import hafthold.mechanics.HandleAxis;
import hafthold.mechanics.OrthotropicElasticity;
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

    /** From the middle of a half to that of its outer eighth, over the distance of the halves. */
    private static final double TOTAL_BEYOND = 0.375;

    /** What free strain of the halves' moment has there beyond the outer half, over their difference. */
    private static final double FREE_BEYOND = 0.15625;

    private static final HandleAxis[] AXES = HandleAxis.values();

    /** Reads an answer off a solved section of two depth layers. */
    static GluedReading of(SectionInfluence section, SectionOutput output) {
        return of(section, column -> section.coefficient(output, column));
    }

    /**
     * Reads the stress along the section in mid-section, mean over the outermost eighth of the depth at the tang or at the
     * air, Pa.
     *
     * <p>Far from the ends total strain lies on a straight line through the depth (Timoshenko 1925), and so does the free
     * strain that two halves stand for; stress is what is between them. Half a depth holds its mean, the eighth lies 3/16
     * of the depth further out, and free strain that has the halves' moment is there {@link #FREE_BEYOND} of their step
     * beyond the outer one.
     */
    static GluedReading ofMiddleStress(SectionInfluence section, boolean atTheAir) {
        int here = atTheAir ? 1 : 0;
        HandleAxis along = section.section().along();
        OrthotropicElasticity scale = section.section().layup().scale().elasticity();
        double[][] perScale = new double[HALVES][AXES.length];
        GluedReading mean = ofMean(section, along, here);
        GluedReading other = ofMean(section, along, 1 - here);
        for (int half = 0; half < HALVES; half++) {
            for (HandleAxis axis : AXES) {
                int place = place(axis);
                double steeper = TOTAL_BEYOND - FREE_BEYOND;
                double free = (half == here ? steeper : -steeper) * scale.heldStressPascals(along, axis);
                perScale[half][place] = beyond(mean.perScale[half][place], other.perScale[half][place]) + free;
            }
        }
        return new GluedReading(beyond(mean.perTang, other.perTang), beyond(mean.perGlue, other.perGlue), perScale);
    }

    private static double beyond(double mean, double other) {
        return mean + TOTAL_BEYOND * (mean - other);
    }

    private static GluedReading ofMean(SectionInfluence section, HandleAxis along, int half) {
        return of(section, column -> {
            double[] unit = new double[section.columns()];
            unit[column] = 1;
            return section.scaleStressPascals(along, half, unit);
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
