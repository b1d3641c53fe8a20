package hafthold.simulate;

import hafthold.knife.Grip;
import hafthold.knife.StackTang;
import hafthold.knife.TangStackKnife;
import hafthold.material.Axis;
import hafthold.material.Cut;
import hafthold.material.Family;
import hafthold.material.Hybrid;
import hafthold.material.Material;
import hafthold.material.Property;
import hafthold.material.ScaleMaterial;
import hafthold.mechanics.StackSpring;
import hafthold.mechanics.ThroughTangStack;
import java.util.ArrayList;
import java.util.List;

/**
 * One year of a stack, every input at one place of its range, run twice so that what was crushed in the damp shows as a
 * gap in the dry; metres, newtons.
 *
 * @param parts what each part adds to the length against the steel
 * @param sets what crushing has taken from each part
 * @param length of the whole against the steel
 * @param gap widest
 * @param gapHour when it is
 * @param joint that opens first, from 0
 * @param load largest
 * @param dailyLength mean of each day
 * @param dailyGap widest of each day
 */
record StackRun(
        List<Swing> parts,
        List<Double> sets,
        Swing length,
        double gap,
        int gapHour,
        int joint,
        double load,
        double[] dailyLength,
        double[] dailyGap) {
    static final int HOURS_A_STEP = 6;

    private static final int HOURS_A_DAY = 24;
    private static final int RUNS = 2;

    /** Lost to crushing in all parts together. */
    double setOfAll() {
        return sets.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** Runs the year of a knife under a doubt. */
    static StackRun of(TangStackKnife knife, Destination destination, LayerMoisture moisture, Doubt doubt) {
        return new Stack(knife, destination, moisture).run(doubt);
    }

    /** The knife in its air. */
    private record Stack(TangStackKnife knife, Destination destination, LayerMoisture moisture) {

        StackRun run(Doubt doubt) {
            int count = knife.parts().size();
            double[][] strains = new double[count][];
            List<StackSpring> springs = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                strains[i] = strain(knife.parts().get(i), knife.cut(i), doubt);
                springs.add(spring(i, doubt));
            }
            StackTang tang = knife.build().tang();
            ThroughTangStack stack = new ThroughTangStack(
                    springs,
                    tang.width().metres() * tang.thickness().metres(),
                    ScaleElasticity.of(knife.steel(), Cut.NONE, Doubt.NONE).lengthModulusPascals(),
                    tang.preload().newtons());
            return through(stack, strains);
        }

        private StackRun through(ThroughTangStack stack, double[][] strains) {
            int count = strains.length;
            double steel = SectionPlan.expansion(knife.steel());
            double made = knife.build().made().temperature().celsius();
            int days = destination.air().size() / HOURS_A_DAY;
            double[][] contribution = new double[count][destination.air().size() / HOURS_A_STEP];
            double[] total = new double[destination.air().size() / HOURS_A_STEP];
            double[] dailyLength = new double[days];
            double[] dailyGap = new double[days];
            double gap = 0;
            int gapHour = 0;
            int joint = 0;
            double load = 0;
            double leastLength = Double.POSITIVE_INFINITY;
            ThroughTangStack.State state = stack.drawnUp();
            int rounds = destination.repeatsFromStart() ? RUNS : 1;
            for (int run = 0; run < rounds; run++) {
                boolean counts = run == rounds - 1;
                for (int step = 0; step < total.length; step++) {
                    int hour = step * HOURS_A_STEP;
                    List<Double> now = new ArrayList<>(count);
                    for (double[] strain : strains) {
                        now.add(strain[hour]);
                    }
                    state = stack.respond(state, now, steel * (destination.air().temperatureCelsius(hour) - made));
                    load = Math.max(load, state.forceNewtons());
                    if (!counts) {
                        continue;
                    }
                    double length = 0;
                    for (int i = 0; i < count; i++) {
                        contribution[i][step] = state.contributionsMetres().get(i);
                        length += contribution[i][step];
                    }
                    total[step] = length;
                    int day = Math.min(days - 1, hour / HOURS_A_DAY);
                    dailyLength[day] += length * HOURS_A_STEP / HOURS_A_DAY;
                    dailyGap[day] = Math.max(dailyGap[day], state.gapMetres());
                    if (state.gapMetres() > gap) {
                        gap = state.gapMetres();
                        gapHour = hour;
                    }
                    if (length < leastLength) {
                        leastLength = length;
                        joint = state.firstJointToOpen();
                    }
                }
            }
            List<Swing> parts = new ArrayList<>();
            for (double[] course : contribution) {
                parts.add(Swing.of(course));
            }
            return new StackRun(
                    parts, state.setsMetres(), Swing.of(total), gap, gapHour, joint, load, dailyLength, dailyGap);
        }

        /** Free strain along the tang since the handle was made. */
        private double[] strain(ScaleMaterial material, Cut cut, Doubt doubt) {
            Grip grip = knife.build().grip();
            double half = Math.min(grip.width().metres(), grip.thickness().metres()) / 2;
            double[] strain = new double[destination.air().size()];
            for (Hybrid.Part part : HandleEngine.partsOf(material, cut)) {
                LayeredCourse course = moisture.block(part.material(), part.cut(), half, knife.finish(), doubt);
                PartMotion motion = PartMotion.of(
                        new GrainLie(part.material(), part.cut()),
                        part.share().value(),
                        moisture.stockFraction(part.material(), knife.build().made(), doubt),
                        course.mean(),
                        0,
                        doubt);
                double made = knife.build().made().temperature().celsius();
                for (int hour = 0; hour < strain.length; hour++) {
                    strain[hour] += motion.share()
                            * alongTang(part, motion)
                                    .strain(
                                            motion.moistureChange(hour),
                                            destination.air().temperatureCelsius(hour) - made);
                }
            }
            return strain;
        }

        /** Sheets are threaded on flat, so that their thickness lies along the tang. */
        private static PartMotion.Rate alongTang(Hybrid.Part part, PartMotion motion) {
            return isSheet(part.material()) ? motion.thickness() : motion.length();
        }

        private static boolean isSheet(Material material) {
            return material.family() == Family.LINER || material.family() == Family.LAMINATE;
        }

        private StackSpring spring(int index, Doubt doubt) {
            Grip grip = knife.build().grip();
            StackTang tang = knife.build().tang();
            double area = grip.width().metres() * grip.thickness().metres()
                    - tang.width().metres() * tang.thickness().metres();
            List<Hybrid.Part> parts = HandleEngine.partsOf(knife.parts().get(index), knife.cut(index));
            Material material = parts.get(0).material();
            var elasticity = ScaleElasticity.of(material, parts.get(0).cut(), doubt);
            double modulus =
                    isSheet(material) ? elasticity.thicknessModulusPascals() : elasticity.lengthModulusPascals();
            double crushing = material.sheet()
                    .figure(Property.YIELD_STRAIN, isSheet(material) ? Axis.THROUGH : Axis.ACROSS)
                    .map(yield -> yield.value() * modulus)
                    .orElse(Double.POSITIVE_INFINITY);
            return new StackSpring(
                    knife.parts().get(index).name(),
                    knife.build().parts().get(index).length().metres(),
                    area,
                    modulus * doubt.lastingShare(),
                    crushing);
        }
    }
}
