package hafthold.report;

import hafthold.decide.Verdict;
import hafthold.quantity.Band;
import hafthold.report.AnswerFigures.BandKey;
import hafthold.report.AnswerFigures.NumberKey;
import hafthold.simulate.HandleYear;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The columns that every flat table of answers has: what it is, what moves, what came of it. */
final class CsvFigures {
    private CsvFigures() {}

    /** Headings of {@link #cells}. */
    static List<String> columns() {
        List<String> columns = new ArrayList<>(List.of("rank", "material", "name", "family", "cut"));
        AnswerFigures.MOISTURE.forEach(key -> columns.add(key.key()));
        for (BandKey key : AnswerFigures.MOVEMENTS) {
            columns.addAll(List.of(key.key("low"), key.key("value"), key.key("high")));
        }
        return columns;
    }

    /** A material with its movements. */
    static List<String> cells(int rank, HandleYear year) {
        List<String> cells = new ArrayList<>(List.of(
                Integer.toString(rank),
                year.scale().id(),
                year.scale().name(),
                year.scale().family().word(),
                year.scale().cut().word()));
        for (NumberKey key : AnswerFigures.MOISTURE) {
            cells.add(number(key.of().applyAsDouble(year)));
        }
        for (BandKey key : AnswerFigures.MOVEMENTS) {
            cells.addAll(band(key.of().apply(year)));
        }
        return cells;
    }

    /** Headings of {@link #verdict}. */
    static List<String> verdictColumns() {
        return List.of("worst_month", "verdict", "evidence", "bonded", "probability");
    }

    /** What came of it, and how often that holds. */
    static List<String> verdict(HandleYear year, Verdict verdict, OptionalDouble holds) {
        return List.of(
                Integer.toString(year.worstMonth()),
                verdict.word(),
                year.grounds().evidence().grade(),
                Boolean.toString(EdgeStep.isBonded(year)),
                holds.isPresent() ? number(holds.getAsDouble()) : "");
    }

    /** Low, value and high; empty cells where it is not known. */
    static List<String> band(Optional<Band> band) {
        return band.map(known -> List.of(number(known.low()), number(known.value()), number(known.high())))
                .orElse(List.of("", "", ""));
    }

    /** A number as Java prints it. */
    static String number(double number) {
        return Double.toString(AnswerFigures.stable(number));
    }
}
