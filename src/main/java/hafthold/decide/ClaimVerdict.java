package hafthold.decide;

import hafthold.simulate.Cause.Kind;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Whose affair a step on a returned knife is. */
public enum ClaimVerdict {
    /** The weather where it lives explains what was measured, with everything else as usual. */
    WEATHER(Kind.WEATHER),
    /** The wood was wetter or drier at final sanding than was thought. */
    FINISH(Kind.FINISH),
    /** The air where it lives is drier or damper than that of the tables. */
    PLACE(Kind.PLACE),
    /** Something that happened to it. */
    USE(Kind.USE),
    /** Both the wood at final sanding and the air where it lives. */
    FINISH_AND_PLACE(Kind.FINISH_AND_PLACE),
    /** Something that happened to it, and the wood at final sanding. */
    FINISH_AND_USE(Kind.FINISH_AND_USE),
    /** Something that happened to it, and the air where it lives. */
    PLACE_AND_USE(Kind.PLACE_AND_USE),
    /** More than one of these would do, and what was measured does not tell them apart. */
    OPEN,
    /** None of these explains it. */
    NOT_EXPLAINED,
    /** What was measured may be misread by more than any stock or home would move it: it tells next to nothing. */
    TOO_COARSE;

    private final Optional<Kind> kind;

    ClaimVerdict() {
        this.kind = Optional.empty();
    }

    ClaimVerdict(Kind kind) {
        this.kind = Optional.of(kind);
    }

    /** The verdict that names causes of a kind. */
    static ClaimVerdict naming(Kind kind) {
        return Arrays.stream(values())
                .filter(verdict -> verdict.kind.filter(kind::equals).isPresent())
                .findFirst()
                .orElseThrow();
    }

    /** The kind of cause that it names; empty where it names none. */
    public Optional<Kind> kind() {
        return kind;
    }

    /** True where it says what it was. */
    public boolean namesACause() {
        return kind.isPresent();
    }

    /** The word used in answers. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
