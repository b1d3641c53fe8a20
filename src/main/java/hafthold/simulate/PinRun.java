package hafthold.simulate;

import hafthold.knife.FullTangKnife;
import hafthold.knife.Pin;
import hafthold.material.Hybrid;
import hafthold.mechanics.BondedSection;
import hafthold.mechanics.ClearanceFiller;
import hafthold.mechanics.LamePressFit;
import hafthold.mechanics.PinFit;
import java.util.List;
import java.util.Optional;

/**
 * Pins in one scale through the year: gap or squeeze per axis since finish, tension beside the hole, heads against the
 * face.
 *
 * <p>The hole follows the mean free strain over the depth: glued on, the scale holds it back near the tang and not at
 * the face. Near an edge the tension grows as in the ring that would fit there.
 *
 * @param made motion of each part of the scale since finish
 * @param warmer temperature above that at finish, hour by hour, K
 * @param stiffer factor on the stiffness that contacts are solved for
 */
record PinRun(
        BondedEngine.Setup setup,
        Doubt doubt,
        List<PartMotion> made,
        List<Hybrid.Part> parts,
        double[] warmer,
        double stiffer) {

    private static final double NEARLY = 0.7;

    PinMovement movement(int index, PinSplit split, double[] faceCentre, double[] faceEdge, BondedSection widest) {
        FullTangKnife knife = setup.knife();
        Pin pin = knife.build().pins().get(index);
        PinFit fit = fit(knife, index);
        double hardDiameter = pin.hole().metres() - fit.openClearanceMetres();
        double nearEdge = nearEdge(knife, pin);
        double[] along = new double[warmer.length];
        double[] across = new double[warmer.length];
        Swing alongSwing = null;
        Swing acrossSwing = null;
        double[] use = new double[warmer.length];
        for (int p = 0; p < made.size(); p++) {
            PartMotion part = made.get(p);
            Optional<Double> strength =
                    PinSplit.strength(parts.get(p).material(), parts.get(p).cut(), doubt);
            for (int hour = 0; hour < warmer.length; hour++) {
                double wetter = part.moistureChange(hour);
                along[hour] = fit.gapMetres(part.length().strain(wetter, warmer[hour]), warmer[hour]);
                across[hour] = fit.gapMetres(part.width().strain(wetter, warmer[hour]), warmer[hour]);
            }
            if (strength.isPresent()) {
                addUse(
                        use,
                        split,
                        along,
                        across,
                        nearEdge * stiffer * doubt.lastingShare() / strength.get() / hardDiameter);
            }
            alongSwing = p == 0 ? Swing.of(along) : alongSwing.with(Swing.of(along));
            acrossSwing = p == 0 ? Swing.of(across) : acrossSwing.with(Swing.of(across));
        }
        return new PinMovement(
                alongSwing,
                acrossSwing,
                heads(pin, fit, faceCentre, faceEdge, widest),
                fit.filler() == ClearanceFiller.SOFT ? fit.openClearanceMetres() : 0,
                use);
    }

    /** A pin in its hole. */
    static PinFit fit(FullTangKnife knife, int index) {
        Pin pin = knife.build().pins().get(index);
        return new PinFit(
                pin.diameter().metres(),
                pin.hole().metres() - pin.diameter().metres(),
                filler(pin.fill()),
                SectionPlan.expansion(knife.pinMetals().get(index)));
    }

    /**
     * Tension over strength hour by hour. Contacts are solved for the hours that are nearly the tightest; when the hole
     * is looser the direction of the tightest hour stands in, so that a year needs few of them.
     */
    private static void addUse(double[] use, PinSplit split, double[] along, double[] across, double factor) {
        Swing alongSwing = Swing.of(along);
        Swing acrossSwing = Swing.of(across);
        double tightest = Math.max(alongSwing.below(), acrossSwing.below());
        if (tightest == 0) {
            return;
        }
        int worst = acrossSwing.below() >= alongSwing.below() ? acrossSwing.leastHour() : alongSwing.leastHour();
        double perSqueeze = split.tensionPascals(-along[worst], -across[worst]) / tightest;
        for (int hour = 0; hour < use.length; hour++) {
            double squeeze = Math.max(-along[hour], -across[hour]);
            if (squeeze > 0) {
                double tension = squeeze >= NEARLY * tightest
                        ? split.tensionPascals(-along[hour], -across[hour])
                        : squeeze * perSqueeze;
                use[hour] = Math.max(use[hour], factor * tension);
            }
        }
    }

    private Swing heads(Pin pin, PinFit fit, double[] faceCentre, double[] faceEdge, BondedSection widest) {
        return pin.kind() == Pin.Kind.HIDDEN
                ? new Swing(0, 0, 0, 0)
                : Swing.of(heads(pin, fit, faceCentre, faceEdge, widest, warmer));
    }

    /** Head above the face at every sample, m. */
    static double[] heads(
            Pin pin, PinFit fit, double[] faceCentre, double[] faceEdge, BondedSection widest, double[] warmer) {
        double outwards = Math.min(1, Math.abs(pin.up().metres()) / widest.halfSizeMetres());
        double edgeShare = outwards * outwards;
        double halfLength = widest.layup().tang().thicknessMetres() / 2
                + widest.layup().glue().thicknessMetres()
                        * (1 + widest.layup().liners().size())
                + widest.layup().liners().stream()
                        .mapToDouble(liner -> liner.thicknessMetres())
                        .sum()
                + widest.layup().scale().thicknessMetres();
        double[] head = new double[warmer.length];
        for (int hour = 0; hour < head.length; hour++) {
            double face = (1 - edgeShare) * faceCentre[hour] + edgeShare * faceEdge[hour];
            head[hour] = fit.headProudMetres(halfLength, face, warmer[hour]);
        }
        return head;
    }

    private static double nearEdge(FullTangKnife knife, Pin pin) {
        double bore = pin.hole().metres() / 2;
        double distance = edgeDistance(knife, pin);
        if (distance <= bore * 1.01) {
            return 100;
        }
        return new LamePressFit(Double.POSITIVE_INFINITY, 0, 1, 0, bore, distance).hoopOverPressure();
    }

    /** From the middle of a pin to the nearest edge or end of the scale, m. */
    static double edgeDistance(FullTangKnife knife, Pin pin) {
        double length = knife.build().scales().length().metres();
        double side = knife.build().scales().widthAt(pin.along()).metres() / 2
                - Math.abs(pin.up().metres());
        return Math.min(
                side, Math.min(pin.along().metres(), length - pin.along().metres()));
    }

    private static ClearanceFiller filler(Pin.Fill fill) {
        return switch (fill) {
            case OPEN -> ClearanceFiller.NONE;
            case FLEXIBLE -> ClearanceFiller.SOFT;
            case HARD_EPOXY -> ClearanceFiller.HARD;
        };
    }
}
