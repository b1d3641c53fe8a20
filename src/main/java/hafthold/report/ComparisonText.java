package hafthold.report;

import hafthold.decide.Comparison;
import hafthold.decide.Comparison.Ranked;
import hafthold.decide.EventComparison;
import hafthold.simulate.HandleYear;
import hafthold.source.Evidence;
import hafthold.source.Finding;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * A comparison as it is read in a terminal of about a hundred columns.
 *
 * @param style language and units
 * @param namedMaterial id of a material that gets a sentence of its own, such as what the customer asked for
 */
public record ComparisonText(BenchStyle style, Optional<String> namedMaterial) {
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
        text.append(style.say("compare.title", "place", style.tell(comparison.placeName())))
                .append("\n\n");
        text.append(situation(comparison)).append('\n');
        text.append(ranking(comparison)).append('\n');
        text.append(EventColumns.of(style, answers.events(), WIDTH));
        List<Ranked> spoken = ChosenAnswers.spokenOf(comparison, namedMaterial);
        spoken.forEach(answer -> text.append(Paragraph.hanging("", new AnswerWords(style).sentence(answer), WIDTH))
                .append('\n'));
        List<Ranked> brief = ChosenAnswers.inBrief(comparison, namedMaterial);
        brief.forEach(answer -> text.append(Paragraph.hanging("  - ", new AnswerWords(style).line(answer), WIDTH)));
        text.append(brief.isEmpty() ? "" : "\n");
        String stays = new StayWords(style, false)
                .blocks(spoken.stream().map(Ranked::year).toList());
        text.append(stays.isEmpty() ? "" : stays.substring(1) + "\n");
        text.append(foundations(comparison));
        return text.toString();
    }

    /** What can hurt, as a part of a text that is kept in a file; empty where nothing is said. */
    static String cautions(BenchStyle style, List<FindingDigest> digests) {
        StringBuilder text = new StringBuilder();
        digests.stream()
                .filter(digest -> digest.kind() == Finding.Kind.CAUTION)
                .forEach(digest -> text.append(Paragraph.hanging("  - ", digest.lead(style) + digest.text(), WIDTH)));
        return text.isEmpty() ? "" : "\n" + FindingDigest.headingOf(style, Finding.Kind.CAUTION) + "\n" + text;
    }

    private String situation(Comparison comparison) {
        SituationWords words = new SituationWords(style);
        TextColumns columns = new TextColumns(8, WIDTH - 10);
        columns.row(style.say("row.lives"), words.lives(comparison));
        columns.row(style.say("row.made-at"), words.made(comparison));
        columns.row(style.say("row.handle"), words.handle(comparison.handle()));
        columns.row(style.say("row.steps"), words.steps(comparison));
        return columns.text();
    }

    private String ranking(Comparison comparison) {
        TextColumns columns = new TextColumns(2, 22, 7, 7, style.isBoth() ? 26 : 20, 3, 9, 12, 10);
        columns.row(
                "",
                "",
                "",
                "",
                style.say("rank.worst-step"),
                "",
                style.say("rank.moisture"),
                style.say("rank.pin-hole"),
                style.say("rank.pin-heads"));
        columns.row(
                "",
                style.say("head.material"),
                style.say("head.cut"),
                style.say("head.verdict"),
                style.say("rank.range", "unit", style.isBoth() ? style.say("unit.both") : style.unit()),
                style.say("rank.month"),
                "%",
                style.unit(),
                style.unit());
        for (Ranked answer : comparison.ranked()) {
            HandleYear year = answer.year();
            columns.row(
                    Integer.toString(answer.rank()),
                    year.scale().name() + (restsOnEstimate(year) ? Paragraph.HOLD + "*" : ""),
                    style.shortCut(year.scale().cut()),
                    style.verdict(answer.verdict()),
                    step(answer),
                    EdgeStep.worst(year).isFlush() ? "–" : style.shortMonth(year.worstMonth()),
                    new AnswerWords(style).moistureRange(year),
                    PinWords.hole(style, year),
                    PinWords.heads(style, year));
        }
        return columns.text() + weakFigures(comparison);
    }

    /** What the marked answers hang on, commonest first. */
    private String weakFigures(Comparison comparison) {
        Map<String, Long> figures = comparison.ranked().stream()
                .map(Ranked::year)
                .filter(ComparisonText::restsOnEstimate)
                .map(year -> year.grounds().restsOn().figure().map(style::tell).orElse(""))
                .collect(Collectors.groupingBy(figure -> figure, TreeMap::new, Collectors.counting()));
        if (figures.isEmpty()) {
            return "";
        }
        List<String> named = figures.entrySet().stream()
                .filter(entry -> !entry.getKey().isEmpty())
                .sorted(Map.Entry.<String, Long>comparingByValue().reversed())
                .limit(NAMED_FIGURES)
                .map(entry -> entry.getValue() > 1 ? entry.getKey() + " (" + entry.getValue() + ")" : entry.getKey())
                .toList();
        return Paragraph.hanging(
                "",
                named.isEmpty()
                        ? style.say("rank.estimate")
                        : style.say("rank.estimates", "figures", style.joined("comma", named)),
                WIDTH);
    }

    private static boolean restsOnEstimate(HandleYear year) {
        return year.grounds().evidence().compareTo(Evidence.PUBLISHED) > 0;
    }

    private String step(Ranked answer) {
        EdgeStep worst = EdgeStep.worst(answer.year());
        BenchLength length = worst.length();
        AnswerWords words = new AnswerWords(style);
        if (!answer.isMovementKnown()) {
            return length.isNothing() ? style.say("not-known") : words.side(worst.side(), length.range(style)) + "?";
        }
        if (worst.isFlush()) {
            return length.isNothing() ? style.say("flush") : style.say("flush.max", "size", length.high(style));
        }
        String value = words.side(worst.side(), length.number(style) + (style.isBoth() ? " / " + length.thou() : ""));
        String range = length.range(style);
        return range.isEmpty() ? value : value + " " + range;
    }

    private String foundations(Comparison comparison) {
        StringBuilder text = new StringBuilder();
        List<FindingDigest> all = withoutCautions(FindingDigest.of(style, comparison));
        List<FindingDigest> told = all.size() <= MOST_FINDINGS
                ? all
                : withoutCautions(
                        FindingDigest.of(style, comparison, ChosenAnswers.spokenOf(comparison, namedMaterial)));
        new BenchNote(style, text).restsOn(told);
        if (told.size() < all.size()) {
            text.append("  ")
                    .append(style.say("compare.more", "count", Integer.toString(all.size() - told.size())))
                    .append('\n');
        }
        return text.toString();
    }

    /** Cautions go to the error stream of the command line, where they are seen even when the answer is piped on. */
    private static List<FindingDigest> withoutCautions(List<FindingDigest> digests) {
        return digests.stream()
                .filter(digest -> digest.kind() != Finding.Kind.CAUTION)
                .toList();
    }
}
