package hafthold.report;

import hafthold.decide.Comparison;
import hafthold.decide.Comparison.Ranked;
import hafthold.material.Cut;
import hafthold.quantity.Band;
import hafthold.report.AnswerFigures.BandKey;
import hafthold.report.AnswerFigures.NumberKey;
import hafthold.simulate.HandleYear;
import hafthold.source.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A comparison as markdown: the figures of the JSON, to three digits behind the point. */
public final class ComparisonMarkdown {
    private static final String NONE = "–";

    private ComparisonMarkdown() {}

    /**
     * The whole answer.
     *
     * @param namedMaterial id of the material asked for, which gets a sentence
     */
    public static String of(Comparison comparison, LengthUnits units, Optional<String> namedMaterial) {
        MarkdownText text = new MarkdownText()
                .heading(1, "Handle materials for " + comparison.placeName())
                .points(List.of(
                        "Lives: " + SituationWords.lives(comparison),
                        "Made at: " + SituationWords.made(comparison),
                        "Handle: " + SituationWords.handle(comparison.handle(), units),
                        "Steps: " + SituationWords.steps(comparison)))
                .paragraph(VerdictCount.sentence(comparison));
        ChosenAnswers.spokenOf(comparison, namedMaterial)
                .forEach(answer -> text.paragraph(new AnswerWords(units).sentence(answer)));
        text.heading(2, "Ranking").table(rankingHead(), rows(comparison, ComparisonMarkdown::ranking));
        text.heading(2, "Movements")
                .paragraph("The year's worst: value (low to high).")
                .table(movementHead(), rows(comparison, ComparisonMarkdown::movements));
        text.heading(2, "What this rests on").points(findings(comparison));
        return text.toString().strip() + "\n";
    }

    /** What turns an answer into the cells of a row. */
    private interface Row {
        List<String> of(Ranked answer);
    }

    private static List<List<String>> rows(Comparison comparison, Row row) {
        return comparison.ranked().stream().map(row::of).toList();
    }

    private static List<String> rankingHead() {
        List<String> head = new ArrayList<>(List.of("Rank", "Material", "Cut", "Verdict", "Worst month"));
        AnswerFigures.MOISTURE.forEach(key -> head.add(words(key.key())));
        head.addAll(List.of("shows days", "rest days", "Evidence"));
        return head;
    }

    private static List<String> ranking(Ranked answer) {
        HandleYear year = answer.year();
        List<String> row = new ArrayList<>(List.of(
                Integer.toString(answer.rank()),
                year.scale().name(),
                year.scale().cut() == Cut.NONE ? NONE : year.scale().cut().word(),
                answer.verdict().word(),
                MonthWord.of(year.worstMonth())));
        for (NumberKey key : AnswerFigures.MOISTURE) {
            row.add(number(key.of().applyAsDouble(year)));
        }
        row.add(answer.settling().map(settling -> band(settling.showsDays())).orElse(NONE));
        row.add(answer.settling().map(settling -> band(settling.restDays())).orElse(NONE));
        row.add(year.grounds().evidence().grade());
        return row;
    }

    private static List<String> movementHead() {
        List<String> head = new ArrayList<>(List.of("Rank", "Material"));
        AnswerFigures.MOVEMENTS.forEach(key -> head.add(words(key.key())));
        return head;
    }

    private static List<String> movements(Ranked answer) {
        List<String> row = new ArrayList<>(List.of(Integer.toString(answer.rank()), AnswerWords.nameOf(answer.year())));
        for (BandKey key : AnswerFigures.MOVEMENTS) {
            row.add(key.of().apply(answer.year()).map(ComparisonMarkdown::band).orElse("unknown"));
        }
        return row;
    }

    private static List<String> findings(Comparison comparison) {
        return FindingDigest.of(comparison).stream()
                .map(digest -> (digest.kind() == Finding.Kind.CAUTION ? "Mind: " : "") + digest.lead() + digest.text())
                .toList();
    }

    /** Value and band, such as "0.213 (0.150 to 0.260)". */
    static String band(Band band) {
        return number(band.value()) + " (" + number(band.low()) + " to " + number(band.high()) + ")";
    }

    static String number(double number) {
        return String.format(Locale.ROOT, "%.3f", number + 0.0);
    }

    static String words(String key) {
        return key.replace('_', ' ');
    }
}
