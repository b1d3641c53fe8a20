package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.knife.Bond;
import hafthold.material.Cut;
import hafthold.material.Hybrid;
import hafthold.material.Property;
import hafthold.source.Figure;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What glue and scale bear through the year over what they can: the worst hour, half of what has lasted a month relaxed,
 * as for a whole knife ({@link SideRun}), in two halves of the depth.
 *
 * @param glue shear and pull of the glue, means over its last 2 mm, over its strength at the temperature of the hour; 0
 *     where the sheet of the glue has no strength
 * @param split tension across the grain in mid-section, or pull at the glued edge, over the strength of the scale; empty
 *     where that is not known
 */
record GluedLoad(double glue, Optional<Double> split) {

    /** Follows a scale through the year, bonded in the state it is sanded in. */
    static GluedLoad of(
            List<Hybrid.Part> parts,
            List<PartMotion> motions,
            GluedSections.Readings sections,
            Bond bond,
            Conditions conditions) {
        return of(parts, motions, sections, bond, conditions.destination().air(), relaxed(motions, conditions));
    }

    /**
     * Likewise, of series that are already relaxed.
     *
     * @param air temperature of the glue, one a sample
     * @param series changes of halves of each part, then warming
     */
    static GluedLoad of(
            List<Hybrid.Part> parts,
            List<PartMotion> motions,
            GluedSections.Readings sections,
            Bond bond,
            AirSeries air,
            double[][] series) {
        Optional<GlueStrength> strength = GlueStrength.of(bond.adhesive(), Doubt.NONE);
        boolean anyWay = parts.stream().anyMatch(part -> PinSplit.splitsAnyWay(part.cut()));
        boolean isCross = parts.stream().anyMatch(part -> part.cut() == Cut.CROSS);
        double glue = 0;
        double tension = 0;
        List<GluedSections.Bearing> bearings = List.of(sections.across(), sections.along());
        for (int s = 0; s < bearings.size(); s++) {
            GluedSections.Bearing bearing = bearings.get(s);
            boolean splits = s == 0 || anyWay;
            double[] shear = year(bearing.shear(), motions, sections, series);
            double[] peel = year(bearing.peel(), motions, sections, series);
            for (int i = 0; i < shear.length; i++) {
                if (strength.isPresent()) {
                    glue = Math.max(glue, strength.get().use(shear[i], peel[i], air.temperatureCelsius(i)));
                }
                if (splits && !isCross) {
                    tension = Math.max(tension, peel[i]);
                }
            }
            if (splits) {
                for (GluedReading middle : bearing.middle()) {
                    tension = Math.max(tension, largest(year(middle, motions, sections, series)));
                }
            }
        }
        double most = tension;
        return new GluedLoad(glue, weakest(parts).map(bears -> most / bears));
    }

    /**
     * The same under a doubt. On steel, which gives way twenty times less than a scale, stress is in proportion to what the
     * scale would move and to its stiffness; a soft glue takes some of the latter away, which is left out.
     *
     * @param share largest step under the doubt over that with everything at its value
     */
    GluedLoad under(Doubt doubt, double share, List<Hybrid.Part> parts, Bond bond) {
        double lasting = doubt.lastingShare() / Doubt.NONE.lastingShare();
        double stiffer = 0;
        double stronger = Double.POSITIVE_INFINITY;
        for (Hybrid.Part part : parts) {
            stiffer += part.share().value() * doubt.stiffnessFactor(part.material());
            stronger = Math.min(stronger, doubt.strengthFactor(part.material()));
        }
        double stress = share * lasting * stiffer;
        double ofGlue = stress / glueShear(bond, doubt) * glueShear(bond, Doubt.NONE);
        double ofScale = stress / stronger;
        return new GluedLoad(glue * ofGlue, split.map(use -> use * ofScale));
    }

    private static double glueShear(Bond bond, Doubt doubt) {
        Optional<Figure> stated = bond.adhesive().sheet().figure(Property.SHEAR_STRENGTH);
        return stated.isPresent() ? doubt.strength(bond.adhesive(), stated.get()) : 1;
    }

    private static Optional<Double> weakest(List<Hybrid.Part> parts) {
        return parts.stream()
                .map(part -> PinSplit.strength(part.material(), part.cut(), Doubt.NONE))
                .flatMap(Optional::stream)
                .min(Double::compare);
    }

    /** Changes since bonding, less what has relaxed of their means over the last month: halves of each part, warming. */
    static double[][] relaxed(List<PartMotion> motions, Conditions conditions) {
        AirSeries air = conditions.destination().air();
        int window = FreeStrains.RELAXATION_DAYS * FreeMovement.samplesADay(air);
        return Stream.of(GluedEdge.changes(motions, conditions.warmer()))
                .map(values -> FreeStrains.relaxed(
                        values,
                        1 - Doubt.NONE.lastingShare(),
                        window,
                        conditions.destination().repeatsFromStart()))
                .toArray(double[][]::new);
    }

    private static double[] year(
            GluedReading reading, List<PartMotion> motions, GluedSections.Readings sections, double[][] series) {
        return GluedEdge.sum(reading.drive(motions, sections.tangPerKelvin(), sections.gluePerKelvin()), series);
    }

    private static double largest(double[] values) {
        double largest = 0;
        for (double value : values) {
            largest = Math.max(largest, value);
        }
        return largest;
    }
}
