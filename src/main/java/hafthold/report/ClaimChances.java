package hafthold.report;

import hafthold.decide.CauseChance;
import hafthold.decide.Claim;
import hafthold.simulate.Cause;
import java.util.ArrayList;
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
        return told(CauseChance::after);
    }

    /** Before anything was measured. */
    String before() {
        return told(chance -> chance.cause().kind() == Cause.Kind.USE ? 0 : chance.before())
                + style.say("comma")
                + share(style.say("claim.called.use"), sum(Cause.Kind.USE, CauseChance::before));
    }

    private String told(ToDoubleFunction<CauseChance> of) {
        List<String> said = new ArrayList<>();
        double others = 0;
        for (CauseChance chance : claim.chances()) {
            boolean use = chance.cause().kind() == Cause.Kind.USE;
            double share = of.applyAsDouble(chance);
            if (use && share < TOLD_ALONE) {
                others += share;
            } else if (Math.round(100 * share) > 0) {
                said.add(share(name(chance), share));
            }
        }
        if (Math.round(100 * others) > 0) {
            said.add(share(style.say("claim.called.others"), others));
        }
        return style.joined("comma", said);
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
        return chance.cause().kind() == Cause.Kind.USE
                ? style.say("claim.called.event", "event", new ClaimWords(style, claim).eventName(chance))
                : style.say("claim.called." + chance.cause().word());
    }
}
