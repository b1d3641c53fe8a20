package hafthold.report;

import hafthold.decide.Comparison;
import hafthold.decide.Comparison.Ranked;
import hafthold.material.Cut;
import hafthold.quantity.Band;
import hafthold.simulate.HandleYear;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Plain sentences on what moves in a comparison, each with its numbers.
 *
 * @param style language and units
 */
record WhatMoves(BenchStyle style) {
    List<String> sentences(Comparison comparison) {
        List<String> sentences = new ArrayList<>(List.of(style.say("moves.from")));
        cuts(comparison).ifPresent(sentences::add);
        glue(comparison).ifPresent(sentences::add);
        return sentences;
    }

    /** Flat against quarter, of the first material that is there in both cuts. */
    private Optional<String> cuts(Comparison comparison) {
        for (Ranked answer : comparison.ranked()) {
            HandleYear flat = answer.year();
            Optional<HandleYear> quarter = comparison.ranked().stream()
                    .map(Ranked::year)
                    .filter(year -> year.scale().cut() == Cut.QUARTER
                            && year.scale().id().equals(flat.scale().id()))
                    .findFirst();
            if (flat.scale().cut() == Cut.FLAT && quarter.isPresent()) {
                return ratio(quarter.get(), flat, year -> EdgeStep.worst(year).size())
                        .flatMap(edge -> ratio(quarter.get(), flat, WhatMoves::head)
                                .map(head -> style.say(
                                        "moves.cut",
                                        "material",
                                        flat.scale().name(),
                                        "edge",
                                        tenths(edge),
                                        "head",
                                        tenths(head))));
            }
        }
        return Optional.empty();
    }

    private Optional<String> glue(Comparison comparison) {
        return comparison.ranked().stream()
                .map(Ranked::year)
                .filter(year -> EdgeStep.isBonded(year) && !EdgeStep.worst(year).isFlush())
                .max(Comparator.comparingDouble(
                        year -> EdgeStep.worst(year).size().value()))
                .map(year -> style.say(
                        "moves.glue",
                        "material",
                        new AnswerWords(style).plainNameOf(year),
                        "share",
                        tenths(EdgeStep.worst(year).size().value()
                                / year.edge().free().larger().value())));
    }

    private String tenths(double number) {
        return style.fixed(number, 1);
    }

    private static Band head(HandleYear year) {
        return year.pins().headProud().value() >= year.pins().headSunk().value()
                ? year.pins().headProud()
                : year.pins().headSunk();
    }

    private static Optional<Double> ratio(HandleYear a, HandleYear b, Function<HandleYear, Band> of) {
        double divisor = of.apply(b).value();
        return divisor > 0 ? Optional.of(of.apply(a).value() / divisor) : Optional.empty();
    }
}
