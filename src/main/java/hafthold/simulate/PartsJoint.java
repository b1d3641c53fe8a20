package hafthold.simulate;

import hafthold.material.Hybrid;
import hafthold.material.Material;
import hafthold.material.ScaleMaterial;
import hafthold.mechanics.JointLine;
import hafthold.quantity.Band;
import java.util.List;
import java.util.Optional;

/**
 * What the line between the parts of a hybrid, or the plates of a molar, have to bear over the year.
 *
 * @param ridge step on the face where the parts meet, both free, metres; zero for a scale of one piece
 * @param use stress along the line over the strength across the weaker part, half of it relaxed; empty where the strength
 *     is not known, and for a scale of one piece
 */
public record PartsJoint(Band ridge, Optional<Band> use) {

    /** A scale of one piece. */
    public static final PartsJoint NONE = new PartsJoint(Band.exact(0), Optional.empty());

    /**
     * The joint of a scale; the two parts that its table names first stand for all.
     *
     * @param usePerStrain see {@link #usePerStrain}; does not change with the samples
     * @param drying largest loss of moisture since finish, kg/kg
     */
    static PartsJoint of(
            ScaleMaterial material,
            Optional<Double> usePerStrain,
            Spread<JointExtremes> spread,
            double thicknessMetres,
            double drying) {
        if (!(material instanceof Hybrid)) {
            return new PartsJoint(Band.exact(0), ToothLayers.use((Material) material, drying));
        }
        Band strain = spread.of(JointExtremes::lineStrain);
        return new PartsJoint(
                spread.of(JointExtremes::thicknessStrain).times(thicknessMetres), usePerStrain.map(strain::times));
    }

    /** Use of strength per strain of one part against the other; empty where it is not known or there is but one part. */
    static Optional<Double> usePerStrain(List<Hybrid.Part> parts) {
        if (parts.size() == 1) {
            return Optional.empty();
        }
        Hybrid.Part one = parts.get(0);
        Hybrid.Part other = parts.get(1);
        Optional<Double> strength = parts.stream()
                .map(part -> PinSplit.strength(part.material(), part.cut(), Doubt.NONE))
                .flatMap(Optional::stream)
                .min(Double::compare);
        if (!ScaleElasticity.isKnown(one.material()) || !ScaleElasticity.isKnown(other.material())) {
            return Optional.empty();
        }
        double stress = new JointLine(across(one), across(other)).pascalsPerStrain();
        return strength.map(bears -> PinCrack.RELAXATION * stress / bears);
    }

    private static double across(Hybrid.Part part) {
        return ScaleElasticity.of(part.material(), part.cut(), Doubt.NONE).widthModulusPascals();
    }
}
