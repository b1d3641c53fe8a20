package hafthold.simulate;

import hafthold.source.Message;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * What may lie behind a step: one cause, or two at once.
 *
 * @param kind whose affair it is
 * @param event id of the event where something happened to it; empty else
 * @param longAgo whether that was longer ago than the weeks before the first measuring
 */
public record Cause(Kind kind, String event, boolean longAgo) {
    /** Whose affair it is. */
    public enum Kind {
        /** The weather of the place; everything else as usual, within its ranges. */
        WEATHER,
        /** Wood that was far wetter or drier at final sanding than its maker thought. */
        FINISH,
        /** Air far drier or damper, where the knife lives, than the tables have it. */
        PLACE,
        /** Something that happened to the knife. */
        USE,
        /** The finish and the place at once. */
        FINISH_AND_PLACE(FINISH, PLACE),
        /** Something that happened to a knife whose finish was off. */
        FINISH_AND_USE(FINISH, USE),
        /** Something that happened to a knife whose place is off. */
        PLACE_AND_USE(PLACE, USE);

        /** Each by itself. */
        public static final List<Kind> SINGLE = List.of(FINISH, PLACE, USE);

        private final List<Kind> both;

        Kind(Kind... both) {
            this.both = List.of(both);
        }

        /** Whether that is part of it, or all of it. */
        public boolean includes(Kind other) {
            return this == other || both.contains(other);
        }

        /** The two of which it is made; none where it is one. */
        public List<Kind> both() {
            return both;
        }

        /** The key in answers. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** Everything as usual. */
    public static final Cause WEATHER = new Cause(Kind.WEATHER, "");

    /** The finish alone is far off. */
    public static final Cause FINISH = new Cause(Kind.FINISH, "");

    /** The place alone is far off. */
    public static final Cause PLACE = new Cause(Kind.PLACE, "");

    /** Both are far off. */
    public static final Cause FINISH_AND_PLACE = new Cause(Kind.FINISH_AND_PLACE, "");

    /** How many times its usual range the input that is suspected may be off (assumed). */
    private static final double FAR_OFF = 4;

    private static final Set<Input> COMMON = EnumSet.of(Input.HABITS, Input.DRY_SEASON, Input.DAMP_SEASON);

    /** A cause; an event in the weeks before the first measuring. */
    public Cause(Kind kind, String event) {
        this(kind, event, false);
    }

    /** An event in the weeks before the first measuring. */
    public static Cause lately(String event) {
        return new Cause(Kind.USE, event, false);
    }

    /** The same longer ago. */
    public static Cause longAgo(String event) {
        return new Cause(Kind.USE, event, true);
    }

    /** The same event besides a finish or a place that is far off. */
    public Cause besides(Cause off) {
        return new Cause(off.kind == Kind.FINISH ? Kind.FINISH_AND_USE : Kind.PLACE_AND_USE, event, longAgo);
    }

    /** Whether something happened to the knife. */
    public boolean hasEvent() {
        return kind.includes(Kind.USE);
    }

    /** The key in answers. */
    public String word() {
        return hasEvent() ? kind.word() + (longAgo ? "-long-ago:" : ":") + event : kind.word();
    }

    /** What the bench calls it. */
    public Message called() {
        return kind == Kind.USE
                ? Message.tabled("bench.event." + event, event.replace('-', ' '))
                : Message.of("bench.claim.called." + kind.word());
    }

    /** A doubt with the inputs of this cause further out; weather and habits stay as they are of any year and home. */
    Doubt widened(Doubt usual) {
        Set<InputGroup> off = off();
        if (off.isEmpty()) {
            return usual;
        }
        return new Doubt(
                input -> factor(off, input) * usual.ofOrder().applyAsDouble(input),
                (input, material) -> factor(off, input) * usual.ofMaterial().applyAsDouble(input, material),
                usual.ofSeason());
    }

    private Set<InputGroup> off() {
        Set<InputGroup> off = EnumSet.noneOf(InputGroup.class);
        if (kind.includes(Kind.FINISH)) {
            off.add(InputGroup.FINISH);
        }
        if (kind.includes(Kind.PLACE)) {
            off.add(InputGroup.PLACE);
        }
        return off;
    }

    private static double factor(Set<InputGroup> off, Input input) {
        return off.contains(InputGroup.of(input)) && !COMMON.contains(input) ? FAR_OFF : 1;
    }
}
