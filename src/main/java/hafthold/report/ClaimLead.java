package hafthold.report;

import hafthold.decide.CauseChance;
import hafthold.decide.Claim;
import hafthold.knife.MeasuredStep;
import hafthold.knife.MeasuringPoint;
import hafthold.quantity.Band;
import hafthold.simulate.Cause;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Whose affair a returned knife is, in a sentence, and what may have acted besides.
 *
 * @param style language and units
 * @param claim the knife, judged
 */
record ClaimLead(BenchStyle style, Claim claim) {
    private static final List<Cause.Kind> ALIKE =
            List.of(Cause.Kind.FINISH, Cause.Kind.PLACE, Cause.Kind.FINISH_AND_PLACE);

    /** Measured so well, stock and home can mostly be told, m (a judgement). */
    private static final double FINE_ENOUGH = 0.03e-3;

    /** What is striking besides: what was suspected and would not show, sides that go apart. */
    List<String> besidesThat() {
        List<String> said = new ArrayList<>();
        if (!claim.suspectedInVain().isEmpty()) {
            said.add(say(
                    "lead.suspected",
                    "events",
                    style.joined(
                            "claim.or",
                            claim.suspectedInVain().stream()
                                    .map(id -> style.named("event", id))
                                    .toList())));
        }
        sidesApart()
                .ifPresent(metres ->
                        said.add(say("lead.sides", "size", new BenchLength(Band.exact(metres)).hundredths(style))));
        return said;
    }

    /** How far both sides go apart on one day, one proud and one shy, by more than they may be misread, m. */
    private Optional<Double> sidesApart() {
        return claim.history().measured().stream()
                .filter(step -> step.point() == MeasuringPoint.EDGE_LEFT)
                .flatMap(left -> claim.history().measured().stream()
                        .filter(right -> right.point() == MeasuringPoint.EDGE_RIGHT
                                && right.on().equals(left.on())
                                && right.step().metres() * left.step().metres() < 0
                                && apart(left, right)
                                        > left.error().metres() + right.error().metres())
                        .map(right -> apart(left, right)))
                .max(Double::compare);
    }

    private static double apart(MeasuredStep left, MeasuredStep right) {
        return Math.abs(left.step().metres() - right.step().metres());
    }

    /** What may have acted besides the one that is named. */
    private String besides(Cause.Kind other, double chance) {
        String key = "lead.besides." + other.word();
        String percent = Long.toString(percent(chance));
        return other == Cause.Kind.USE
                ? say(key, "event", names().eventName(claim.events().get(0)), "percent", percent)
                : say(key, "percent", percent);
    }

    private static long percent(double chance) {
        return Math.round(100 * chance);
    }

    /** That it may be part of the truth only, and what the rest may be. */
    String inPart() {
        return say(
                "lead.in-part",
                "whose",
                say("lead.in-part." + claim.verdict().word()),
                "others",
                style.joined(
                        "claim.or-that",
                        claim.besides().entrySet().stream()
                                .filter(other -> percent(other.getValue()) > 0)
                                .sorted(Map.Entry.<Cause.Kind, Double>comparingByValue()
                                        .reversed())
                                .map(other -> besides(other.getKey(), other.getValue()))
                                .toList()));
    }

    /** Whose affair it is. */
    String words() {
        return switch (claim.verdict()) {
            case WEATHER -> say(claim.isFlush() ? "lead.flush" : "lead.weather");
            case FINISH -> say("lead.finish." + finishSide());
            case PLACE -> say("lead.place." + placeSide());
            case USE -> say("lead.use", "event", events());
            case FINISH_AND_PLACE -> say("lead.both." + finishSide() + "." + placeSide());
            case FINISH_AND_USE -> say("lead.finish-and-use." + finishSide(), "event", events());
            case PLACE_AND_USE -> say("lead.place-and-use." + placeSide(), "event", events());
            case OPEN -> say("lead.open", "causes", joinedCauses());
            case NOT_EXPLAINED -> say("lead.not-explained");
            case TOO_COARSE ->
                say("lead.too-coarse", "error", new BenchLength(Band.exact(FINE_ENOUGH)).hundredths(style));
        };
    }

    private String finishSide() {
        return names().wetterAtFinish() ? "wetter" : "drier";
    }

    private String placeSide() {
        return names().drierPlace() ? "drier" : "damper";
    }

    /** The likeliest event and any other that is worth naming. */
    private String events() {
        List<CauseChance> all = claim.events();
        return style.joined(
                "claim.or",
                all.stream()
                        .filter(chance -> chance.equals(all.get(0)) || chance.after() >= Claim.WORTH_NAMING)
                        .map(names()::eventName)
                        .toList());
    }

    /** Those worth naming; stock and home are named together where nothing could tell them apart. */
    private String joinedCauses() {
        Set<Cause.Kind> kinds = new LinkedHashSet<>();
        byKind().forEach((kind, chance) -> {
            if (chance >= Claim.WORTH_NAMING) {
                kinds.add(kind);
                if (claim.history().isOnlyAtHome() && ALIKE.contains(kind)) {
                    kinds.addAll(ALIKE);
                }
            }
        });
        return style.joined(
                "claim.or",
                kinds.stream().map(kind -> say("called." + style.keyOf(kind))).toList());
    }

    /** Chances by whose affair a cause is, the likeliest first. */
    private Map<Cause.Kind, Double> byKind() {
        Map<Cause.Kind, Double> sums = new LinkedHashMap<>();
        claim.chances().forEach(chance -> sums.merge(chance.cause().kind(), chance.after(), Double::sum));
        Map<Cause.Kind, Double> sorted = new LinkedHashMap<>();
        sums.entrySet().stream()
                .sorted(Map.Entry.<Cause.Kind, Double>comparingByValue().reversed())
                .forEach(entry -> sorted.put(entry.getKey(), entry.getValue()));
        return sorted;
    }

    private ClaimWords names() {
        return new ClaimWords(style, claim);
    }

    private String say(String key, String... filling) {
        return style.say("claim." + key, filling);
    }
}
