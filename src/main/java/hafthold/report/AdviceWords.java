package hafthold.report;

import hafthold.decide.Advice;
import hafthold.decide.Change;
import hafthold.decide.Reason;
import java.util.ArrayList;
import java.util.List;

/**
 * Changes of a build and what they do, in the bench's words.
 *
 * @param style language and units
 */
record AdviceWords(BenchStyle style) {
    private static final double SAME = 0.005e-3;
    private static final double SAME_USE = 0.01;
    private static final double HALF = 0.5;

    /** What to do, as a sentence begins. */
    String toDo(Change change) {
        return BenchStyle.capital(clause(change));
    }

    private String clause(Change change) {
        if (change instanceof Change.Condition condition) {
            return style.say(
                    !condition.atLimit()
                            ? "do.condition"
                            : condition.humidity().fraction() < HALF ? "do.condition.driest" : "do.condition.dampest",
                    "humidity",
                    style.plain(condition.humidity().percent()),
                    "moisture",
                    style.percent(condition.moistureFraction()));
        }
        if (change instanceof Change.Recut recut) {
            return switch (recut.cut()) {
                case QUARTER -> style.say("do.quarter");
                case FLAT -> style.say("do.flat");
                default -> style.say("do.recut", "cut", style.shortCut(recut.cut()));
            };
        }
        if (change instanceof Change.Pins pins) {
            return style.say(
                    "do.pins",
                    "pin",
                    Paragraph.held(style.size(pins.diameter())),
                    "hole",
                    Paragraph.held(style.size(pins.hole())),
                    "fill",
                    style.named("fill", pins.fill().name()));
        }
        if (change instanceof Change.BondLine line) {
            return style.say("do.bond-line", "thickness", Paragraph.held(style.size(line.thickness())));
        }
        if (change instanceof Change.Glue glue) {
            return style.say("do.glue", "glue", glue.name());
        }
        if (change instanceof Change.Material material) {
            return style.say("do.material", "material", material.name());
        }
        if (change instanceof Change.Part part) {
            return style.say(
                    "do.part",
                    "place",
                    Integer.toString(part.place()),
                    "replaced",
                    part.replaced(),
                    "material",
                    part.name());
        }
        if (change instanceof Change.Preload preload) {
            return style.say("do.preload", "newtons", Long.toString(Math.round(preload.newtons())));
        }
        List<Change> all = ((Change.Together) change).changes();
        return style.joined("do.and", all.stream().map(this::clause).toList());
    }

    /** The change as something the knife has, such as "stock at 31 %". */
    String with(Change change) {
        if (change instanceof Change.Condition condition) {
            return style.say(
                    "with.condition",
                    "humidity",
                    style.plain(condition.humidity().percent()));
        }
        if (change instanceof Change.Recut recut) {
            return style.say("with.recut", "cut", style.cut(recut.cut()));
        }
        if (change instanceof Change.Pins pins) {
            return style.say(
                    "with.pins",
                    "pin",
                    Paragraph.held(style.size(pins.diameter())),
                    "hole",
                    Paragraph.held(style.size(pins.hole())));
        }
        if (change instanceof Change.BondLine line) {
            return style.say("with.bond-line", "thickness", Paragraph.held(style.size(line.thickness())));
        }
        if (change instanceof Change.Glue glue) {
            return glue.name();
        }
        if (change instanceof Change.Material material) {
            return style.say("with.material", "material", material.name());
        }
        if (change instanceof Change.Part part) {
            return style.say("with.part", "replaced", part.replaced(), "material", part.name());
        }
        if (change instanceof Change.Preload preload) {
            return style.say("with.preload", "newtons", Long.toString(Math.round(preload.newtons())));
        }
        List<Change> all = ((Change.Together) change).changes();
        return style.joined("comma", all.stream().map(this::with).toList());
    }

    /** What came of it, such as "edge 0.16 to 0.08 mm shy; then it moves with the seasons ...". */
    String effect(Advice advice) {
        String effects = effects(advice);
        return style.say(
                effects.isEmpty() ? "effect.verdict" : "effect.and-verdict",
                "effects",
                effects,
                "verdict",
                style.verdict(advice.verdict()));
    }

    /** What it does to each thing that shows a difference; empty where nothing does. */
    String effects(Advice advice) {
        List<String> effects = new ArrayList<>(advice.effects().stream()
                .filter(AdviceWords::shows)
                .map(this::words)
                .toList());
        advice.press().ifPresent(press -> effects.add(press(press)));
        return style.joined("comma", effects);
    }

    private String press(Advice.Press press) {
        return style.say(
                "effect.press",
                "growth-before",
                style.hundredths(press.growthBefore()),
                "growth-after",
                style.hundredths(press.growthAfter()),
                "unit",
                style.unit(),
                "before",
                style.fixed(press.newtonsBefore(), 0),
                "after",
                style.fixed(press.newtonsAfter(), 0));
    }

    private static boolean shows(Advice.Effect effect) {
        double same = effect.kind().isUse() ? SAME_USE : SAME;
        return Math.abs(effect.after() - effect.before()) >= same;
    }

    private String words(Advice.Effect effect) {
        boolean isUse = effect.kind().isUse();
        return style.say(
                "effect.change",
                "what",
                name(effect.kind()),
                "before",
                isUse ? style.fixed(100 * effect.before(), 0) : style.hundredths(effect.before()),
                "after",
                isUse ? style.fixed(100 * effect.after(), 0) : style.hundredths(effect.after()),
                "unit",
                isUse ? "%" : style.unit());
    }

    private String name(Reason.Kind kind) {
        return style.say("effect." + style.keyOf(kind));
    }
}
