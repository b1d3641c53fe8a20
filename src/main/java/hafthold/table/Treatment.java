package hafthold.table;

import hafthold.material.Family;
import hafthold.material.Material;
import hafthold.material.ScaledIsotherm;
import hafthold.material.WaterUptake;
import hafthold.quantity.Band;
import hafthold.source.Evidence;
import hafthold.source.Figure;
import hafthold.source.Finding;
import hafthold.source.Message;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a resin or other treatment does to any wood.
 *
 * <p>Anti-swelling efficiency is taken as water that the cell wall no longer takes up: moisture per dry wood is
 * multiplied by 1 - ASE, and the wood moves with its water as before. The early uptake rate of a slab is proportional
 * to (water held) x sqrt(D) (Crank 1975, equation 4.20), so D is multiplied by (early ratio / (1 - ASE))^2.
 *
 * <p>Resin in the lumens stiffens wood far more across the grain than along it, and light wood more than dense wood
 * ({@link LumenFilling}). Elsewhere each direction has the ratio that is stated. Of Poisson's ratios the product of
 * the two of a plane stays. Strength across
 * the grain takes part in the gain of stiffness by the share stated: by all of it where resin holds to the walls as they
 * to each other, by none where it lies loose in them.
 *
 * @param id kebab-case id
 * @param name name for people
 * @param figures all that the table states of it, SI; anti-swelling efficiency and early uptake are always there
 */
public record Treatment(String id, String name, Map<TreatmentProperty, Figure> figures) {

    /** Keeps its own copy, in order. */
    public Treatment {
        figures = Collections.unmodifiableMap(new LinkedHashMap<>(figures));
    }

    /** Anti-swelling efficiency, fraction, below 1. */
    public Figure antiSwelling() {
        return figures.get(TreatmentProperty.ANTI_SWELLING_EFFICIENCY);
    }

    /** Early rate of water uptake over that of the plain wood, positive. */
    public Figure earlyUptake() {
        return figures.get(TreatmentProperty.EARLY_UPTAKE_RATIO);
    }

    /** The same with the weight gain that follows from what it leaves in the lumens of a wood, where none is stated. */
    Treatment weighedIn(Material wood) {
        Map<TreatmentProperty, Figure> all = new LinkedHashMap<>(figures);
        wood.water()
                .flatMap(water -> new TreatedSheet(this, wood.sheet(), water.dryDensity()).weightGain())
                .ifPresent(gain -> all.putIfAbsent(TreatmentProperty.WEIGHT_GAIN, gain));
        return new Treatment(id, name, all);
    }

    /** The treated wood; moisture contents are per dry mass of the treated wood, as a shop would weigh them. */
    public Material applyTo(Material wood, String treatedName) {
        WaterUptake plain = wood.water()
                .orElseThrow(() -> new IllegalArgumentException(
                        wood.id() + " takes up no water, so treatment " + id + " has nothing to work on"));
        TreatedSheet made = new TreatedSheet(this, wood.sheet(), plain.dryDensity());
        List<Finding> findings = new ArrayList<>(wood.findings());
        findings.add(new Finding(Finding.Kind.ESTIMATE, wood.id() + "+" + id, Message.of("note.treated-wood")));
        return new Material(
                wood.id() + "+" + id,
                treatedName,
                Family.TREATED_WOOD,
                wood.evidence().weaker(Evidence.ESTIMATED),
                wood.usualCut(),
                made.sheet(),
                Optional.of(water(plain, made.weightGain())),
                wood.thermalExpansionPerKelvin(),
                findings);
    }

    /**
     * Uptake of water, first per dry mass of the wood, then turned to dry mass with the treatment in it: with g = 1 +
     * weight gain moisture contents are divided by g, density, movement and the exponent of diffusivity per moisture
     * content multiplied by it, which leaves kilograms of water and millimetres of movement as they are.
     */
    private WaterUptake water(WaterUptake plain, Optional<Figure> weightGain) {
        Figure antiSwelling = antiSwelling();
        Figure earlyUptake = earlyUptake();
        double kept = 1 - antiSwelling.value();
        double faster = square(earlyUptake.value() / kept);
        double heavier = 1 + weightGain.map(Figure::value).orElse(0.0);
        Band factor = plain.sorptionFactor().band();
        Band sorption = new Band(
                factor.low() * (1 - antiSwelling.band().high()) / kept,
                factor.value(),
                factor.high() * (1 - antiSwelling.band().low()) / kept);
        Band reference = plain.diffusivityReference().band();
        Band diffusivity = new Band(
                reference.low() * square(earlyUptake.band().low() / kept),
                reference.value() * faster,
                reference.high() * square(earlyUptake.band().high() / kept));
        return new WaterUptake(
                TreatedSheet.heavier(plain.dryDensity(), weightGain, id),
                new ScaledIsotherm(plain.isotherm(), kept / heavier),
                new Figure(sorption, antiSwelling.evidence(), antiSwelling.sourceKey(), antiSwelling.locator()),
                plain.diffusivity().times(faster).perHeavierMass(heavier),
                new Figure(
                        diffusivity,
                        earlyUptake.evidence().weaker(Evidence.ESTIMATED),
                        earlyUptake.sourceKey(),
                        earlyUptake.locator()),
                plain.alongRatio(),
                plain.acrossRatio(),
                plain.swelling().perHeavierMass(heavier));
    }

    private static double square(double x) {
        return x * x;
    }
}
