package hafthold.simulate;

import hafthold.knife.FullTangKnife;
import hafthold.knife.GlueLine;
import hafthold.material.Cut;
import hafthold.material.Hybrid;
import hafthold.material.Material;
import hafthold.mechanics.LayeredBow;
import hafthold.mechanics.LayeredBow.Layer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * Bow of a whole handle whose two scales pull unlike: scale, liners, glue, tang and the same outwards again as a strip of
 * layers along the blade ({@link LayeredBow}), straight when it was glued up.
 *
 * <p>Curvature is linear in the free strains, so that of a unit strain in each layer is solved once. What lasts for weeks
 * eases as in all that stresses the glue. The tang counts at its thickness midway, as steel without holes.
 */
final class HandleBow {
    private final BondedEngine.Setup setup;
    private final FullTangKnife knife;
    private final Doubt doubt;

    HandleBow(BondedEngine.Setup setup, Doubt doubt) {
        this.setup = setup;
        this.knife = setup.knife();
        this.doubt = doubt;
    }

    /**
     * One layer through the year.
     *
     * @param thickness m
     * @param modulus along the blade, Pa
     * @param free strain along the blade that the layer would take alone since glue-up, hour by hour
     */
    private record Strand(double thickness, double modulus, double[] free) {
        Layer under(double strain) {
            return new Layer(thickness, modulus, strain);
        }
    }

    /** Height of the arc over a straight-edge from bolster to butt, m, hour by hour; positive hollow on the left. */
    double[] year(Cut left, Cut right) {
        FreeStrains leftStrains = stressing(left);
        List<Strand> strands = new ArrayList<>(side(left, leftStrains));
        Collections.reverse(strands);
        double length = knife.build().scales().length().metres();
        double tang = SectionPlan.tangThicknessAt(knife, length / 2);
        strands.add(strand(tang, knife.steel(), leftStrains));
        strands.addAll(side(right, stressing(right)));
        double[] sag = new double[setup.destination().air().size()];
        for (int i = 0; i < strands.size(); i++) {
            double perStrain = bowUnder(strands, i).sagMetres(length);
            double[] free = strands.get(i).free();
            Arrays.setAll(sag, hour -> sag[hour] + perStrain * free[hour]);
        }
        return sag;
    }

    private static LayeredBow bowUnder(List<Strand> strands, int strained) {
        List<Layer> layers = new ArrayList<>();
        for (int i = 0; i < strands.size(); i++) {
            layers.add(strands.get(i).under(i == strained ? 1 : 0));
        }
        return new LayeredBow(layers);
    }

    private FreeStrains stressing(Cut cut) {
        return FreeStrains.since(knife.build().glueUp(), setup, parts(cut), doubt)
                .relaxed(doubt.lastingShare());
    }

    /** From the tang outwards. */
    private List<Strand> side(Cut cut, FreeStrains strains) {
        GlueLine glue = knife.build().glue();
        List<Strand> strands = new ArrayList<>();
        double[][] series = strains.series();
        int firstLiner = series.length - 1 - strains.liners().size();
        for (int i = 0; i < knife.liners().size(); i++) {
            Material liner = knife.liners().get(i);
            strands.add(strand(glue.thickness().metres(), knife.adhesive(), strains));
            strands.add(new Strand(
                    knife.build().liners().get(i).thickness().metres(),
                    modulus(liner),
                    along(strains.liners().get(i), series[firstLiner + i], strains.warmer())));
        }
        strands.add(strand(glue.thickness().metres(), knife.adhesive(), strains));
        double layer = knife.build().scales().thickness().metres() / LayerMoisture.LAYERS;
        double modulus = ScaleElasticity.of(parts(cut), doubt).lengthModulusPascals();
        for (int k = 0; k < LayerMoisture.LAYERS; k++) {
            double[] free = new double[strains.warmer().length];
            for (int p = 0; p < strains.scale().size(); p++) {
                PartMotion part = strains.scale().get(p);
                double[] own = along(part, series[p * LayerMoisture.LAYERS + k], strains.warmer());
                Arrays.setAll(free, hour -> free[hour] + part.share() * own[hour]);
            }
            strands.add(new Strand(layer, modulus, free));
        }
        return strands;
    }

    private List<Hybrid.Part> parts(Cut cut) {
        return HandleEngine.partsOf(knife.scale(), cut);
    }

    /** Something that takes up no water. */
    private static Strand strand(double thickness, Material material, FreeStrains strains) {
        double perKelvin = SectionPlan.expansion(material);
        return new Strand(
                thickness,
                modulus(material),
                Arrays.stream(strains.warmer())
                        .map(warmer -> perKelvin * warmer)
                        .toArray());
    }

    private static double modulus(Material material) {
        return ScaleElasticity.of(material, Cut.NONE, Doubt.NONE).lengthModulusPascals();
    }

    private static double[] along(PartMotion motion, double[] wetter, double[] warmer) {
        double[] strain = new double[wetter.length];
        Arrays.setAll(strain, hour -> motion.length().strain(wetter[hour], warmer[hour]));
        return strain;
    }
}
