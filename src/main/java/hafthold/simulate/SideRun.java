package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.knife.FullTangKnife;
import hafthold.knife.Handle;
import hafthold.knife.WorkState;
import hafthold.material.Axis;
import hafthold.material.Cut;
import hafthold.material.Hybrid;
import hafthold.material.Material;
import hafthold.material.Property;
import hafthold.mechanics.BlockedSwelling;
import hafthold.mechanics.BondedSection;
import hafthold.mechanics.SectionInfluence;
import hafthold.mechanics.SectionOutput;
import hafthold.quantity.Length;
import hafthold.simulate.SideMovement.Days;
import hafthold.simulate.SideMovement.GlueLoad;
import hafthold.source.Figure;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** One scale through the year under one doubt: moisture to strain to offsets and stress. */
final class SideRun {
    private static final int HOURS_A_DAY = 24;
    private static final double SECONDS_A_DAY = 86_400;

    /** Stress that lasts less than this hardly relaxes (assumed). */
    private static final int RELAXATION_DAYS = 30;

    private static final int SPIN_UP_YEARS = 2;

    private final BondedEngine.Setup setup;
    private final FullTangKnife knife;
    private final List<Hybrid.Part> parts;
    private final Doubt doubt;
    private final AirSeries air;
    private final SectionPlan plan;
    private final List<PartMotion> made;
    private final List<PartMotion> linersMade;
    private final double[][] sinceFinish;
    private final SectionInfluence width;
    private final SectionDrive widthOffsets;
    private final SectionDrive widthStresses;
    private final SectionDrive lengthOffsets;
    private final SectionDrive lengthStresses;
    private final double[][] relaxed;
    private final double[] strengthAcross;

    SideRun(BondedEngine.Setup setup, Cut cut, Doubt doubt) {
        this.setup = setup;
        this.knife = setup.knife();
        this.parts = HandleEngine.partsOf(knife.scale(), cut);
        this.doubt = doubt;
        this.air = setup.destination().air();
        this.plan = new SectionPlan(knife, parts, doubt);
        WorkState finish = knife.build().made();
        WorkState glueUp = knife.build().glueUp();
        Handle handle = SectionPlan.handle(knife);
        List<LayeredCourse> courses = new ArrayList<>();
        parts.forEach(part ->
                courses.add(setup.moisture().scale(part.material(), part.cut(), handle, knife.finish(), doubt)));
        List<LayeredCourse> linerCourses = new ArrayList<>();
        knife.liners()
                .forEach(liner -> linerCourses.add(
                        setup.moisture().liner(liner, handle.tangWidth().metres() / 2, knife.finish(), doubt)));
        made = motions(courses, finish);
        linersMade = linerMotions(linerCourses, finish);
        List<PartMotion> glued = motions(courses, glueUp);
        List<PartMotion> linersGlued = linerMotions(linerCourses, glueUp);
        sinceFinish = series(courses, made, linerCourses, linersMade, finish);
        relaxed = relaxed(series(courses, glued, linerCourses, linersGlued, glueUp));
        double tang = SectionPlan.expansion(knife.steel());
        double glue = SectionPlan.expansion(knife.adhesive());
        width = setup.influence(plan.acrossWidth(SectionPlan.positions(knife).get(0)));
        widthOffsets = new SectionDrive(width, made, linersMade, tang, glue);
        widthStresses = new SectionDrive(width, glued, linersGlued, tang, glue);
        SectionInfluence length = setup.influence(plan.alongLength());
        lengthOffsets = new SectionDrive(length, made, linersMade, tang, glue);
        lengthStresses = new SectionDrive(length, glued, linersGlued, tang, glue);
        strengthAcross = parts.stream()
                .map(part -> PinSplit.strength(part.material(), part.cut(), doubt))
                .flatMap(Optional::stream)
                .mapToDouble(Double::doubleValue)
                .toArray();
    }

    /** The year at the widest section and at the ends. */
    SideMovement movement() {
        double[] tangLine = widthOffsets.year(SectionOutput.EDGE_TANG_LINE, sinceFinish);
        double[] mid = widthOffsets.year(SectionOutput.EDGE_MID, sinceFinish);
        double[] outer = widthOffsets.year(SectionOutput.EDGE_OUTER, sinceFinish);
        double[] free = widthOffsets.year(SectionOutput.FREE_EDGE, sinceFinish);
        double[] centre = widthOffsets.year(SectionOutput.FACE_CENTRE, sinceFinish);
        double[] corner = widthOffsets.year(SectionOutput.FACE_EDGE, sinceFinish);
        double[] freeEnd = lengthOffsets.year(SectionOutput.FREE_EDGE, sinceFinish);
        GlueUse glue = new GlueUse();
        glue.add(widthStresses);
        double[] acrossPull = glue.pull.clone();
        glue.add(lengthStresses);
        double[] middleUse = new double[air.size()];
        addMiddle(widthStresses, middleUse, weakest());
        if (splitsAnyWay()) {
            addMiddle(lengthStresses, middleUse, weakest());
        }
        Swing midSwing = Swing.of(mid);
        double[] atGlue = widthOffsets.year(SectionOutput.EDGE_AT_GLUE, sinceFinish);
        List<SectionPose> poses = List.of(midSwing.leastHour(), midSwing.mostHour()).stream()
                .map(h -> pose(h, atGlue[h], tangLine[h], mid[h], outer[h], free[h], centre[h], corner[h]))
                .toList();
        double[] tearUse = tearUse(splitsAnyWay() ? glue.pull : acrossPull);
        List<PinMovement> pins = pins(centre, corner);
        double pinSpan = SectionPlan.handle(knife).pinSpacing().metres();
        double length = knife.build().scales().length().metres();
        return new SideMovement(
                Swing.of(tangLine),
                midSwing,
                Swing.of(outer),
                Swing.of(free),
                Swing.of(difference(centre, corner)),
                Swing.of(lengthOffsets.year(SectionOutput.EDGE_MID, sinceFinish)),
                Swing.of(scaled(freeEnd, 2)),
                Swing.of(scaled(freeEnd, 2 * pinSpan / length)),
                glue.load(),
                Math.max(0, Swing.of(middleUse).most()),
                Swing.of(tearUse).above(),
                set(),
                pins,
                new Days(
                        dailyMean(mid),
                        dailyMean(free),
                        dailyMost(glue.use),
                        dailyMost(middleUse),
                        dailyMost(tearUse),
                        dailyMost(splitUse(pins))),
                poses);
    }

    /** The edge at another place of the handle. */
    Swing edgeAt(Length along) {
        SectionInfluence there = setup.influence(plan.acrossWidth(along));
        SectionDrive offsets = new SectionDrive(
                there, made, linersMade, SectionPlan.expansion(knife.steel()), SectionPlan.expansion(knife.adhesive()));
        return Swing.of(offsets.year(SectionOutput.EDGE_MID, sinceFinish));
    }

    /** Pull over what the scale bears at its glued edge; cross-cut stock is pulled along its grain and bears it. */
    private double[] tearUse(double[] pull) {
        double strength = parts.stream().anyMatch(part -> part.cut() == Cut.CROSS)
                ? Double.POSITIVE_INFINITY
                : weakest().orElse(Double.POSITIVE_INFINITY);
        return scaled(pull, 1 / strength);
    }

    /** The worst pin of each hour. */
    private double[] splitUse(List<PinMovement> pins) {
        double[] use = new double[air.size()];
        for (PinMovement pin : pins) {
            Arrays.setAll(use, hour -> Math.max(use[hour], pin.splitUse()[hour]));
        }
        return use;
    }

    private boolean splitsAnyWay() {
        return parts.stream().anyMatch(part -> PinSplit.splitsAnyWay(part.cut()));
    }

    private List<PartMotion> motions(List<LayeredCourse> courses, WorkState state) {
        List<PartMotion> motions = new ArrayList<>();
        for (int p = 0; p < parts.size(); p++) {
            Hybrid.Part part = parts.get(p);
            motions.add(PartMotion.of(
                    part.material(),
                    part.cut(),
                    part.share().value(),
                    setup.moisture().stockFraction(part.material(), state, doubt),
                    courses.get(p).mean(),
                    0,
                    doubt));
        }
        return motions;
    }

    private List<PartMotion> linerMotions(List<LayeredCourse> courses, WorkState state) {
        List<PartMotion> motions = new ArrayList<>();
        for (int l = 0; l < knife.liners().size(); l++) {
            Material liner = knife.liners().get(l);
            motions.add(PartMotion.of(
                    liner,
                    Cut.NONE,
                    1,
                    setup.moisture().stockFraction(liner, state, doubt),
                    courses.get(l).mean(),
                    0,
                    doubt));
        }
        return motions;
    }

    /** What drives the sections since a moment of the work: layers of parts, liners, temperature. */
    private double[][] series(
            List<LayeredCourse> courses,
            List<PartMotion> motions,
            List<LayeredCourse> linerCourses,
            List<PartMotion> linerMotions,
            WorkState since) {
        List<double[]> series = new ArrayList<>();
        for (int p = 0; p < motions.size(); p++) {
            for (int k = 0; k < LayerMoisture.LAYERS; k++) {
                series.add(change(courses.get(p), k, motions.get(p)));
            }
        }
        for (int l = 0; l < linerMotions.size(); l++) {
            series.add(change(linerCourses.get(l), 0, linerMotions.get(l)));
        }
        double[] warmer = new double[air.size()];
        for (int hour = 0; hour < warmer.length; hour++) {
            warmer[hour] = air.temperatureCelsius(hour) - since.temperature().celsius();
        }
        series.add(warmer);
        return series.toArray(new double[0][]);
    }

    private static double[] change(LayeredCourse course, int layer, PartMotion motion) {
        double[] change = new double[course.mean().hours()];
        for (int hour = 0; hour < change.length; hour++) {
            change[hour] =
                    Math.min(course.fraction(layer, hour), motion.stillAboveFraction()) - motion.finishFraction();
        }
        return change;
    }

    /** Each series less the share of its mean over the last weeks that has relaxed. */
    private double[][] relaxed(double[][] series) {
        double gone = 1 - doubt.lastingShare();
        return Arrays.stream(series).map(values -> relaxed(values, gone)).toArray(double[][]::new);
    }

    private static double[] relaxed(double[] values, double gone) {
        int window = Math.min(values.length, RELAXATION_DAYS * HOURS_A_DAY);
        double sum = 0;
        for (int back = 1; back <= window; back++) {
            sum += values[values.length - back];
        }
        double[] result = new double[values.length];
        for (int hour = 0; hour < values.length; hour++) {
            int leaves = hour - window;
            sum += values[hour] - values[leaves < 0 ? leaves + values.length : leaves];
            result[hour] = values[hour] - gone * sum / window;
        }
        return result;
    }

    private Optional<Double> weakest() {
        return Arrays.stream(strengthAcross).boxed().min(Double::compare);
    }

    private void addMiddle(SectionDrive stresses, double[] use, Optional<Double> strength) {
        if (strength.isEmpty()) {
            return;
        }
        for (int k = 0; k < LayerMoisture.LAYERS; k++) {
            double[] stress = stresses.layerStress(k, relaxed);
            for (int hour = 0; hour < use.length; hour++) {
                use[hour] = Math.max(use[hour], stress[hour] / strength.get());
            }
        }
    }

    /** Gathers the worst of all glue lines. */
    private final class GlueUse {
        private final Optional<GlueStrength> strength = GlueStrength.of(knife.adhesive(), doubt);
        private final double[] use = new double[air.size()];
        private final double[] pull = new double[air.size()];
        private double shear1;
        private double shear2;
        private double peel1;
        private double peel2;

        void add(SectionDrive stresses) {
            line(
                    stresses,
                    SectionOutput.GLUE_SHEAR_1_MM,
                    SectionOutput.GLUE_SHEAR_2_MM,
                    SectionOutput.GLUE_PEEL_1_MM,
                    SectionOutput.GLUE_PEEL_2_MM);
            if (!knife.liners().isEmpty()) {
                line(
                        stresses,
                        SectionOutput.SCALE_GLUE_SHEAR_1_MM,
                        SectionOutput.SCALE_GLUE_SHEAR_2_MM,
                        SectionOutput.SCALE_GLUE_PEEL_1_MM,
                        SectionOutput.SCALE_GLUE_PEEL_2_MM);
            }
        }

        private void line(
                SectionDrive stresses,
                SectionOutput shearOver1,
                SectionOutput shearOver2,
                SectionOutput peelOver1,
                SectionOutput peelOver2) {
            double[] shear = stresses.year(shearOver2, relaxed);
            double[] peel = stresses.year(peelOver2, relaxed);
            shear1 = Math.max(
                    shear1, Swing.of(stresses.year(shearOver1, relaxed)).either());
            shear2 = Math.max(shear2, Swing.of(shear).either());
            peel1 = Math.max(peel1, Swing.of(stresses.year(peelOver1, relaxed)).above());
            peel2 = Math.max(peel2, Swing.of(peel).above());
            Arrays.setAll(pull, hour -> Math.max(pull[hour], peel[hour]));
            strength.ifPresent(glue -> {
                for (int hour = 0; hour < use.length; hour++) {
                    use[hour] = Math.max(use[hour], glue.use(shear[hour], peel[hour], air.temperatureCelsius(hour)));
                }
            });
        }

        GlueLoad load() {
            Swing swing = Swing.of(use);
            return new GlueLoad(shear1, shear2, peel1, peel2, swing.most(), swing.mostHour());
        }
    }

    private SectionPose pose(
            int hour,
            double edgeAtGlue,
            double tangLine,
            double mid,
            double outer,
            double free,
            double faceCentre,
            double faceEdge) {
        BondedSection section = width.section();
        double between = section.layup().glue().thicknessMetres()
                        * (1 + section.layup().liners().size())
                + section.layup().liners().stream()
                        .mapToDouble(liner -> liner.thicknessMetres())
                        .sum();
        return new SectionPose(
                hour,
                section.halfSizeMetres(),
                section.layup().tang().thicknessMetres(),
                between,
                section.layup().scale().thicknessMetres(),
                edgeAtGlue,
                tangLine,
                mid,
                outer,
                free,
                faceCentre,
                faceEdge);
    }

    private List<PinMovement> pins(double[] faceCentre, double[] faceEdge) {
        double stiffer = plan.scale().widthModulusPascals()
                / ScaleElasticity.of(parts, Doubt.NONE).widthModulusPascals();
        PinRun run = new PinRun(setup, doubt, made, parts, sinceFinish[sinceFinish.length - 1], stiffer);
        PinSplit split = setup.split(ScaleElasticity.of(parts, Doubt.NONE), splitsAnyWay());
        List<PinMovement> pins = new ArrayList<>();
        for (int i = 0; i < knife.build().pins().size(); i++) {
            pins.add(run.movement(i, split, faceCentre, faceEdge, width.section()));
        }
        return pins;
    }

    /** Lasting loss of half the width: wood held at the tang yields when it swells and stays smaller. */
    private double set() {
        double set = 0;
        SectionInfluence widest = width;
        double[] even = widest.evenScaleStrain(0, 1, 0);
        double held = 1 - widest.value(SectionOutput.EDGE_MID, even) / widest.value(SectionOutput.FREE_EDGE, even);
        for (int p = 0; p < parts.size(); p++) {
            Optional<Figure> yield = parts.get(p).material().sheet().figure(Property.YIELD_STRAIN, Axis.ACROSS);
            if (yield.isEmpty() || parts.get(p).material().water().isEmpty()) {
                continue;
            }
            BlockedSwelling swelling =
                    new BlockedSwelling(yield.get().value(), 1 - doubt.lastingShare(), RELAXATION_DAYS * SECONDS_A_DAY);
            BlockedSwelling.State state = BlockedSwelling.State.UNUSED;
            PartMotion part = made.get(p);
            for (int day = 0; day < SPIN_UP_YEARS * (air.size() / HOURS_A_DAY); day++) {
                int hour = day * HOURS_A_DAY % air.size();
                state = swelling.after(state, held * part.width().strain(part.moistureChange(hour), 0), SECONDS_A_DAY);
            }
            set = Math.max(set, part.share() * state.set() * widest.section().halfSizeMetres());
        }
        return set;
    }

    private static double[] difference(double[] of, double[] less) {
        double[] result = new double[of.length];
        for (int hour = 0; hour < of.length; hour++) {
            result[hour] = of[hour] - less[hour];
        }
        return result;
    }

    private static double[] scaled(double[] values, double factor) {
        return Arrays.stream(values).map(value -> factor * value).toArray();
    }

    private static double[] dailyMean(double[] hours) {
        double[] days = new double[(hours.length + HOURS_A_DAY - 1) / HOURS_A_DAY];
        for (int hour = 0; hour < hours.length; hour++) {
            days[hour / HOURS_A_DAY] += hours[hour] / HOURS_A_DAY;
        }
        return days;
    }

    private static double[] dailyMost(double[] hours) {
        double[] days = new double[(hours.length + HOURS_A_DAY - 1) / HOURS_A_DAY];
        for (int hour = 0; hour < hours.length; hour++) {
            days[hour / HOURS_A_DAY] = Math.max(days[hour / HOURS_A_DAY], hours[hour]);
        }
        return days;
    }
}
