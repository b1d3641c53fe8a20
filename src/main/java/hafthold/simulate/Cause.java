package hafthold.simulate;

import hafthold.source.Message;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;

/**
 * What may lie behind a step.
 *
 * @param kind whose affair it is
 * @param event id of the event for {@link Kind#USE}; empty else
 */
public record Cause(Kind kind, String event) {
    /** Whose affair it is. */
    public enum Kind {
        /** The weather of the place; everything else as usual, within its ranges. */
        WEATHER,
        /** Wood that was far wetter or drier at final sanding than its maker thought. */
        FINISH,
        /** Air far drier or damper, where the knife lives, than the tables have it. */
        PLACE,
        /** Something that happened to the knife. */
        USE
    }

    /** Everything as usual. */
    public static final Cause WEATHER = new Cause(Kind.WEATHER, "");

    /** The finish alone is far off. */
    public static final Cause FINISH = new Cause(Kind.FINISH, "");

    /** The place alone is far off. */
    public static final Cause PLACE = new Cause(Kind.PLACE, "");

    /** How many times its usual range the input that is suspected may be off (assumed). */
    private static final double FAR_OFF = 4;

    private static final Set<Input> COMMON = EnumSet.of(Input.HABITS, Input.DRY_SEASON, Input.DAMP_SEASON);

    /** The key in answers. */
    public String word() {
        return kind == Kind.USE ? "use:" + event : kind.name().toLowerCase(Locale.ROOT);
    }

    /** What the bench calls it. */
    public Message called() {
        return kind == Kind.USE
                ? Message.tabled("bench.event." + event, event.replace('-', ' '))
                : Message.of("bench.claim.called." + word());
    }

    /** A doubt with the inputs of this cause further out; weather and habits stay as they are of any year and home. */
    Doubt widened(Doubt usual) {
        if (kind != Kind.FINISH && kind != Kind.PLACE) {
            return usual;
        }
        InputGroup group = kind == Kind.FINISH ? InputGroup.FINISH : InputGroup.PLACE;
        return new Doubt(
                input -> factor(group, input) * usual.ofOrder().applyAsDouble(input),
                (input, material) -> factor(group, input) * usual.ofMaterial().applyAsDouble(input, material));
    }

    private static double factor(InputGroup group, Input input) {
        return InputGroup.of(input) == group && !COMMON.contains(input) ? FAR_OFF : 1;
    }
}
