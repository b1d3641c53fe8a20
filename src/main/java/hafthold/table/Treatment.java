package hafthold.table;

import hafthold.material.Family;
import hafthold.material.Material;
import hafthold.material.ScaledIsotherm;
import hafthold.material.WaterUptake;
import hafthold.quantity.Band;
import hafthold.source.Evidence;
import hafthold.source.Figure;
import hafthold.source.Finding;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a resin or other treatment does to any wood.
 *
 * <p>Anti-swelling efficiency is taken as water that the cell wall no longer takes up: moisture per dry wood is
 * multiplied by 1 - ASE, and the wood moves with its water as before. The early uptake rate of a slab is proportional
 * to (water held) x sqrt(D) (Crank 1975, equation 4.20), so D is multiplied by (early ratio / (1 - ASE))^2.
 *
 * @param id kebab-case id
 * @param name name for people
 * @param antiSwelling anti-swelling efficiency, fraction, below 1
 * @param earlyUptake early rate of water uptake over that of the plain wood, positive
 * @param figures all that the table states of it, by property, SI
 */
public record Treatment(String id, String name, Figure antiSwelling, Figure earlyUptake, Map<String, Figure> figures) {

    /** Keeps its own copy, in order. */
    public Treatment {
        figures = Collections.unmodifiableMap(new LinkedHashMap<>(figures));
    }

    /** The treated wood; moisture contents stay per dry mass of the wood alone. */
    public Material applyTo(Material wood, String treatedName) {
        WaterUptake plain = wood.water()
                .orElseThrow(() -> new IllegalArgumentException(
                        wood.id() + " takes up no water, so treatment " + id + " has nothing to work on"));
        double kept = 1 - antiSwelling.value();
        double faster = square(earlyUptake.value() / kept);
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
        WaterUptake treated = new WaterUptake(
                plain.dryDensity(),
                new ScaledIsotherm(plain.isotherm(), kept),
                new Figure(sorption, antiSwelling.evidence(), antiSwelling.sourceKey(), antiSwelling.locator()),
                plain.diffusivity().times(faster),
                new Figure(diffusivity, Evidence.ESTIMATED, earlyUptake.sourceKey(), earlyUptake.locator()),
                plain.alongRatio(),
                plain.acrossRatio(),
                plain.swelling());
        List<Finding> findings = new ArrayList<>(wood.findings());
        findings.add(new Finding(
                Finding.Kind.ESTIMATE,
                wood.id() + "+" + id,
                "The trade treats it as inert (common practice, no source); published tests say it takes up water more"
                        + " slowly and moves somewhat less, so it is computed that way with a wide band."));
        return new Material(
                wood.id() + "+" + id,
                treatedName,
                Family.TREATED_WOOD,
                wood.evidence().weaker(Evidence.ESTIMATED),
                wood.usualCut(),
                wood.sheet(),
                java.util.Optional.of(treated),
                wood.thermalExpansionPerKelvin(),
                findings);
    }

    private static double square(double x) {
        return x * x;
    }
}
