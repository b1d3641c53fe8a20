package hafthold.table;

import hafthold.material.Axis;
import hafthold.material.Cut;
import hafthold.material.GuggenheimAndersonDeBoerIsotherm;
import hafthold.material.HailwoodHorrobinIsotherm;
import hafthold.material.LinearSwelling;
import hafthold.material.Material;
import hafthold.material.MoistureDiffusivity;
import hafthold.material.PowerIsotherm;
import hafthold.material.Property;
import hafthold.material.PropertySheet;
import hafthold.material.ScaledIsotherm;
import hafthold.material.ShrinkageSwelling;
import hafthold.material.SorptionIsotherm;
import hafthold.material.Swelling;
import hafthold.material.WaterUptake;
import hafthold.quantity.Band;
import hafthold.source.Evidence;
import hafthold.source.Figure;
import hafthold.source.Finding;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Builds one material's models from its resolved sheet. */
final class MaterialAssembly {
    private static final SorptionIsotherm WOOD = new HailwoodHorrobinIsotherm();
    private static final List<Axis> AXES = List.of(Axis.ALONG, Axis.ACROSS, Axis.THROUGH);

    /** Wood takes up water alike in both directions across the grain; in a sheet both in-plane directions are alike. */
    private static final Figure EVEN =
            new Figure(Band.exact(1), Evidence.ASSUMED, "workshop-judgement", "alike across the grain");

    private final MaterialRow row;
    private final String sorption;
    private final String swelling;
    private final PropertySheet sheet;
    private final List<Finding> findings;
    private Evidence evidence = Evidence.MEASURED;

    /**
     * Takes a material's row and what its chain of classes has filled in.
     *
     * @param sorption isotherm word after inheritance
     * @param swelling swelling word after inheritance
     */
    MaterialAssembly(MaterialRow row, String sorption, String swelling, PropertySheet sheet, List<Finding> findings) {
        this.row = row;
        this.sorption = sorption;
        this.swelling = swelling;
        this.sheet = sheet;
        this.findings = findings;
    }

    Material build() {
        Map<Axis, Figure> expansion = byAxis(Property.THERMAL_EXPANSION);
        Optional<WaterUptake> water = sorption.equals("none") ? Optional.empty() : Optional.of(water());
        if (water.isEmpty()) {
            expansion.values().forEach(this::restsOn);
        }
        return new Material(
                row.id(), row.name(), row.family(), evidence, row.usualCut(), sheet, water, expansion, findings);
    }

    private WaterUptake water() {
        Figure factor = sheet.figure(Property.SORPTION_FACTOR)
                .orElse(new Figure(Band.exact(1), Evidence.ASSUMED, "workshop-judgement", "no factor stated"));
        Figure reference = needed(Property.DIFFUSIVITY, Axis.THROUGH);
        MoistureDiffusivity diffusivity = new MoistureDiffusivity(
                reference.value(),
                needed(Property.DIFFUSIVITY_MOISTURE_EXPONENT, Axis.ANY).value(),
                needed(Property.DIFFUSIVITY_ACTIVATION, Axis.ANY).value(),
                needed(Property.DIFFUSIVITY_REFERENCE_TEMPERATURE, Axis.ANY).value());
        Figure alongRatio = needed(Property.DIFFUSIVITY_ALONG_RATIO, Axis.ANY);
        return new WaterUptake(
                needed(Property.DRY_DENSITY, Axis.ANY),
                isotherm(factor),
                factor.withBand(relative(isothermBand(factor))),
                diffusivity,
                reference,
                alongRatio,
                row.usualCut() == Cut.NONE ? alongRatio : EVEN,
                swelling());
    }

    private SorptionIsotherm isotherm(Figure factor) {
        return switch (sorption) {
            case "hailwood-horrobin" -> factor.value() == 1 ? WOOD : new ScaledIsotherm(WOOD, factor.value());
            case "power" ->
                new PowerIsotherm(
                        needed(Property.MOISTURE_SATURATION, Axis.ANY).value(),
                        needed(Property.SORPTION_EXPONENT, Axis.ANY).value());
            case "gab" ->
                new GuggenheimAndersonDeBoerIsotherm(
                        needed(Property.GAB_MONOLAYER, Axis.ANY).value(),
                        needed(Property.GAB_C, Axis.ANY).value(),
                        needed(Property.GAB_K, Axis.ANY).value());
            default -> throw incomplete("a sorption model (hailwood-horrobin, power, gab or none)");
        };
    }

    /** The figure whose range stands for that of the whole isotherm. */
    private Band isothermBand(Figure factor) {
        Figure leading = switch (sorption) {
            case "power" -> needed(Property.MOISTURE_SATURATION, Axis.ANY);
            case "gab" -> needed(Property.GAB_MONOLAYER, Axis.ANY);
            default -> factor;
        };
        restsOn(leading);
        return leading.band();
    }

    private Swelling swelling() {
        return switch (swelling) {
            case "shrinkage" -> {
                Map<Axis, Figure> shrinkage = byAxis(Property.SHRINKAGE);
                restsOn(shrinkage.get(Axis.ACROSS));
                restsOn(shrinkage.get(Axis.THROUGH));
                yield new ShrinkageSwelling(
                        shrinkage, needed(Property.FIBRE_SATURATION, Axis.ANY).value());
            }
            case "linear" -> {
                Map<Axis, Figure> coefficient = byAxis(Property.SWELLING_COEFFICIENT);
                restsOn(coefficient.get(Axis.ACROSS));
                restsOn(coefficient.get(Axis.THROUGH));
                yield new LinearSwelling(coefficient);
            }
            case "none" -> {
                Figure still = new Figure(Band.exact(0), Evidence.ASSUMED, "workshop-judgement", "no swelling stated");
                yield new LinearSwelling(Map.of(Axis.ALONG, still, Axis.ACROSS, still, Axis.THROUGH, still));
            }
            default -> throw incomplete("a swelling model (shrinkage, linear or none)");
        };
    }

    private Map<Axis, Figure> byAxis(Property property) {
        Map<Axis, Figure> figures = new EnumMap<>(Axis.class);
        AXES.forEach(axis -> figures.put(axis, needed(property, axis)));
        return figures;
    }

    private Figure needed(Property property, Axis axis) {
        return sheet.figure(property, axis)
                .or(() -> property == Property.DIFFUSIVITY ? sheet.figure(property, Axis.ACROSS) : Optional.empty())
                .orElseThrow(() -> incomplete("a row " + property.word() + ", axis " + axis.word()));
    }

    private InvalidTableException incomplete(String missing) {
        return new InvalidTableException(
                "properties.csv", "material " + row.id() + " cannot be computed; expected " + missing);
    }

    private void restsOn(Figure figure) {
        evidence = evidence.weaker(figure.evidence());
    }

    private static Band relative(Band band) {
        return new Band(band.low() / band.value(), 1, band.high() / band.value());
    }
}
