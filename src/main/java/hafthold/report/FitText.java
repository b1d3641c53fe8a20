package hafthold.report;

import hafthold.decide.Advice;
import hafthold.decide.EventFit;
import hafthold.decide.FullTangFit;
import hafthold.decide.KnifeFit;
import hafthold.decide.Reason;
import hafthold.decide.StackFit;
import hafthold.knife.WorkState;
import hafthold.knife.WorkState.MeasuredMoisture;
import hafthold.knife.WorkState.SettledAir;
import hafthold.simulate.Settling;
import hafthold.source.Finding;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One knife in one place as a note for the bench: the verdict first, then what moves, what bears it, what to do, and
 * what all this rests on.
 *
 * @param style language and units
 */
public record FitText(BenchStyle style) {
    private static final int WIDTH = 100;
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
        TriedChanges tried = new TriedChanges(style, answer);
        text.append(tried.title()).append("\n\n");
        text.append(Paragraph.hanging("", verdict(fit), WIDTH)).append('\n');
        TextColumns rows = new TextColumns(10, WIDTH - 12);
        FitRows.of(answer, style).rows().forEach(row -> rows.row(row.lead(), row.words()));
        text.append(rows.text()).append('\n');
        String stays = new StayWords(style, fit instanceof StackFit).block(fit.whole());
        text.append(stays).append(stays.isEmpty() ? "" : "\n");
        text.append(answer.events()
                .map(events -> EventColumns.of(style, events, WIDTH))
                .orElse(""));
        text.append(toDo(tried)).append('\n');
        text.append(foundations(fit));
        return text.toString();
    }

    private String verdict(KnifeFit fit) {
        ReasonWords words = new ReasonWords(style, true);
        String text = verdictSentence(fit, style);
        List<String> reasons = said(fit).stream().map(words::clause).toList();
        if (reasons.isEmpty()) {
            return text + " " + style.say("fit.nothing-moves");
        }
        String decides = text + " " + style.say("answer.decides", "reason", reasons.get(0));
        return decides
                + (reasons.size() == 1
                        ? ""
                        : " "
                                + style.say(
                                        "fit.also",
                                        "reasons",
                                        style.joined("semicolon", reasons.subList(1, reasons.size()))));
    }

    /** The first few, and whatever gives way however many stand before it. */
    private static List<Reason> said(KnifeFit fit) {
        List<Reason> said = new ArrayList<>();
        for (Reason reason : fit.reasons()) {
            if (said.size() < SAID_REASONS || reason.givesWay()) {
                said.add(reason);
            }
        }
        return said;
    }

    /** The verdict in one sentence. */
    static String verdictSentence(KnifeFit fit, BenchStyle style) {
        AnswerWords words = new AnswerWords(style);
        return style.say(
                "answer.verdict",
                "subject",
                fit instanceof FullTangFit ? words.nameOf(fit.whole()) : style.say("fit.stack"),
                "verdict",
                words.verdictOf(fit.verdict(), fit.whole(), fit.reasons(), settling(fit)));
    }

    private static Optional<Settling> settling(KnifeFit fit) {
        return fit instanceof FullTangFit full ? Settling.of(full.knife(), full.destination()) : Optional.empty();
    }

    /** Where the knife lives. */
    static String lives(KnifeFit fit, BenchStyle style) {
        return new SituationWords(style).lives(fit.destination());
    }

    private String toDo(TriedChanges tried) {
        StringBuilder text = new StringBuilder();
        AdviceWords words = new AdviceWords(style);
        for (TriedChanges.Group group : tried.groups()) {
            text.append(group.heading()).append('\n');
            if (group.changes().isEmpty()) {
                text.append(Paragraph.hanging("  ", group.none(), WIDTH));
            }
            for (Advice advice : group.changes()) {
                text.append(Paragraph.hanging(
                        "  - ", words.toDo(advice.change()) + ": " + words.effect(advice) + ".", WIDTH));
            }
            if (!group.after().isEmpty()) {
                text.append(Paragraph.hanging("  ", group.after(), WIDTH));
            }
        }
        if (tried.any()) {
            text.append(Paragraph.hanging("  ", style.say("fit.tried"), WIDTH));
        }
        return text.toString();
    }

    private String foundations(KnifeFit fit) {
        StringBuilder text = new StringBuilder(style.say("heading.rests-on")).append('\n');
        for (Finding.Kind kind : Finding.Kind.values()) {
            Map<String, String> names = FitInputs.names(fit.knife());
            Map<String, String> lines = new LinkedHashMap<>();
            fit.findings().stream()
                    .filter(finding -> finding.kind() == kind)
                    .forEach(finding -> lines.merge(
                            style.tell(finding.message()),
                            FindingDigest.worded(style, finding.subject(), names),
                            FitText::both));
            if (!lines.isEmpty()) {
                text.append("  ").append(FindingDigest.headingOf(style, kind)).append(":\n");
                lines.forEach((line, subject) -> text.append(Paragraph.hanging("  - ", subject + ": " + line, WIDTH)));
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
    static String state(WorkState state, BenchStyle style) {
        String warmth = style.plain(Math.round(TENTHS * state.temperature().celsius()) / TENTHS);
        return state instanceof SettledAir air
                ? style.say(
                        "state.air",
                        "temperature",
                        warmth,
                        "humidity",
                        style.plain(air.humidity().percent()))
                : style.say(
                        "state.moisture",
                        "temperature",
                        warmth,
                        "moisture",
                        style.plain(((MeasuredMoisture) state).moisture().percent()));
    }
}
