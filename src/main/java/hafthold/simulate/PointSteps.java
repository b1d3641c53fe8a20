package hafthold.simulate;

import hafthold.air.HeldAir;
import hafthold.knife.FullTangKnife;
import hafthold.knife.MeasuringPoint;
import hafthold.knife.Pin;
import hafthold.material.Hybrid;
import hafthold.mechanics.BondedSection;
import hafthold.mechanics.PinFit;
import hafthold.mechanics.SectionOutput;
import hafthold.quantity.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/** Steps of a bonded knife at the points where they can be measured, at a few moments, under one doubt. */
final class PointSteps {
    private static final Length BOLSTER = new Length(0);

    /** Less than that is no movement, m. */
    private static final double LEAST = 1e-6;

    private final BondedEngine.Setup setup;
    private final FullTangKnife knife;
    private final Doubt doubt;
    private final double[] celsius;
    private final List<Side> sides = new ArrayList<>();

    /** One scale and what strains it since final sanding. */
    private record Side(List<Hybrid.Part> parts, FreeStrains strains) {}

    PointSteps(BondedEngine.Setup setup, Doubt doubt, KnifeMoments moments) {
        this.setup = setup;
        this.knife = setup.knife();
        this.doubt = doubt;
        this.celsius = moments.celsius();
        for (int side = 0; side < moments.scales().size(); side++) {
            List<Hybrid.Part> parts =
                    HandleEngine.partsOf(knife.scale(), knife.sides().get(side));
            sides.add(new Side(
                    parts,
                    FreeStrains.of(
                            knife.build().made(),
                            setup,
                            parts,
                            doubt,
                            moments.scales().get(side),
                            moments.liners(),
                            celsius)));
        }
    }

    /** A step at every moment, m, signed as {@link hafthold.knife.MeasuredStep}. */
    double[] at(MeasuringPoint point) {
        return switch (point) {
            case EDGES -> mean(this::edge);
            case EDGE_LEFT -> edge(sides.get(0));
            case EDGE_RIGHT -> edge(sides.get(sides.size() - 1));
            case ENDS -> mean(this::end);
            case BOLSTER -> mean(this::overBolster);
            case PIN_HEADS -> furthest(overPins(this::head));
            case PIN_GAP -> furthest(overPins(this::gap));
        };
    }

    private double[] mean(Function<Side, double[]> of) {
        double[] sum = new double[celsius.length];
        for (Side side : sides) {
            double[] one = of.apply(side);
            Arrays.setAll(sum, i -> sum[i] + one[i] / sides.size());
        }
        return sum;
    }

    private double[] edge(Side side) {
        return year(side, widest(side), SectionOutput.EDGE_MID);
    }

    private double[] end(Side side) {
        return year(side, section(side, SectionPlan::alongLength), SectionOutput.EDGE_MID);
    }

    private double[] overBolster(Side side) {
        double[] bolster = new BolsterLine(setup, knife.bolster().orElseThrow()).overTang(doubt, celsius);
        double[] scale = year(side, section(side, plan -> plan.acrossWidth(BOLSTER)), SectionOutput.EDGE_MID);
        return YearSeries.difference(scale, bolster);
    }

    private StiffnessNodes widest(Side side) {
        return section(
                side, plan -> plan.acrossWidth(SectionPlan.positions(knife).get(0)));
    }

    private StiffnessNodes section(Side side, Function<SectionPlan, BondedSection> cut) {
        return StiffnessNodes.of(
                setup, side.parts(), doubt, stiffness -> cut.apply(new SectionPlan(knife, side.parts(), stiffness)));
    }

    private static double[] year(Side side, StiffnessNodes section, SectionOutput output) {
        return side.strains().on(section).year(output, side.strains().series());
    }

    /** How far the faces of the first scale move over how far they would if nothing held them in width, by moment. */
    double[] faceOverFree() {
        Side side = sides.get(0);
        StiffnessNodes section = widest(side);
        double[] face = year(side, section, SectionOutput.FACE_CENTRE);
        double[] free = year(side, section, SectionOutput.FREE_FACE);
        double[] ratio = new double[face.length];
        Arrays.setAll(ratio, i -> Math.abs(free[i]) < LEAST ? 1 : face[i] / free[i]);
        return ratio;
    }

    /** One answer of one pin in one scale. */
    private interface PinAnswer {
        double[] of(Side side, int pin);
    }

    private List<double[]> overPins(PinAnswer answer) {
        List<double[]> all = new ArrayList<>();
        for (Side side : sides) {
            for (int pin = 0; pin < knife.build().pins().size(); pin++) {
                all.add(answer.of(side, pin));
            }
        }
        return all;
    }

    private double[] head(Side side, int index) {
        Pin pin = knife.build().pins().get(index);
        if (pin.kind() == Pin.Kind.HIDDEN) {
            return new double[celsius.length];
        }
        StiffnessNodes section = widest(side);
        return PinRun.heads(
                pin,
                PinRun.fit(knife, index),
                year(side, section, SectionOutput.FACE_CENTRE),
                year(side, section, SectionOutput.FACE_EDGE),
                section.first().section(),
                side.strains().warmer());
    }

    /** Room that shows beside a pin, in the part of the scale that draws back furthest. */
    private double[] gap(Side side, int index) {
        Pin pin = knife.build().pins().get(index);
        PinFit fit = PinRun.fit(knife, index);
        double filled = pin.fill() == Pin.Fill.FLEXIBLE ? fit.openClearanceMetres() : 0;
        double[] widest = new double[celsius.length];
        for (PartMotion part : side.strains().scale()) {
            for (int i = 0; i < widest.length; i++) {
                double wetter = part.moistureChange(i);
                double warmer = side.strains().warmer()[i];
                double room = Math.max(
                        fit.gapMetres(part.length().strain(wetter, warmer), warmer),
                        fit.gapMetres(part.width().strain(wetter, warmer), warmer));
                widest[i] = Math.max(widest[i], room - filled);
            }
        }
        return widest;
    }

    /** Of several series at every moment the value furthest from zero. */
    private double[] furthest(List<double[]> series) {
        double[] furthest = new double[celsius.length];
        for (double[] one : series) {
            Arrays.setAll(furthest, i -> Math.abs(one[i]) > Math.abs(furthest[i]) ? one[i] : furthest[i]);
        }
        return furthest;
    }

    /** A knife settled in air that is held, every part in balance with it. */
    static KnifeMoments settled(FullTangKnife knife, Doubt doubt, HeldAir air) {
        return new KnifeMoments(
                knife.sides().stream()
                        .map(cut -> HandleEngine.partsOf(knife.scale(), cut).stream()
                                .map(part -> BalancedCourse.of(part.material(), doubt, air, LayerMoisture.LAYERS))
                                .toList())
                        .toList(),
                knife.liners().stream()
                        .map(liner -> BalancedCourse.of(liner, doubt, air, 1))
                        .toList(),
                new double[] {air.celsius()});
    }
}
