package hafthold.report;

import hafthold.decide.Comparison;
import hafthold.decide.Comparison.Ranked;
import hafthold.decide.EventComparison;
import hafthold.knife.Handle;
import hafthold.material.Cut;
import hafthold.quantity.Length;
import hafthold.simulate.HandleYear;
import hafthold.source.Evidence;
import hafthold.source.Finding;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * A comparison as it is read in a terminal of about a hundred columns.
 *
 * @param units units of movements
 * @param namedMaterial id of a material that gets a sentence of its own, such as what the customer asked for
 */
public record ComparisonText(LengthUnits units, Optional<String> namedMaterial) {
    private static final int WIDTH = 100;
    private static final int MOST_FINDINGS = 20;
    private static final int NAMED_FIGURES = 4;

    /** The whole answer, ending in a line feed. */
    public String of(Comparison comparison) {
        return of(EventComparison.quiet(comparison));
    }

    /** Likewise, with what each event does. */
    public String of(EventComparison answers) {
        Comparison comparison = answers.comparison();
        StringBuilder text = new StringBuilder();
        text.append("Handle materials for ").append(comparison.placeName()).append("\n\n");
        text.append(situation(comparison)).append('\n');
        text.append(ranking(comparison)).append('\n');
        text.append(EventColumns.of(answers.events(), WIDTH));
        ChosenAnswers.spokenOf(comparison, namedMaterial)
                .forEach(answer -> text.append(Paragraph.hanging("", new AnswerWords(units).sentence(answer), WIDTH))
                        .append('\n'));
        String stays = StayWords.blocks(ChosenAnswers.spokenOf(comparison, namedMaterial).stream()
                .map(Ranked::year)
                .toList());
        text.append(stays.isEmpty() ? "" : stays.substring(1) + "\n");
        text.append(foundations(comparison));
        return text.toString();
    }

    /** What can hurt, as a part of a text that is kept in a file; empty where nothing is said. */
    static String cautions(Comparison comparison) {
        return cautions(FindingDigest.of(comparison));
    }

    /** Likewise, of findings already put together. */
    static String cautions(List<FindingDigest> digests) {
        StringBuilder text = new StringBuilder();
        digests.stream()
                .filter(digest -> digest.kind() == Finding.Kind.CAUTION)
                .forEach(digest -> text.append(Paragraph.hanging("  - ", digest.lead() + digest.text(), WIDTH)));
        return text.isEmpty() ? "" : "\nMind\n" + text;
    }

    private String situation(Comparison comparison) {
        Handle handle = comparison.handle();
        TextColumns columns = new TextColumns(8, WIDTH - 10);
        columns.row("Lives", SituationWords.lives(comparison));
        columns.row("Made at", SituationWords.made(comparison));
        columns.row("Handle", SituationWords.handle(handle, units));
        columns.row("Steps", SituationWords.steps(comparison));
        return columns.text();
    }

    private String ranking(Comparison comparison) {
        boolean thou = units == LengthUnits.INCH;
        TextColumns columns = new TextColumns(2, 22, 7, 7, thou ? 26 : 20, 3, 9, 12, 10);
        columns.row("", "", "", "", "Worst step", "", "MC", "Pin hole", "Pin heads");
        String size = thou ? "mm / thou, range" : "mm, range";
        columns.row("", "Material", "Cut", "Verdict", size, "In", "%", "mm", "mm");
        for (Ranked answer : comparison.ranked()) {
            HandleYear year = answer.year();
            columns.row(
                    Integer.toString(answer.rank()),
                    year.scale().name() + (restsOnEstimate(year) ? Paragraph.HOLD + "*" : ""),
                    year.scale().cut() == Cut.NONE ? "–" : year.scale().cut().word(),
                    answer.verdict().word(),
                    step(answer),
                    EdgeStep.worst(year).isFlush() ? "–" : MonthWord.shortOf(year.worstMonth()),
                    AnswerWords.moistureRange(year),
                    PinWords.hole(year),
                    PinWords.heads(year));
        }
        return columns.text() + weakFigures(comparison);
    }

    /** What the marked answers hang on, commonest first. */
    private static String weakFigures(Comparison comparison) {
        Map<String, Long> figures = comparison.ranked().stream()
                .map(Ranked::year)
                .filter(ComparisonText::restsOnEstimate)
                .map(year -> year.grounds().restsOn().figure())
                .collect(Collectors.groupingBy(figure -> figure, TreeMap::new, Collectors.counting()));
        if (figures.isEmpty()) {
            return "";
        }
        String list = figures.entrySet().stream()
                .filter(entry -> !entry.getKey().isEmpty())
                .sorted(Map.Entry.<String, Long>comparingByValue().reversed())
                .limit(NAMED_FIGURES)
                .map(entry -> entry.getValue() > 1 ? entry.getKey() + " (" + entry.getValue() + ")" : entry.getKey())
                .collect(Collectors.joining(", "));
        return Paragraph.hanging(
                "",
                "* a figure that its band hangs on is estimated or not known" + (list.isEmpty() ? "" : ": " + list),
                WIDTH);
    }

    private static boolean restsOnEstimate(HandleYear year) {
        return year.grounds().evidence().compareTo(Evidence.PUBLISHED) > 0;
    }

    private String step(Ranked answer) {
        EdgeStep worst = EdgeStep.worst(answer.year());
        BenchLength length = worst.length();
        if (!answer.isMovementKnown()) {
            return length.isNothing()
                    ? "not known"
                    : length.range() + " " + worst.side().word() + "?";
        }
        if (worst.isFlush()) {
            return length.isNothing() ? "flush" : "flush, max. " + length.highMillimetres();
        }
        String value = length.millimetres() + (units == LengthUnits.INCH ? " / " + length.thou() : "");
        String range = length.range();
        return value + " " + worst.side().word() + (range.isEmpty() ? "" : " " + range);
    }

    private String foundations(Comparison comparison) {
        StringBuilder text = new StringBuilder("What this rests on\n");
        List<FindingDigest> all = withoutCautions(FindingDigest.of(comparison));
        List<FindingDigest> told = all.size() <= MOST_FINDINGS
                ? all
                : withoutCautions(FindingDigest.of(comparison, ChosenAnswers.spokenOf(comparison, namedMaterial)));
        Finding.Kind last = null;
        for (FindingDigest digest : told) {
            if (digest.kind() != last) {
                text.append("  ").append(FindingDigest.headingOf(digest.kind())).append(":\n");
                last = digest.kind();
            }
            text.append(Paragraph.hanging("  - ", digest.lead() + digest.text(), WIDTH));
        }
        if (told.size() < all.size()) {
            text.append("  ")
                    .append(all.size() - told.size())
                    .append(" more concern the other materials; the page and the JSON tell them all.\n");
        }
        return text.toString();
    }

    /** Cautions go to the error stream of the command line, where they are seen even when the answer is piped on. */
    private static List<FindingDigest> withoutCautions(List<FindingDigest> digests) {
        return digests.stream()
                .filter(digest -> digest.kind() != Finding.Kind.CAUTION)
                .toList();
    }

    /** A dimension as the handle's owner states it. */
    static String dimension(Length length, LengthUnits units) {
        String millimetres = AnswerWords.plain(length.millimetres()) + " mm";
        return units == LengthUnits.MM
                ? millimetres
                : millimetres + " (" + String.format(Locale.ROOT, "%.3f", length.millimetres() / 25.4) + " in)";
    }
}
