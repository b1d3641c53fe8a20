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

    private AdviceWords() {}

    /** What to do, as a sentence begins. */
    static String toDo(Change change) {
        String text = clause(change);
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private static String clause(Change change) {
        if (change instanceof Change.Condition condition) {
            return "let the stock settle at "
                    + AnswerWords.plain(condition.humidity().percent())
                    + " % humidity (" + AnswerWords.percent(condition.moistureFraction())
                    + " % MC) before you join it and before you sand"
                    + (condition.atLimit()
                            ? condition.humidity().fraction() < HALF
                                    ? "; drier than that is not advised"
                                    : "; damper than that is not advised"
                            : "");
        }
        if (change instanceof Change.Recut recut) {
            return switch (recut.cut()) {
                case QUARTER -> "cut the scales quarter-sawn";
                case FLAT -> "cut the scales along the grain, flat-sawn";
                default -> "cut the scales " + recut.cut().word();
            };
        }
        if (change instanceof Change.Pins pins) {
            return "use " + millimetres(pins.diameter().millimetres()) + " pins in "
                    + millimetres(pins.hole().millimetres()) + " holes, the ring "
                    + fill(pins.fill());
        }
        if (change instanceof Change.BondLine line) {
            return "leave a glue line of " + millimetres(line.thickness().millimetres());
        }
        if (change instanceof Change.Glue glue) {
            return "bond with " + glue.name();
        }
        if (change instanceof Change.Material material) {
            return "make the scales of " + material.name();
        }
        if (change instanceof Change.Part part) {
            return "make part " + part.place() + " of " + part.name();
        }
        if (change instanceof Change.Preload preload) {
            return "draw the nut up with " + Math.round(preload.newtons()) + " N";
        }
        List<Change> all = ((Change.Together) change).changes();
        return all.stream().map(AdviceWords::clause).collect(Collectors.joining("; and "));
    }

    private static String fill(Pin.Fill fill) {
        return switch (fill) {
            case OPEN -> "left open";
            case HARD_EPOXY -> "filled with hard epoxy";
            case FLEXIBLE -> "filled with something that gives";
        };
    }

    /** What came of it, such as "edge 0.16 to 0.08 mm shy; then it moves with the seasons ...". */
    static String effect(Advice advice) {
        String effects = effects(advice);
        return (effects.isEmpty() ? "" : effects + "; ") + "verdict then: "
                + advice.verdict().word();
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
        return switch (kind) {
            case EDGE_SHY -> "edge shy";
            case EDGE_PROUD -> "edge proud";
            case PIN_HEAD_PROUD -> "pin heads up";
            case PIN_HEAD_SUNK -> "pin heads sunk";
            case PIN_GAP -> "ring beside pins";
            case END_GAP -> "ends short";
            case END_PROUD -> "ends proud";
            case PIN_CRACK -> "split beside pins";
            case RIDGE -> "ridge between its parts";
            case PARTS_JOINT -> "line between its parts";
            case GLUE_LINE -> "glue line";
            case SCALE_SPLIT -> "pull across the grain";
            case END_LETS_GO -> "ends if it lets go";
            case SOFTENING -> "margin to softening";
            case STACK_GAP -> "looseness";
            case STACK_SET -> "lasting loss";
        };
    }

    private static String millimetres(double millimetres) {
        return AnswerWords.plain(millimetres) + Paragraph.HOLD + "mm";
    }

    /** A cut as an adjective. */
    static String cutWord(Cut cut) {
        return switch (cut) {
            case FLAT -> "flat-sawn";
            case RIFT -> "rift-sawn";
            case QUARTER -> "quarter-sawn";
            case CROSS -> "cross-cut";
            case BURL -> "burl";
            case NONE -> "as made";
        };
    }
}
