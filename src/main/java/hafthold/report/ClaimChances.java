package hafthold.report;

import hafthold.decide.CauseChance;
import hafthold.decide.Claim;
import hafthold.simulate.Cause;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * How likely each cause is, in words.
 *
 * @param style language and units
 * @param claim the knife, judged
 */
record ClaimChances(BenchStyle style, Claim claim) {
    /** Events below that are told together. */
    private static final double TOLD_ALONE = 0.03;

    /** After measuring, the likeliest first. */
    String after() {
        List<Told> told = new ArrayList<>();
        double others = 0;
        for (CauseChance chance : claim.chances()) {
            boolean isEvent = chance.cause().kind() == Cause.Kind.USE;
            if (isEvent && chance.after() < TOLD_ALONE) {
                others += chance.after();
            } else if (isEvent || !chance.cause().hasEvent()) {
                told.add(new Told(name(chance), chance.after()));
            }
        }
        both().forEach(kind -> told.add(new Told(name(kind), sum(kind, CauseChance::after))));
        told.sort(Comparator.comparingDouble(Told::chance).reversed());
        told.add(new Told(style.say("claim.called.others"), others));
        return joined(told);
    }

    /** Before anything was measured. */
    String before() {
        return joined(Arrays.stream(Cause.Kind.values())
                .map(kind -> new Told(name(kind), sum(kind, CauseChance::before)))
                .toList());
    }

    /** An event besides another cause is told by whose affairs they are. */
    private static List<Cause.Kind> both() {
        return List.of(Cause.Kind.FINISH_AND_USE, Cause.Kind.PLACE_AND_USE);
    }

    private String joined(List<Told> told) {
        return style.joined(
                "comma",
                told.stream()
                        .filter(one -> Math.round(100 * one.chance()) > 0)
                        .map(one -> share(one.name(), one.chance()))
                        .toList());
    }

    private double sum(Cause.Kind kind, ToDoubleFunction<CauseChance> of) {
        return claim.chances().stream()
                .filter(chance -> chance.cause().kind() == kind)
                .mapToDouble(of)
                .sum();
    }

    private String share(String cause, double share) {
        return style.say("claim.sure.chance", "cause", cause, "percent", Long.toString(Math.round(100 * share)));
    }

    private String name(CauseChance chance) {
        return chance.cause().hasEvent()
                ? style.say("claim.called.event", "event", new ClaimWords(style, claim).eventName(chance))
                : name(chance.cause().kind());
    }

    private String name(Cause.Kind kind) {
        return style.say("claim.called." + kind.word());
    }

    /** A cause in words and its chance. */
    private record Told(String name, double chance) {}
}
