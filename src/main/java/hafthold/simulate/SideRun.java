package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.knife.FullTangKnife;
import hafthold.material.Cut;
import hafthold.material.Hybrid;
import hafthold.mechanics.BondedSection;
import hafthold.mechanics.SectionOutput;
import hafthold.quantity.Length;
import hafthold.simulate.SideMovement.Days;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** One scale through the year under one doubt: moisture to strain to offsets and stress. */
final class SideRun {
    private final BondedEngine.Setup setup;
    private final FullTangKnife knife;
    private final List<Hybrid.Part> parts;
    private final Doubt doubt;
    private final AirSeries air;
    private final FreeStrains sinceFinish;
    private final FreeStrains sinceGlueUp;
    private final FreeStrains stressing;

    SideRun(BondedEngine.Setup setup, Cut cut, Doubt doubt) {
        this(
                setup,
                cut,
                doubt,
                FreeStrains.since(
                        setup.knife().build().made(),
                        setup,
                        HandleEngine.partsOf(setup.knife().scale(), cut),
                        doubt),
                FreeStrains.since(
                        setup.knife().build().glueUp(),
                        setup,
                        HandleEngine.partsOf(setup.knife().scale(), cut),
                        doubt));
    }

    private SideRun(BondedEngine.Setup setup, Cut cut, Doubt doubt, FreeStrains sinceFinish, FreeStrains sinceGlueUp) {
        this(setup, cut, doubt, sinceFinish, sinceGlueUp, sinceGlueUp.relaxed(doubt.lastingShare()));
    }

    /** A run over strains of its own making, one a sample of the setup's air, such as those of events. */
    SideRun(
            BondedEngine.Setup setup,
            Cut cut,
            Doubt doubt,
            FreeStrains sinceFinish,
            FreeStrains sinceGlueUp,
            FreeStrains stressing) {
        this.setup = setup;
        this.knife = setup.knife();
        this.parts = HandleEngine.partsOf(knife.scale(), cut);
        this.doubt = doubt;
        this.air = setup.destination().air();
        this.sinceFinish = sinceFinish;
        this.sinceGlueUp = sinceGlueUp;
        this.stressing = stressing;
    }

    /** The year at the widest section and at the ends. */
    SideMovement movement() {
        StiffnessNodes width =
                section(plan -> plan.acrossWidth(SectionPlan.positions(knife).get(0)));
        StiffnessNodes length = section(SectionPlan::alongLength);
        SectionDrive offsets = sinceFinish.on(width);
        double[] tangLine = year(offsets, SectionOutput.EDGE_TANG_LINE);
        double[] mid = year(offsets, SectionOutput.EDGE_MID);
        double[] outer = year(offsets, SectionOutput.EDGE_OUTER);
        double[] free = year(offsets, SectionOutput.FREE_EDGE);
        double[] centre = year(offsets, SectionOutput.FACE_CENTRE);
        double[] corner = year(offsets, SectionOutput.FACE_EDGE);
        double[] atGlue = year(offsets, SectionOutput.EDGE_AT_GLUE);
        Swing midSwing = Swing.of(mid);
        List<SectionPose> poses = List.of(midSwing.leastHour(), midSwing.mostHour()).stream()
                .map(h -> pose(
                        width.first().section(),
                        setup.destination().hourOfYear(h),
                        atGlue[h],
                        tangLine[h],
                        mid[h],
                        outer[h],
                        free[h],
                        centre[h],
                        corner[h]))
                .toList();
        SectionDrive ends = sinceFinish.on(length);
        double[] freeEnd = year(ends, SectionOutput.FREE_EDGE);
        double pinSpan = SectionPlan.handle(knife).pinSpacing().metres()
                / knife.build().scales().length().metres();

        SectionDrive widthStresses = sinceGlueUp.on(width);
        SectionDrive lengthStresses = sinceGlueUp.on(length);
        GlueUse glue = new GlueUse(
                GlueStrength.of(knife.adhesive(), doubt), air, !knife.liners().isEmpty());
        glue.add(widthStresses, stressing);
        double[] acrossPull = glue.pull();
        glue.add(lengthStresses, stressing);
        double[] middleUse = new double[air.size()];
        addMiddle(widthStresses, stressing, middleUse);
        if (splitsAnyWay()) {
            addMiddle(lengthStresses, stressing, middleUse);
        }
        double[] tearUse = tearUse(splitsAnyWay() ? glue.pull() : acrossPull);
        List<PinMovement> pins = pins(centre, corner, width.first().section());
        return new SideMovement(
                Swing.of(tangLine),
                midSwing,
                Swing.of(outer),
                Swing.of(free),
                Swing.of(YearSeries.difference(centre, corner)),
                Swing.of(year(ends, SectionOutput.EDGE_MID)),
                Swing.of(YearSeries.scaled(freeEnd, 2)),
                Swing.of(YearSeries.scaled(freeEnd, 2 * pinSpan)),
                glue.load(),
                Swing.of(middleUse).above(),
                Swing.of(tearUse).above(),
                ScaleSet.metres(width, parts, sinceGlueUp, doubt.lastingShare()),
                JointExtremes.of(sinceFinish.scale(), sinceFinish.warmer()),
                pins,
                new Days(
                        YearSeries.dailyMean(mid),
                        YearSeries.dailyMean(free),
                        YearSeries.dailyMost(glue.use()),
                        YearSeries.dailyMost(middleUse),
                        YearSeries.dailyMost(tearUse),
                        YearSeries.dailyMost(splitUse(pins))),
                poses);
    }

    /** The edge at another place of the handle. */
    Swing edgeAt(Length along) {
        SectionDrive offsets = sinceFinish.on(section(plan -> plan.acrossWidth(along)));
        return Swing.of(year(offsets, SectionOutput.EDGE_MID));
    }

    private StiffnessNodes section(Function<SectionPlan, BondedSection> cut) {
        return StiffnessNodes.of(setup, parts, doubt, stiffness -> cut.apply(new SectionPlan(knife, parts, stiffness)));
    }

    private double[] year(SectionDrive offsets, SectionOutput output) {
        return offsets.year(output, sinceFinish.series());
    }

    /** Pull over what the scale bears at its glued edge; cross-cut stock is pulled along its grain and bears it. */
    private double[] tearUse(double[] pull) {
        double strength = parts.stream().anyMatch(part -> part.cut() == Cut.CROSS)
                ? Double.POSITIVE_INFINITY
                : weakest().orElse(Double.POSITIVE_INFINITY);
        return YearSeries.scaled(pull, 1 / strength);
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

    /** What the weakest part of the scale bears across its grain, Pa. */
    private Optional<Double> weakest() {
        return parts.stream()
                .map(part -> PinSplit.strength(part.material(), part.cut(), doubt))
                .flatMap(Optional::stream)
                .min(Double::compare);
    }

    private void addMiddle(SectionDrive section, FreeStrains stressing, double[] use) {
        weakest().ifPresent(strength -> {
            for (int k = 0; k < LayerMoisture.LAYERS; k++) {
                double[] stress = section.layerStress(k, stressing.series());
                Arrays.setAll(use, hour -> Math.max(use[hour], stress[hour] / strength));
            }
        });
    }

    private static SectionPose pose(
            BondedSection section,
            int hour,
            double edgeAtGlue,
            double tangLine,
            double mid,
            double outer,
            double free,
            double faceCentre,
            double faceEdge) {
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

    private List<PinMovement> pins(double[] faceCentre, double[] faceEdge, BondedSection widest) {
        Doubt stiffness = Doubt.alone(Input.STIFFNESS, StiffnessNodes.position(parts, doubt));
        double stiffer = ScaleElasticity.of(parts, stiffness).widthModulusPascals()
                / ScaleElasticity.of(parts, Doubt.NONE).widthModulusPascals();
        PinRun run = new PinRun(setup, doubt, sinceFinish.scale(), parts, sinceFinish.warmer(), stiffer);
        PinSplit split = setup.split(ScaleElasticity.of(parts, Doubt.NONE), splitsAnyWay());
        List<PinMovement> pins = new ArrayList<>();
        for (int i = 0; i < knife.build().pins().size(); i++) {
            pins.add(run.movement(i, split, faceCentre, faceEdge, widest));
        }
        return pins;
    }
}
