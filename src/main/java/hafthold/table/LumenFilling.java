package hafthold.table;

import hafthold.material.HalpinTsaiFilling;
import hafthold.quantity.Band;
import hafthold.source.Evidence;
import hafthold.source.Figure;
import java.util.Map;
import java.util.Optional;

/**
 * Resin in the lumens of one wood: how much it weighs and how far it props the walls.
 *
 * <p>The table states which share of the lumens holds resin, since a light wood takes up more for its weight than a dense
 * one. Where it states a weight gain instead, as a shop would weigh it, the share follows from that.
 *
 * @param law the wood, walls and lumens
 * @param perGain share of the lumens that a weight gain of 1 fills
 * @param share share of the lumens that holds resin
 * @param modulus Young's modulus of the resin, Pa
 */
record LumenFilling(HalpinTsaiFilling law, double perGain, Figure share, Figure modulus) {

    /** The filling that a treatment leaves in a wood of this dry density; empty where it leaves the lumens alone. */
    static Optional<LumenFilling> of(Map<TreatmentProperty, Figure> treatment, double dryDensity) {
        Figure stated = treatment.get(TreatmentProperty.LUMENS_FILLED);
        Figure density = treatment.get(TreatmentProperty.FILLING_DENSITY);
        Figure modulus = treatment.get(TreatmentProperty.FILLING_MODULUS);
        HalpinTsaiFilling law = HalpinTsaiFilling.across(dryDensity);
        if (stated == null || density == null || modulus == null || law.lumenFraction() == 0) {
            return Optional.empty();
        }
        double perGain = dryDensity / (law.lumenFraction() * density.value());
        Figure share = Optional.ofNullable(treatment.get(TreatmentProperty.WEIGHT_GAIN))
                .map(gain -> gain.withBand(atMostAll(gain.band().times(perGain))))
                .orElse(stated);
        return Optional.of(new LumenFilling(law, perGain, share, modulus));
    }

    private static Band atMostAll(Band share) {
        return new Band(Math.min(1, share.low()), Math.min(1, share.value()), Math.min(1, share.high()));
    }

    /** Mass of the resin over the dry mass of the wood. */
    Figure weightGain() {
        return new Figure(
                share.band().times(1 / perGain),
                share.evidence(),
                share.sourceKey(),
                "of the lumens filled and the wood's density; " + share.locator());
    }

    /** Young's modulus across the grain, from that of the plain wood. */
    Figure stiffer(Figure plain) {
        return stiffer(plain, law, modulus.band());
    }

    /** Shear modulus, from that of the plain wood. */
    Figure stifferInShear(Figure plain) {
        return stiffer(plain, law.inShear(), modulus.band().times(HalpinTsaiFilling.shear(1)));
    }

    /** The ends of the band where one of the three, plain wood, share and resin, is at its end and the others are not. */
    private Figure stiffer(Figure plain, HalpinTsaiFilling by, Band resin) {
        Band wood = plain.band();
        double value = by.filledPascals(wood.value(), share.value() * resin.value());
        double low = value
                * together(
                        by.filledPascals(wood.low(), share.value() * resin.value()) / value,
                        by.filledPascals(wood.value(), share.band().low() * resin.value()) / value,
                        by.filledPascals(wood.value(), share.value() * resin.low()) / value);
        double high = value
                / together(
                        value / by.filledPascals(wood.high(), share.value() * resin.value()),
                        value / by.filledPascals(wood.value(), share.band().high() * resin.value()),
                        value / by.filledPascals(wood.value(), share.value() * resin.high()));
        return new Figure(
                new Band(low, value, high),
                plain.evidence()
                        .weaker(share.evidence())
                        .weaker(modulus.evidence())
                        .weaker(Evidence.ESTIMATED),
                plain.sourceKey(),
                "filled by the law of Halpin and Tsai (halpin-kardos-1976; lumens filled " + share.sourceKey()
                        + ", resin " + modulus.sourceKey() + ")"
                        + (plain.locator().isEmpty() ? "" : "; " + plain.locator()));
    }

    /** Factors of at most 1 that vary on their own, as one: roots of the sums of squares of their logarithms. */
    private static double together(double... factors) {
        double squares = 0;
        for (double factor : factors) {
            squares += Math.log(factor) * Math.log(factor);
        }
        return Math.exp(-Math.sqrt(squares));
    }
}
