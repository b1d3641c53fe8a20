package hafthold.report;

import hafthold.decide.Advice;
import hafthold.decide.EventFit;
import hafthold.decide.FullTangFit;
import hafthold.decide.KnifeFit;
import hafthold.decide.Reason;
import hafthold.decide.StackFit;
import hafthold.decide.Verdict;
import hafthold.knife.WorkState;
import hafthold.knife.WorkState.MeasuredMoisture;
import hafthold.knife.WorkState.SettledAir;
import hafthold.source.Finding;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * One knife in one place as a note for the bench: the verdict first, then what moves, what bears it, what to do, and
 * what all this rests on.
 *
 * @param units units of movements
 */
public record FitText(LengthUnits units) {
    static final int WIDTH = 100;

    /** What stands behind every advice. */
    static final String TRIED = "Each was tried by running the year with it. Stock is never advised below 5 % MC or"
            + " outside 25 to 65 % humidity: that bound is a workshop's judgement.";

    private static final int SAID_REASONS = 3;
    private static final double TENTHS = 10;

    /** The whole note, ending in a line feed. */
    public String of(KnifeFit fit) {
        return of(EventFit.quiet(fit));
    }

    /** Likewise, with what each event does. */
    public String of(EventFit answer) {
        KnifeFit fit = answer.fit();
        StringBuilder text = new StringBuilder();
        text.append(fit.knife().build().order().name().orElse("This knife"))
                .append(" for ")
                .append(fit.destination().name())
                .append(": ")
                .append(fit.verdict().word())
                .append("\n\n");
        text.append(Paragraph.hanging("", verdict(fit), WIDTH)).append('\n');
        TextColumns rows = new TextColumns(10, WIDTH - 12);
        rows.row("Lives", lives(fit));
        if (fit instanceof FullTangFit full) {
            new FullTangWords(units, full).write(rows);
        } else {
            new StackWords(units, (StackFit) fit).write(rows);
        }
        text.append(rows.text()).append('\n');
        String stays = StayWords.block(fit.whole(), fit instanceof StackFit);
        text.append(stays).append(stays.isEmpty() ? "" : "\n");
        text.append(
                answer.events().map(events -> EventColumns.of(events, WIDTH)).orElse(""));
        text.append(toDo(fit)).append('\n');
        text.append(foundations(fit));
        return text.toString();
    }

    private String verdict(KnifeFit fit) {
        AnswerWords words = new AnswerWords(units, true);
        String text = verdictSentence(fit);
        List<Reason> reasons = fit.reasons().stream().limit(SAID_REASONS).toList();
        if (reasons.isEmpty()) {
            return text + " Nothing moves further than show-piece work allows.";
        }
        String decides = words.reason(reasons.get(0));
        String also = reasons.stream().skip(1).map(words::reason).collect(Collectors.joining("; "));
        return text + " What decides: " + decides + "." + (also.isEmpty() ? "" : " Also: " + also + ".") + remedy(fit);
    }

    /** Whether something that was tried mends it. */
    static String remedy(KnifeFit fit) {
        boolean adverse = fit.verdict() == Verdict.CHANGE || fit.verdict() == Verdict.REFUSE;
        boolean mends =
                fit.advice().stream().anyMatch(advice -> advice.verdict().compareTo(Verdict.CARE) <= 0);
        return adverse && mends ? " The first change under What to do brings it back." : "";
    }

    /** The verdict in one sentence. */
    static String verdictSentence(KnifeFit fit) {
        String name = fit instanceof FullTangFit ? AnswerWords.nameOf(fit.whole()) : "This stack";
        return name + " " + AnswerWords.verdictOf(fit.verdict()) + ".";
    }

    /** Where the knife lives. */
    static String lives(KnifeFit fit) {
        return fit.destination().setting().id() + ": " + fit.destination().lives();
    }

    private static String toDo(KnifeFit fit) {
        StringBuilder text = new StringBuilder("What to do\n");
        if (fit.advice().isEmpty()) {
            return text.append("  ").append(nothingToDo(fit)).append('\n').toString();
        }
        for (Advice advice : fit.advice()) {
            text.append(Paragraph.hanging(
                    "  - ", AdviceWords.toDo(advice.change()) + ": " + AdviceWords.effect(advice) + ".", WIDTH));
        }
        text.append(Paragraph.hanging("  ", TRIED, WIDTH));
        return text.toString();
    }

    /** Why there is no advice. */
    static String nothingToDo(KnifeFit fit) {
        if (fit.reasons().isEmpty()) {
            return "Nothing: build it as it is.";
        }
        return fit.verdict() == Verdict.UNKNOWN
                ? "Nothing was tried, as what cannot be judged cannot be bettered: measure first."
                : "Nothing that was tried makes it better than it is.";
    }

    private static String foundations(KnifeFit fit) {
        StringBuilder text = new StringBuilder("What this rests on\n");
        for (Finding.Kind kind : Finding.Kind.values()) {
            Map<String, String> lines = new LinkedHashMap<>();
            fit.findings().stream()
                    .filter(finding -> finding.kind() == kind)
                    .forEach(finding -> lines.merge(finding.text(), finding.subject(), FitText::both));
            if (!lines.isEmpty()) {
                text.append("  ").append(FindingDigest.headingOf(kind)).append(":\n");
                lines.forEach((line, subject) ->
                        text.append(Paragraph.hanging("  - ", subject.replace('-', ' ') + ": " + line, WIDTH)));
            }
        }
        return text.toString();
    }

    private static String both(String one, String other) {
        return one.equals(other) || one.endsWith(", " + other) || one.startsWith(other + ", ")
                ? one
                : one + ", " + other;
    }

    /** A moment of the work in words. */
    static String state(WorkState state) {
        String warmth =
                AnswerWords.plain(Math.round(TENTHS * state.temperature().celsius()) / TENTHS) + " °C";
        return state instanceof SettledAir air
                ? warmth + " and " + AnswerWords.plain(air.humidity().percent()) + " % humidity"
                : warmth + " and "
                        + AnswerWords.plain(
                                ((MeasuredMoisture) state).moisture().percent()) + " % MC as measured";
    }
}
