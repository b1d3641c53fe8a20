package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.knife.FullTangKnife;
import hafthold.material.Axis;
import hafthold.material.Cut;
import hafthold.material.Hybrid;
import hafthold.material.Material;
import hafthold.mechanics.SectionOutput;
import hafthold.quantity.Length;
import java.util.Arrays;
import java.util.List;

/**
 * Edges where bolster, tang and scale meet, all three flush at final sanding.
 *
 * <p>Bolster and tang widen with heat alone, each freely by half the width times expansion times warming: across so short a
 * joint neither holds the other back worth speaking of, so that this is the most that can show.
 */
final class BolsterLine {
    private static final Length BOLSTER = new Length(0);

    private final BondedEngine.Setup setup;
    private final FullTangKnife knife;
    private final Material bolster;

    BolsterLine(BondedEngine.Setup setup, Material bolster) {
        this.setup = setup;
        this.knife = setup.knife();
        this.bolster = bolster;
    }

    /** Edge of the bolster beyond that of the tang, a side, m, hour by hour. */
    double[] overTang(Doubt doubt) {
        AirSeries air = setup.destination().air();
        double[] celsius = new double[air.size()];
        Arrays.setAll(celsius, air::temperatureCelsius);
        return overTang(doubt, celsius);
    }

    /** The same at some temperatures. */
    double[] overTang(Doubt doubt, double[] celsius) {
        double half = knife.build().tangWidthAt(BOLSTER).metres() / 2;
        double perKelvin = doubt.perKelvin(bolster, Axis.ALONG) - doubt.perKelvin(knife.steel(), Axis.ALONG);
        double made = knife.build().made().temperature().celsius();
        double[] step = new double[celsius.length];
        Arrays.setAll(step, moment -> half * perKelvin * (celsius[moment] - made));
        return step;
    }

    /** The same at one temperature, every input at its value. */
    static double overTangAt(double celsius, FullTangKnife knife, Material bolster) {
        return knife.build().tangWidthAt(BOLSTER).metres()
                / 2
                * (Doubt.NONE.perKelvin(bolster, Axis.ALONG) - Doubt.NONE.perKelvin(knife.steel(), Axis.ALONG))
                * (celsius - knife.build().made().temperature().celsius());
    }

    /** Edge of the glued scale, half way up, beyond that of the bolster, a side, m, at the value of every input. */
    Swing scaleOverBolster(Cut cut) {
        List<Hybrid.Part> parts = HandleEngine.partsOf(knife.scale(), cut);
        FreeStrains sinceFinish = FreeStrains.since(knife.build().made(), setup, parts, Doubt.NONE);
        StiffnessNodes section = StiffnessNodes.of(
                setup, parts, Doubt.NONE, stiffness -> new SectionPlan(knife, parts, stiffness).acrossWidth(BOLSTER));
        double[] scale = sinceFinish.on(section).year(SectionOutput.EDGE_MID, sinceFinish.series());
        return Swing.of(YearSeries.difference(scale, overTang(Doubt.NONE)));
    }
}
