package hafthold.simulate;

import hafthold.material.Axis;
import hafthold.material.Material;
import hafthold.material.Property;
import hafthold.mechanics.JointLine;
import hafthold.quantity.Band;
import hafthold.source.Evidence;
import hafthold.source.Figure;
import hafthold.source.Finding;
import hafthold.source.Message;
import hafthold.source.PublishedModel;
import java.util.Map;
import java.util.Optional;

/**
 * Plates of enamel between dentine and cementum in a molar: dentine shrinks sixteen times as much as enamel for the water
 * it loses, and the joints between the plates have to bear the difference.
 *
 * <p>Water sits in dentine and cementum, taken as two thirds of the tooth (as the table does), so that they lose half as
 * much again as the whole. What holds the plates is the tension strength of the tooth.
 */
@PublishedModel(
        source = "dental-dehydration-2009",
        locator = "linear shrinkage over water lost: dentine 0.081, enamel 0.005 %/%",
        validity = "human teeth from wet to dry; fossil molars by analogy")
final class ToothLayers {
    /** Strain of dentine for a loss of water. */
    static final Figure DENTINE = figure(0.06, 0.081, 0.10);

    /** Strain of enamel for a loss of water. */
    static final Figure ENAMEL = figure(0.003, 0.005, 0.007);

    private static final String MOLAR = "molar-mammoth";
    private static final double DENTINE_SHARE = 2.0 / 3.0;
    private static final double DENTINE_PASCALS = 17e9;
    private static final double ENAMEL_PASCALS = 80e9;
    private static final double LEAST_LOSS = 0.002;

    private ToothLayers() {}

    private static Figure figure(double low, double value, double high) {
        return new Figure(
                new Band(low, value, high), Evidence.ESTIMATED, "dental-dehydration-2009", "range of judgement");
    }

    /** Strain between the plates when the whole tooth dries by so much, kg/kg. */
    static double mismatch(double lossFraction) {
        return (DENTINE.value() - ENAMEL.value()) * lossFraction / DENTINE_SHARE;
    }

    /** Stress between the plates over what they bear; empty for other materials. */
    static Optional<Band> use(Material material, double lossFraction) {
        return material.id().equals(MOLAR)
                ? material.sheet()
                        .figure(Property.TENSION_STRENGTH, Axis.ACROSS)
                        .map(bears -> over(bears.band(), stressPascals(Math.max(0, lossFraction))))
                : Optional.empty();
    }

    private static Band over(Band strength, double stress) {
        return new Band(stress / strength.high(), stress / strength.value(), stress / strength.low());
    }

    private static double stressPascals(double lossFraction) {
        return PinCrack.RELAXATION
                * new JointLine(DENTINE_PASCALS, ENAMEL_PASCALS).pascalsPerStrain()
                * mismatch(lossFraction);
    }

    /** What a molar's plates do when it dries; empty for other materials and where it does not dry. */
    static Optional<Finding> finding(Material material, double lossFraction) {
        if (!material.id().equals(MOLAR) || lossFraction < LEAST_LOSS) {
            return Optional.empty();
        }
        double stress = stressPascals(lossFraction);
        return Optional.of(PartingFindings.estimate(
                material.id(),
                Message.of(
                        "note.tooth-layers",
                        Map.of(
                                "times", Message.number(DENTINE.value() / ENAMEL.value(), 0),
                                "source", Message.verbatim(DENTINE.sourceKey()),
                                "difference", Message.number(100 * mismatch(lossFraction), 2),
                                "stress", Message.number(stress / 1e6, 0)))));
    }
}
