package hafthold.report;

import hafthold.air.CommonYear;
import hafthold.decide.DaySpan;
import hafthold.decide.Season;
import hafthold.decide.SeasonAnswer;
import hafthold.decide.SeasonAnswer.Call;
import hafthold.decide.SeasonAnswer.Conditioning;
import hafthold.decide.SeasonWeek;
import hafthold.decide.Verdict;
import hafthold.quantity.Band;
import hafthold.simulate.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * When to sand a scale flush, in sentences for the bench.
 *
 * @param style language and units
 * @param season the plan
 * @param answer one material of it
 */
record SeasonWords(BenchStyle style, Season season, SeasonAnswer answer) {
    private static final int HOURS_A_DAY = 24;

    /** Name with cut inside a sentence. */
    String material() {
        return new AnswerWords(style).plainNameOf(answer.today().year());
    }

    /** Everything about sanding today: what to do, what comes of it, what else may be done. */
    List<String> finish() {
        List<String> sentences = new ArrayList<>(List.of(call()));
        answer.soonerBox().ifPresent(air -> sentences.add(settled("season.sooner-condition", air)));
        if (takesWater()) {
            sentences.addAll(new SeasonStock(style, season, answer).sentences());
        }
        if (answer.finish().call() != Call.OPEN) {
            sentences.add(style.say("season.now", "edges", edges(answer.today())));
            sentences.addAll(decides(answer.today()));
            sentences.addAll(holds(answer.today()));
            if (answer.finish().call() == Call.GO && isBet(answer.today().keeps())) {
                sentences.add(style.say("season.bet"));
            }
        }
        if (answer.blank().reading().isPresent()
                && answer.finish().call() == Call.WAIT
                && answer.today().holds()) {
            sentences.add(style.say("season.read.unsure"));
        }
        if (answer.finish().call() == Call.CONDITION
                && isBet(answer.conditioning().orElseThrow().keeps())) {
            sentences.add(1, style.say("season.bet"));
        }
        if (answer.finish().call() == Call.CHANGE) {
            sentences.addAll(otherCuts());
        }
        if (answer.soonerBox().isEmpty()) {
            answer.box().ifPresent(air -> sentences.add(settled("season.or-condition", air)));
        }
        return sentences;
    }

    /** The call of the day in one sentence. */
    String call() {
        String day = style.dayOfHour(HOURS_A_DAY * day());
        return switch (answer.finish().call()) {
            case GO -> style.say("season.finish.go", "day", day);
            case WAIT -> wait(day);
            case CONDITION ->
                answer.conditioning()
                        .map(air -> settled("season.finish.condition", air))
                        .orElseThrow();
            case CHANGE -> style.say("season.finish.change", "day", day, "work", style.work(season.held()));
            case OPEN -> style.say("season.finish.open", "day", day);
        };
    }

    /** Both ways in one breath where a box is the sooner one: who reads no further must not wait for months. */
    private String wait(String day) {
        String span = style.counted("day", answer.finish().waitDays());
        String until = style.dayOfHour(HOURS_A_DAY * ((day() + answer.finish().waitDays()) % CommonYear.DAYS));
        return answer.soonerBox()
                .map(air -> style.say(
                        "season.finish.wait.box",
                        "day",
                        day,
                        "box",
                        SettlingWords.span(style, air.blankDays().value()),
                        "humidity",
                        humidity(air),
                        "span",
                        span,
                        "until",
                        until))
                .orElseGet(() -> style.say("season.finish.wait", "day", day, "span", span, "until", until));
    }

    /** What is said of letting it settle in some air first. */
    private String settled(String key, Conditioning air) {
        return style.say(
                key,
                "day",
                style.dayOfHour(HOURS_A_DAY * day()),
                "air",
                air(air),
                "days",
                conditioningDays(air),
                "edges",
                edges(air.after().edge().bonded()),
                "holds",
                String.join(" ", holds(air.keeps())));
    }

    private boolean isBet(OptionalDouble keeps) {
        return keeps.orElse(1) < season.limits().sureEnough();
    }

    /** Cuts of the wood that would do where this one does not. */
    private List<String> otherCuts() {
        List<String> cuts = answer.cuts().stream()
                .filter(cut -> cut.cut() != answer.scale().cut())
                .filter(cut -> cut.bestVerdict().compareTo(Verdict.CARE) <= 0)
                .map(cut -> style.cut(cut.cut()))
                .toList();
        return cuts.isEmpty()
                ? List.of()
                : List.of(style.say("season.other-cuts", "cuts", style.joined("comma", cuts)));
    }

    String air(Conditioning air) {
        return style.say(
                "season.air",
                "humidity",
                humidity(air),
                "celsius",
                style.fixed(air.celsius(), 0),
                "moisture",
                style.percent(air.moistureFraction()));
    }

    private static String humidity(Conditioning air) {
        return Long.toString(Math.round(100 * air.humidityFraction()));
    }

    private String conditioningDays(Conditioning air) {
        return style.say(
                "season.condition.days",
                "blank",
                SettlingWords.span(style, air.blankDays().value()),
                "scale",
                SettlingWords.span(style, air.scaleDays().value()),
                "thickness",
                style.size(season.conditions().handle().scaleThickness()));
    }

    /** When it is best sanded flush, and what comes of it then. */
    List<String> best() {
        List<String> sentences = new ArrayList<>();
        SeasonWeek week = answer.bestWeek();
        sentences.add(
                answer.anyWeek()
                        ? style.say("season.best.any", "edges", edges(week))
                        : style.say("season.best", "spans", spans(answer.best()), "edges", edges(week)));
        if (!week.holds()) {
            sentences.addAll(decides(week));
        }
        sentences.addAll(holds(week));
        if (!answer.worst().isEmpty()) {
            sentences.add(
                    style.say("season.worst", "spans", spans(answer.worst()), "edges", edges(answer.worstWeek())));
        }
        return sentences;
    }

    /** Whether water moves it at all. */
    boolean takesWater() {
        return answer.conditioning().isPresent();
    }

    private List<String> decides(SeasonWeek week) {
        return new ReasonWords(style, false)
                .deciding(week.reasons())
                .map(reason -> List.of(style.say("answer.decides", "reason", reason)))
                .orElse(List.of());
    }

    List<String> holds(SeasonWeek week) {
        return holds(week.keeps());
    }

    private List<String> holds(OptionalDouble keeps) {
        return keeps.isPresent()
                ? List.of(style.say(
                        "season.holds",
                        "count",
                        Long.toString(Math.round(season.samples() * keeps.getAsDouble())),
                        "all",
                        Integer.toString(season.samples()),
                        "work",
                        style.work(season.held())))
                : List.of();
    }

    String edges(SeasonWeek week) {
        return edges(week.year().edge().bonded());
    }

    private String edges(Step step) {
        boolean shy = !new BenchLength(step.shy()).isZero();
        boolean proud = !new BenchLength(step.proud()).isZero();
        String key = shy ? proud ? "both" : "shy" : proud ? "proud" : "flush";
        return style.say("season.edges." + key, "shy", sized(step.shy()), "proud", sized(step.proud()));
    }

    private String sized(Band size) {
        BenchLength length = new BenchLength(size);
        String range = length.range(style);
        return length.text(style) + (range.isEmpty() ? "" : " (" + range + ")");
    }

    /** Spans of days, such as "12 January to 20 March". */
    String spans(List<DaySpan> spans) {
        return style.joined(
                "season.and",
                spans.stream()
                        .map(span -> style.say(
                                "from-to",
                                "from",
                                style.dayOfHour(HOURS_A_DAY * span.firstDay()),
                                "to",
                                style.dayOfHour(HOURS_A_DAY * span.lastDay())))
                        .toList());
    }

    private int day() {
        return season.day();
    }
}
