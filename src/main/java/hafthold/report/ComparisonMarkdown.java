package hafthold.report;

import hafthold.decide.Comparison;
import hafthold.decide.Comparison.Ranked;
import hafthold.decide.EventComparison;
import hafthold.quantity.Band;
import hafthold.report.AnswerFigures.BandKey;
import hafthold.report.AnswerFigures.NumberKey;
import hafthold.simulate.EventAnswer;
import hafthold.simulate.EventYear;
import hafthold.simulate.HandleYear;
import hafthold.source.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A comparison as markdown: the figures of the JSON, to three digits behind the point. */
public final class ComparisonMarkdown {
    private static final String NONE = "–";

    private final BenchStyle style;

    private ComparisonMarkdown(BenchStyle style) {
        this.style = style;
    }

    /**
     * The whole answer.
     *
     * @param namedMaterial id of the material asked for, which gets a sentence
     */
    public static String of(Comparison comparison, BenchStyle style, Optional<String> namedMaterial) {
        return of(EventComparison.quiet(comparison), style, namedMaterial);
    }

    /** Likewise, with what each event does. */
    public static String of(EventComparison answers, BenchStyle style, Optional<String> namedMaterial) {
        return new ComparisonMarkdown(style).text(answers, namedMaterial);
    }

    private String text(EventComparison answers, Optional<String> namedMaterial) {
        Comparison comparison = answers.comparison();
        SituationWords situation = new SituationWords(style);
        MarkdownText text = new MarkdownText()
                .heading(1, style.say("compare.title", "place", style.tell(comparison.placeName())))
                .points(List.of(
                        style.say("row.lives") + ": " + situation.lives(comparison),
                        style.say("row.made-at") + ": " + situation.made(comparison),
                        style.say("row.handle") + ": " + situation.handle(comparison.handle()),
                        style.say("row.steps") + ": " + situation.steps(comparison)))
                .paragraph(VerdictCount.sentence(style, comparison));
        ChosenAnswers.spokenOf(comparison, namedMaterial)
                .forEach(answer -> text.paragraph(new AnswerWords(style).sentence(answer)));
        List<Ranked> brief = ChosenAnswers.inBrief(comparison, namedMaterial);
        if (!brief.isEmpty()) {
            text.points(brief.stream().map(new AnswerWords(style)::line).toList());
        }
        text.heading(2, style.say("heading.ranking")).table(rankingHead(), rows(comparison, this::ranking));
        text.heading(2, style.say("heading.movements"))
                .paragraph(style.say("compare.worst"))
                .table(movementHead(), rows(comparison, this::movements));
        if (!answers.events().isEmpty()) {
            EventColumns.write(text, style, EventRows.of(style, answers.events()));
            text.heading(2, style.say("heading.event-figures")).table(eventHead(), events(answers.events()));
        }
        text.heading(2, style.say("heading.rests-on")).points(findings(comparison));
        return text.toString().strip() + "\n";
    }

    /** What turns an answer into the cells of a row. */
    private interface Row {
        List<String> of(Ranked answer);
    }

    private static List<List<String>> rows(Comparison comparison, Row row) {
        return comparison.ranked().stream().map(row::of).toList();
    }

    private List<String> rankingHead() {
        List<String> head = new ArrayList<>(style.heads("rank", "material", "cut", "verdict", "worst-month"));
        AnswerFigures.MOISTURE.forEach(key -> head.add(words(key.key())));
        head.addAll(style.heads("shows-days", "rest-days", "evidence"));
        return head;
    }

    private List<String> ranking(Ranked answer) {
        HandleYear year = answer.year();
        List<String> row = new ArrayList<>(List.of(
                Integer.toString(answer.rank()),
                year.scale().name(),
                style.shortCut(year.scale().cut()),
                style.verdict(answer.verdict()),
                style.month(year.worstMonth())));
        for (NumberKey key : AnswerFigures.MOISTURE) {
            row.add(number(key.of().applyAsDouble(year)));
        }
        row.add(answer.settling().map(settling -> band(settling.showsDays())).orElse(NONE));
        row.add(answer.settling().map(settling -> band(settling.restDays())).orElse(NONE));
        row.add(style.named("evidence", year.grounds().evidence().grade()));
        return row;
    }

    private List<String> movementHead() {
        List<String> head = new ArrayList<>(style.heads("rank", "material"));
        AnswerFigures.MOVEMENTS.forEach(key -> head.add(words(key.key())));
        return head;
    }

    private List<String> movements(Ranked answer) {
        List<String> row =
                new ArrayList<>(List.of(Integer.toString(answer.rank()), new AnswerWords(style).nameOf(answer.year())));
        for (BandKey key : AnswerFigures.MOVEMENTS) {
            row.add(key.of().apply(answer.year()).map(this::band).orElseGet(() -> style.say("unknown")));
        }
        return row;
    }

    private List<String> findings(Comparison comparison) {
        return FindingDigest.of(style, comparison).stream()
                .map(digest -> {
                    String said = digest.lead(style) + digest.text();
                    return digest.kind() == Finding.Kind.CAUTION ? style.say("compare.mind", "caution", said) : said;
                })
                .toList();
    }

    private List<String> eventHead() {
        List<String> head = new ArrayList<>(style.heads("material", "cut", "event", "times"));
        EventFigures.ALL.forEach(key -> head.add(words(key.key())));
        EventFigures.OF_YEAR.forEach(key -> head.add(words(key.key())));
        return head;
    }

    private List<List<String>> events(List<EventYear> years) {
        List<List<String>> rows = new ArrayList<>();
        for (EventYear year : years) {
            for (EventAnswer answer : year.answers()) {
                List<String> row = new ArrayList<>(List.of(
                        year.year().scale().name(),
                        style.shortCut(year.year().scale().cut()),
                        style.named("event", answer.event().id()),
                        Integer.toString(answer.times())));
                EventFigures.ALL.forEach(key -> row.add(figure(key, answer)));
                EventFigures.OF_YEAR.forEach(key -> row.add(figure(key, year)));
                rows.add(row);
            }
        }
        return rows;
    }

    private <T> String figure(EventFigures.Key<T> key, T told) {
        return key.of()
                .apply(told)
                .map(band -> key.isBand() ? band(band) : number(band.value()))
                .orElse(NONE);
    }

    /** Value and band, such as "0.213 (0.150 to 0.260)". */
    private String band(Band band) {
        return style.say(
                "range", "value", number(band.value()), "low", number(band.low()), "high", number(band.high()));
    }

    private String number(double number) {
        return style.fixed(number, 3);
    }

    /** A key as words; it stays English, for it is that of the JSON. */
    static String words(String key) {
        return key.replace('_', ' ');
    }
}
