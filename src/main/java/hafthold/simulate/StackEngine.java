package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.knife.Grip;
import hafthold.knife.StackTang;
import hafthold.knife.TangStackKnife;
import hafthold.material.Axis;
import hafthold.material.Cut;
import hafthold.material.Hybrid;
import hafthold.material.Material;
import hafthold.material.Property;
import hafthold.material.ScaleMaterial;
import hafthold.mechanics.StackSpring;
import hafthold.mechanics.ThroughTangStack;
import hafthold.simulate.StackYear.PartYear;
import hafthold.source.Evidence;
import hafthold.source.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A stack of parts on a through or hidden tang through the customer's year: what each part contributes against the steel
 * between guard and nut, the load or gap that follows, and what crushing leaves.
 *
 * <p>Each part is open to the air all round; its load relaxes as the stated share says. The year is run twice, so that
 * what was crushed in the damp shows as a gap in the dry.
 */
public final class StackEngine {
    private static final int HOURS_A_STEP = 6;
    private static final int HOURS_A_DAY = 24;
    private static final int RUNS = 2;

    private final TangStackKnife knife;
    private final Destination destination;
    private final AirSeries air;
    private final Draws draws;
    private final LayerMoisture moisture;

    /**
     * An engine for one knife in one place.
     *
     * @param sampling how often a year is run with other figures
     */
    public StackEngine(TangStackKnife knife, Destination destination, Sampling sampling) {
        this(
                knife,
                destination,
                new Draws(sampling),
                new LayerMoisture(destination, knife.build().made()));
    }

    private StackEngine(TangStackKnife knife, Destination destination, Draws draws, LayerMoisture moisture) {
        this.draws = draws;
        this.knife = knife;
        this.destination = destination;
        this.air = destination.air();
        this.moisture = moisture;
    }

    /** An engine for another knife in the same place that shares what this one has solved. */
    public StackEngine of(TangStackKnife other) {
        return new StackEngine(
                other, destination, draws, moisture.madeAt(other.build().made()));
    }

    /** The year at the value of every input, without bands: for trying changes of the build. */
    public StackYear yearWithoutBands() {
        return answer(new Spread<>(run(Doubt.NONE), List.of()), true, List.of());
    }

    /** The year with the band of every answer. */
    public StackYear year() {
        List<Run> runs = draws.doubts().parallelStream().map(this::run).toList();
        List<StackYear> samples = runs.stream()
                .map(run -> answer(new Spread<>(run, List.of()), false, List.of()))
                .toList();
        return answer(new Spread<>(run(Doubt.NONE), runs), true, samples);
    }

    /** What the doubt about the length may come from. */
    private List<Hybrid.Part> movers() {
        return IntStream.range(0, knife.parts().size())
                .mapToObj(i -> HandleEngine.partsOf(knife.parts().get(i), knife.cut(i)))
                .flatMap(List::stream)
                .toList();
    }

    /** One sample's year, the second time round. */
    private record Run(
            List<Swing> parts,
            List<Double> sets,
            Swing length,
            double gap,
            int gapHour,
            int joint,
            double load,
            double[] dailyLength,
            double[] dailyGap) {}

    private Run run(Doubt doubt) {
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

    private Run through(ThroughTangStack stack, double[][] strains) {
        int count = strains.length;
        double steel = SectionPlan.expansion(knife.steel());
        double made = knife.build().made().temperature().celsius();
        int days = air.size() / HOURS_A_DAY;
        double[][] contribution = new double[count][air.size() / HOURS_A_STEP];
        double[] total = new double[air.size() / HOURS_A_STEP];
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
                state = stack.respond(state, now, steel * (air.temperatureCelsius(hour) - made));
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
        return new Run(parts, state.setsMetres(), Swing.of(total), gap, gapHour, joint, load, dailyLength, dailyGap);
    }

    /** Free strain along the tang since the handle was made. */
    private double[] strain(ScaleMaterial material, Cut cut, Doubt doubt) {
        Grip grip = knife.build().grip();
        double half = Math.min(grip.width().metres(), grip.thickness().metres()) / 2;
        double[] strain = new double[air.size()];
        for (Hybrid.Part part : HandleEngine.partsOf(material, cut)) {
            LayeredCourse course = moisture.block(part.material(), part.cut(), half, knife.finish(), doubt);
            PartMotion motion = PartMotion.of(
                    part.material(),
                    part.cut(),
                    part.share().value(),
                    moisture.stockFraction(part.material(), knife.build().made(), doubt),
                    course.mean(),
                    0,
                    doubt);
            double made = knife.build().made().temperature().celsius();
            for (int hour = 0; hour < strain.length; hour++) {
                strain[hour] += motion.share()
                        * alongTang(part, motion)
                                .strain(motion.moistureChange(hour), air.temperatureCelsius(hour) - made);
            }
        }
        return strain;
    }

    /** Sheets are threaded on flat, so that their thickness lies along the tang. */
    private static PartMotion.Rate alongTang(Hybrid.Part part, PartMotion motion) {
        return isSheet(part.material()) ? motion.thickness() : motion.length();
    }

    private static boolean isSheet(Material material) {
        return material.family() == hafthold.material.Family.LINER
                || material.family() == hafthold.material.Family.LAMINATE;
    }

    private StackSpring spring(int index, Doubt doubt) {
        Grip grip = knife.build().grip();
        StackTang tang = knife.build().tang();
        double area = grip.width().metres() * grip.thickness().metres()
                - tang.width().metres() * tang.thickness().metres();
        List<Hybrid.Part> parts = HandleEngine.partsOf(knife.parts().get(index), knife.cut(index));
        Material material = parts.get(0).material();
        var elasticity = ScaleElasticity.of(material, parts.get(0).cut(), doubt);
        double modulus = isSheet(material) ? elasticity.thicknessModulusPascals() : elasticity.lengthModulusPascals();
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

    private StackYear answer(Spread<Run> spread, boolean tellsDays, List<StackYear> samples) {
        Run value = spread.value();
        List<PartYear> parts = new ArrayList<>();
        int most = 0;
        Evidence evidence = Evidence.MEASURED;
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < knife.parts().size(); i++) {
            int index = i;
            ScaleMaterial material = knife.parts().get(i);
            parts.add(new PartYear(
                    material.id(),
                    material.name(),
                    knife.build().parts().get(i).length().metres(),
                    spread.of(run -> run.parts().get(index).below()),
                    spread.of(run -> run.parts().get(index).above()),
                    spread.of(run -> run.sets().get(index)),
                    material.evidence()));
            most = value.parts().get(i).either() > value.parts().get(most).either() ? i : most;
            evidence = evidence.weaker(material.evidence());
            material.findings().stream()
                    .filter(finding -> !findings.contains(finding))
                    .forEach(findings::add);
        }
        List<Driver> drivers =
                Drivers.of(draws, movers(), spread.inSamples(run -> run.length().either()));
        return new StackYear(
                whole(
                        most,
                        new Grounds(
                                RestsOn.grade(evidence),
                                findings,
                                drivers,
                                samples.stream().map(StackYear::whole).toList()),
                        spread,
                        tellsDays),
                parts,
                spread.of(Run::gap),
                spread.of(run -> run.length().above()),
                spread.of(Run::load),
                spread.of(StackEngine::sets),
                destination.monthAt(
                        value.gap() > 0 ? value.gapHour() : value.length().leastHour() * HOURS_A_STEP),
                value.joint(),
                drivers,
                tellsDays
                        ? destination.calendarYear(IntStream.range(0, value.dailyLength().length)
                                .mapToObj(day -> spread.signed(run -> run.dailyLength()[day]))
                                .toList())
                        : List.of(),
                tellsDays
                        ? destination.calendarYear(java.util.Arrays.stream(value.dailyGap())
                                .boxed()
                                .toList())
                        : List.of(),
                samples);
    }

    private static double sets(Run run) {
        return run.sets().stream().mapToDouble(Double::doubleValue).sum();
    }

    private HandleYear whole(int most, Grounds grounds, Spread<Run> spread, boolean tellsDays) {
        Hybrid.Part part =
                HandleEngine.partsOf(knife.parts().get(most), knife.cut(most)).get(0);
        Grip grip = knife.build().grip();
        MoistureCourse course = moisture.block(
                        part.material(),
                        part.cut(),
                        Math.min(grip.width().metres(), grip.thickness().metres()) / 2,
                        knife.finish(),
                        Doubt.NONE)
                .mean();
        return new HandleYear(
                ScaleChoice.of(knife.parts().get(most), knife.cut(most)),
                new MoistureSpan(
                        moisture.stockFraction(part.material(), knife.build().made(), Doubt.NONE),
                        course.least(),
                        course.most()),
                EdgeSteps.NONE,
                new EndSteps(
                        spread.of(run -> run.length().either()),
                        spread.of(run -> run.length().below()),
                        spread.of(run -> run.length().above())),
                WorstPins.NONE,
                PartsJoint.NONE,
                Optional.empty(),
                destination.monthAt(spread.value().length().worstHour() * HOURS_A_STEP),
                grounds,
                tellsDays ? new HandleDays(List.of(), destination.calendarYear(course.dailyMeans())) : HandleDays.NONE,
                tellsDays
                        ? StaySpan.of(destination, course, () -> spread.value().dailyLength())
                        : List.of());
    }
}
