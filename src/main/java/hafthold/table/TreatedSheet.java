package hafthold.table;

import hafthold.material.Axis;
import hafthold.material.Property;
import hafthold.material.PropertySheet;
import hafthold.material.PropertySheet.Entry;
import hafthold.quantity.Band;
import hafthold.source.Evidence;
import hafthold.source.Figure;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * A wood's sheet with the density, stiffness and strength that a treatment leaves it.
 *
 * @param treatment what was done to it
 * @param wood sheet of the plain wood
 * @param dryDensity dry density of the plain wood, kg/m3
 */
record TreatedSheet(Treatment treatment, PropertySheet wood, Figure dryDensity) {

    /** The sheet of the treated wood. */
    PropertySheet sheet() {
        Map<Entry, Figure> treated = new LinkedHashMap<>();
        wood.figures().forEach((entry, figure) -> treated.put(entry, treated(entry, figure)));
        return new PropertySheet(treated);
    }

    /** Mass of the treatment over that of the wood; as stated, or as what fills the lumens weighs. */
    Optional<Figure> weightGain() {
        return stated(TreatmentProperty.WEIGHT_GAIN).or(() -> filling().map(LumenFilling::weightGain));
    }

    /** A density with the treatment in it. */
    static Figure heavier(Figure density, Optional<Figure> weightGain, String treatment) {
        return weightGain
                .map(gain -> times(density, gain, 1, "weight gain of " + treatment))
                .orElse(density);
    }

    private Figure treated(Entry entry, Figure figure) {
        return switch (entry.property()) {
            case DRY_DENSITY -> heavier(figure, weightGain(), treatment.id());
            case YOUNGS_MODULUS ->
                entry.axis() == Axis.ALONG || entry.axis() == Axis.ANY ? along(figure) : across(figure);
            case SHEAR_MODULUS ->
                filling().map(filling -> filling.stifferInShear(figure)).orElseGet(() -> stiffer(figure));
            case POISSON_RATIO ->
                switch (entry.axis()) {
                    case ALONG_ACROSS -> contracting(figure, Axis.ALONG, Axis.ACROSS);
                    case ALONG_THROUGH -> contracting(figure, Axis.ALONG, Axis.THROUGH);
                    // Wood tables state nu_RT: stress through, contraction across.
                    case ACROSS_THROUGH -> contracting(figure, Axis.THROUGH, Axis.ACROSS);
                    default -> figure;
                };
            case TENSION_STRENGTH -> entry.axis() == Axis.ALONG ? figure : stronger(figure);
            default -> figure;
        };
    }

    private Figure along(Figure modulus) {
        return stated(TreatmentProperty.STIFFNESS_RATIO_ALONG)
                .map(ratio -> times(modulus, ratio, 0, "stiffness ratio along of " + treatment.id()))
                .orElse(modulus);
    }

    private Figure across(Figure modulus) {
        return filling().map(filling -> filling.stiffer(modulus)).orElseGet(() -> stiffer(modulus));
    }

    private Figure stiffer(Figure modulus) {
        return stated(TreatmentProperty.STIFFNESS_RATIO_ACROSS)
                .map(ratio -> times(modulus, ratio, 0, "stiffness ratio across of " + treatment.id()))
                .orElse(modulus);
    }

    /** The product of the two ratios of a plane stays, which leaves a body that holds together one that does. */
    private Figure contracting(Figure poisson, Axis stressed, Axis other) {
        return poisson.withBand(poisson.band().times(Math.sqrt(stiffer(stressed) / stiffer(other))));
    }

    private double stiffer(Axis axis) {
        return wood.figure(Property.YOUNGS_MODULUS, axis)
                .map(plain -> (axis == Axis.ALONG ? along(plain) : across(plain)).value() / plain.value())
                .orElse(1.0);
    }

    /** One strength holds for both directions across the grain, so that the one that gains less speaks for both. */
    private Figure stronger(Figure strength) {
        OptionalDouble ratio = Stream.of(Axis.ACROSS, Axis.THROUGH)
                .flatMap(axis -> wood.figure(Property.YOUNGS_MODULUS, axis).stream())
                .mapToDouble(modulus -> across(modulus).value() / modulus.value())
                .min();
        Optional<Figure> share = stated(TreatmentProperty.STRENGTH_SHARE);
        if (share.isEmpty() || ratio.isEmpty()) {
            return strength;
        }
        Band by = share.get().band();
        double gain = ratio.getAsDouble() - 1;
        double none = 1 + by.low() * gain;
        double all = 1 + by.high() * gain;
        Band stronger = new Band(Math.min(none, all), 1 + by.value() * gain, Math.max(none, all));
        return times(strength, share.get().withBand(stronger), 0, "strength share of " + treatment.id());
    }

    private Optional<Figure> stated(TreatmentProperty property) {
        return Optional.ofNullable(treatment.figures().get(property));
    }

    private Optional<LumenFilling> filling() {
        return stated(TreatmentProperty.STIFFNESS_RATIO_ACROSS).isPresent()
                ? Optional.empty()
                : LumenFilling.of(treatment.figures(), dryDensity.value());
    }

    private static Figure times(Figure plain, Figure factor, double plus, String name) {
        Band by = factor.band();
        Band band = plain.band();
        return new Figure(
                new Band(
                        band.low() * (plus + by.low()),
                        band.value() * (plus + by.value()),
                        band.high() * (plus + by.high())),
                plain.evidence().weaker(factor.evidence()).weaker(Evidence.ESTIMATED),
                plain.sourceKey(),
                "with the " + name + " (" + factor.sourceKey() + ")"
                        + (plain.locator().isEmpty() ? "" : "; " + plain.locator()));
    }
}
