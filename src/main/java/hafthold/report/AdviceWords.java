package hafthold.report;

import hafthold.decide.Advice;
import hafthold.decide.Change;
import hafthold.decide.Reason;
import hafthold.knife.Pin;
import hafthold.material.Cut;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Changes of a build and what they do, in the bench's words. */
final class AdviceWords {
    private static final double SAME = 0.005e-3;
    private static final double SAME_USE = 0.01;
    private static final double HALF = 0.5;

    private static final Wording WORDS = Wording.english();

    private AdviceWords() {}

    /** What to do, as a sentence begins. */
    static String toDo(Change change) {
        String text = clause(change);
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private static String clause(Change change) {
        if (change instanceof Change.Condition condition) {
            return WORDS.say(
                    !condition.atLimit()
                            ? "bench.do.condition"
                            : condition.humidity().fraction() < HALF
                                    ? "bench.do.condition.driest"
                                    : "bench.do.condition.dampest",
                    "humidity",
                    AnswerWords.plain(condition.humidity().percent()),
                    "moisture",
                    AnswerWords.percent(condition.moistureFraction()));
        }
        if (change instanceof Change.Recut recut) {
            return switch (recut.cut()) {
                case QUARTER -> WORDS.say("bench.do.quarter");
                case FLAT -> WORDS.say("bench.do.flat");
                default -> WORDS.say("bench.do.recut", "cut", recut.cut().word());
            };
        }
        if (change instanceof Change.Pins pins) {
            return WORDS.say(
                    "bench.do.pins",
                    "pin",
                    millimetres(pins.diameter().millimetres()),
                    "hole",
                    millimetres(pins.hole().millimetres()),
                    "fill",
                    fill(pins.fill()));
        }
        if (change instanceof Change.BondLine line) {
            return WORDS.say(
                    "bench.do.bond-line",
                    "thickness",
                    millimetres(line.thickness().millimetres()));
        }
        if (change instanceof Change.Glue glue) {
            return WORDS.say("bench.do.glue", "glue", glue.name());
        }
        if (change instanceof Change.Material material) {
            return WORDS.say("bench.do.material", "material", material.name());
        }
        if (change instanceof Change.Part part) {
            return WORDS.say("bench.do.part", "place", Integer.toString(part.place()), "material", part.name());
        }
        if (change instanceof Change.Preload preload) {
            return WORDS.say("bench.do.preload", "newtons", Long.toString(Math.round(preload.newtons())));
        }
        List<Change> all = ((Change.Together) change).changes();
        return all.stream().map(AdviceWords::clause).collect(Collectors.joining(WORDS.say("bench.do.and")));
    }

    private static String fill(Pin.Fill fill) {
        return WORDS.say("bench.fill." + fill.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    /** What came of it, such as "edge 0.16 to 0.08 mm shy; then it moves with the seasons ...". */
    static String effect(Advice advice) {
        String effects = effects(advice);
        return WORDS.say(
                effects.isEmpty() ? "bench.effect.verdict" : "bench.effect.and-verdict",
                "effects",
                effects,
                "verdict",
                advice.verdict().word());
    }

    /** What it does to each thing that shows a difference; empty where nothing does. */
    static String effects(Advice advice) {
        return advice.effects().stream()
                .filter(AdviceWords::shows)
                .map(AdviceWords::words)
                .collect(Collectors.joining(", "));
    }

    private static boolean shows(Advice.Effect effect) {
        double same = effect.kind().isUse() ? SAME_USE : SAME;
        return Math.abs(effect.after() - effect.before()) >= same;
    }

    private static String words(Advice.Effect effect) {
        return name(effect.kind()) + " "
                + (effect.kind().isUse()
                        ? String.format(Locale.ROOT, "%.0f to %.0f %%", 100 * effect.before(), 100 * effect.after())
                        : String.format(Locale.ROOT, "%.2f to %.2f mm", 1000 * effect.before(), 1000 * effect.after()));
    }

    private static String name(Reason.Kind kind) {
        return WORDS.say("bench.effect." + kind.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    private static String millimetres(double millimetres) {
        return AnswerWords.plain(millimetres) + Paragraph.HOLD + "mm";
    }

    /** A cut as an adjective. */
    static String cutWord(Cut cut) {
        return WORDS.say("bench.cut." + cut.name().toLowerCase(Locale.ROOT));
    }
}
