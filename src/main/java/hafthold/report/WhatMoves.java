package hafthold.report;

import hafthold.decide.Comparison;
import hafthold.decide.Comparison.Ranked;
import hafthold.material.Cut;
import hafthold.quantity.Band;
import hafthold.simulate.HandleYear;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** Plain sentences on what moves in a comparison, each with its numbers. */
final class WhatMoves {
    private static final Wording WORDS = Wording.english();

    private WhatMoves() {}

    static List<String> sentences(Comparison comparison) {
        List<String> sentences = new ArrayList<>(List.of(WORDS.say("bench.moves.from")));
        cuts(comparison).ifPresent(sentences::add);
        glue(comparison).ifPresent(sentences::add);
        return sentences;
    }

    /** Flat against quarter, of the first material that is there in both cuts. */
    private static Optional<String> cuts(Comparison comparison) {
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
                                .map(head -> WORDS.say(
                                        "bench.moves.cut",
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

    private static Optional<String> glue(Comparison comparison) {
        return comparison.ranked().stream()
                .map(Ranked::year)
                .filter(year -> EdgeStep.isBonded(year) && !EdgeStep.worst(year).isFlush())
                .max(Comparator.comparingDouble(
                        year -> EdgeStep.worst(year).size().value()))
                .map(year -> WORDS.say(
                        "bench.moves.glue",
                        "material",
                        AnswerWords.plainNameOf(year),
                        "share",
                        tenths(EdgeStep.worst(year).size().value()
                                / year.edge().free().larger().value())));
    }

    private static String tenths(double number) {
        return String.format(Locale.ROOT, "%.1f", number);
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
