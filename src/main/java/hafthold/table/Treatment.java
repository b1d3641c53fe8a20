package hafthold.table;

import hafthold.material.Family;
import hafthold.material.Material;
import hafthold.material.Property;
import hafthold.material.PropertySheet;
import hafthold.material.PropertySheet.Entry;
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
 * @param id kebab-case id
 * @param name name for people
 * @param antiSwelling anti-swelling efficiency, fraction, below 1
 * @param earlyUptake early rate of water uptake over that of the plain wood, positive
 * @param figures all that the table states of it, by property, SI
 */
public record Treatment(String id, String name, Figure antiSwelling, Figure earlyUptake, Map<String, Figure> figures) {
    static final String WEIGHT_GAIN = "weight_gain";
    static final String STIFFNESS_RATIO = "stiffness_ratio";

    /** Keeps its own copy, in order. */
    public Treatment {
        figures = Collections.unmodifiableMap(new LinkedHashMap<>(figures));
    }

    /** The treated wood; moisture contents are per dry mass of the treated wood, as a shop would weigh them. */
    public Material applyTo(Material wood, String treatedName) {
        WaterUptake plain = wood.water()
                .orElseThrow(() -> new IllegalArgumentException(
                        wood.id() + " takes up no water, so treatment " + id + " has nothing to work on"));
        List<Finding> findings = new ArrayList<>(wood.findings());
        findings.add(new Finding(Finding.Kind.ESTIMATE, wood.id() + "+" + id, Message.of("note.treated-wood")));
        return new Material(
                wood.id() + "+" + id,
                treatedName,
                Family.TREATED_WOOD,
                wood.evidence().weaker(Evidence.ESTIMATED),
                wood.usualCut(),
                sheet(wood.sheet()),
                Optional.of(water(plain)),
                wood.thermalExpansionPerKelvin(),
                findings);
    }

    /**
     * Uptake of water, first per dry mass of the wood, then turned to dry mass with the treatment in it: with g = 1 +
     * weight gain moisture contents are divided by g, density, movement and the exponent of diffusivity per moisture
     * content multiplied by it, which leaves kilograms of water and millimetres of movement as they are.
     */
    private WaterUptake water(WaterUptake plain) {
        double kept = 1 - antiSwelling.value();
        double faster = square(earlyUptake.value() / kept);
        double heavier = 1 + weightGain().map(Figure::value).orElse(0.0);
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
                heavier(plain.dryDensity()),
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

    /** The wood's sheet with the density and the stiffness that the treatment leaves it. */
    private PropertySheet sheet(PropertySheet wood) {
        Map<Entry, Figure> treated = new LinkedHashMap<>();
        wood.figures().forEach((entry, figure) -> treated.put(entry, treated(entry.property(), figure)));
        return new PropertySheet(treated);
    }

    private Figure treated(Property property, Figure figure) {
        return switch (property) {
            case DRY_DENSITY -> heavier(figure);
            case YOUNGS_MODULUS, SHEAR_MODULUS -> stiffer(figure);
            default -> figure;
        };
    }

    private Figure heavier(Figure density) {
        return weightGain().map(gain -> times(density, gain, "weight gain", 1)).orElse(density);
    }

    /** Every modulus by the one ratio that is stated, which was measured in bending along the grain. */
    private Figure stiffer(Figure modulus) {
        return Optional.ofNullable(figures.get(STIFFNESS_RATIO))
                .map(ratio -> times(modulus, ratio, "stiffness ratio", 0))
                .orElse(modulus);
    }

    private Optional<Figure> weightGain() {
        return Optional.ofNullable(figures.get(WEIGHT_GAIN));
    }

    private Figure times(Figure plain, Figure factor, String name, double plus) {
        Band by = factor.band();
        Band band = plain.band();
        return new Figure(
                new Band(
                        band.low() * (plus + by.low()),
                        band.value() * (plus + by.value()),
                        band.high() * (plus + by.high())),
                plain.evidence().weaker(factor.evidence()).weaker(Evidence.ESTIMATED),
                plain.sourceKey(),
                "with the " + name + " of " + id + " (" + factor.sourceKey() + ")"
                        + (plain.locator().isEmpty() ? "" : "; " + plain.locator()));
    }

    private static double square(double x) {
        return x * x;
    }
}
