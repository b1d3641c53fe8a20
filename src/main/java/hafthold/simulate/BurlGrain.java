package hafthold.simulate;

import hafthold.material.Axis;
import hafthold.material.Cut;
import hafthold.material.Cut.Shares;
import hafthold.material.Material;
import hafthold.material.Swelling;
import hafthold.mechanics.RosenHashinAggregate;
import hafthold.quantity.Band;
import hafthold.source.Evidence;
import hafthold.source.Figure;
import hafthold.source.Finding;
import hafthold.source.Message;
import java.util.Map;
import java.util.Optional;

/**
 * Shares of the principal strains of a wood in a burl of it, the same in every direction of the handle.
 *
 * <p>Taken are the shares of grain embedded in grain; at the low end every grain is stretched alike, at the high end every
 * grain is free and half as much of it lies along as in an even mixture, since a scale is a small sample of a burl
 * (assumed).
 */
public final class BurlGrain {
    /** How the grain of one burl lies and how it holds itself back is known for none. */
    static final Figure LIE = new Figure(
            Band.exact(0),
            Evidence.ESTIMATED,
            "rosen-hashin-1970",
            "grain embedded in grain, held or free at the ends");

    /** Figures stated for any direction leave nothing to hold back. */
    private static final double ALIKE = 1e-6;

    private static final double ALONG_IN_A_POOR_SAMPLE = 1 / 6.0;
    private static final Shares POOR_SAMPLE =
            new Shares(ALONG_IN_A_POOR_SAMPLE, (1 - ALONG_IN_A_POOR_SAMPLE) / 2, (1 - ALONG_IN_A_POOR_SAMPLE) / 2);

    private final Shares value;
    private final Shares held;

    /** A burl of a wood. */
    BurlGrain(Material material) {
        RosenHashinAggregate grain = new RosenHashinAggregate(ScaleElasticity.grain(material, Doubt.NONE));
        value = grain.embedded();
        held = grain.held();
    }

    /**
     * Shares of the strains along, across and through.
     *
     * @param lean -1 for the low end of the movement, 0 for the value, 1 for the high end; on a straight line between
     */
    Shares shares(double lean) {
        return lean < 0 ? between(value, held, -lean) : between(value, POOR_SAMPLE, lean);
    }

    /** How far a burl moves against its grain, were each bit of it free; empty for straight grain and what takes up no water. */
    public static Optional<Finding> finding(Material material, Cut cut) {
        if (cut != Cut.BURL || material.water().isEmpty()) {
            return Optional.empty();
        }
        Swelling swelling = material.water().get().swelling();
        double free = moves(new Shares(1 / 3.0, 1 / 3.0, 1 / 3.0), swelling);
        BurlGrain grain = new BurlGrain(material);
        double value = moves(grain.shares(0), swelling) / free;
        if (Math.abs(value - 1) < ALIKE) {
            return Optional.empty();
        }
        double held = moves(grain.shares(-1), swelling) / free;
        double loose = moves(grain.shares(1), swelling) / free;
        Band share = new Band(Math.min(held, value), value, Math.max(loose, value));
        return Optional.of(PartingFindings.estimate(
                material.id(),
                Message.of(
                        "note.burl-grain",
                        Map.of(
                                "share", Message.number(share, 2),
                                "source", Message.verbatim(LIE.sourceKey())))));
    }

    /** Tension in grain across a pull over the mean tension of the burl. */
    static double tensionAcross(Material material) {
        return new RosenHashinAggregate(ScaleElasticity.grain(material, Doubt.NONE)).tensionAcross();
    }

    private static double moves(Shares shares, Swelling swelling) {
        return shares.mean(
                swelling.perMoisture(Axis.ALONG, 0),
                swelling.perMoisture(Axis.ACROSS, 0),
                swelling.perMoisture(Axis.THROUGH, 0));
    }

    private static Shares between(Shares one, Shares other, double share) {
        return new Shares(
                one.along() + share * (other.along() - one.along()),
                one.across() + share * (other.across() - one.across()),
                one.through() + share * (other.through() - one.through()));
    }
}
