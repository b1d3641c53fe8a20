package hafthold.report;

import hafthold.decide.CauseChance;
import hafthold.decide.Claim;
import hafthold.decide.ClaimRow;
import hafthold.decide.ClaimVerdict;
import hafthold.knife.MeasuredStep;
import hafthold.knife.MeasuringPoint;
import hafthold.quantity.Band;
import hafthold.simulate.Cause;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What comes back by itself, and how sure all that is, sentence by sentence.
 *
 * @param style language and units
 * @param claim the knife, judged
 */
record ClaimAdvice(BenchStyle style, Claim claim) {
    /** Less than that is flush, m. */
    private static final double FLUSH = 0.01e-3;

    /** More than that share of a step left, and little of it comes back. */
    private static final double MOST = 0.75;

    /** From there on strength is told, as a share of it: two thirds, where fit begins to ask for care. */
    private static final double WORKED = 2 / 3.0;

    /** Draws by their weight below which shares are rough (a judgement). */
    private static final double FEW = 30;

    /** From so many times the free movement of the thickness on, that is told. */
    private static final double THINS_MORE = 1.05;

    private static final Pattern HORN = Pattern.compile("horn(-.*)?");

    /** What comes back, and what does not. */
    List<String> back() {
        List<String> said = new ArrayList<>();
        ClaimWords words = new ClaimWords(style, claim);
        List<MeasuringPoint> told = new ArrayList<>();
        boolean explained = claim.verdict() != ClaimVerdict.NOT_EXPLAINED;
        if (!explained) {
            said.add(say("back.not-explained"));
        }
        for (ClaimRow row : claim.rows()) {
            MeasuringPoint point = row.measured().point();
            if (explained && !told.contains(point)) {
                told.add(point);
                said.add(row.settled()
                        .map(left -> settled(words, row.measured(), left))
                        .orElseGet(() -> say("back.unknown")));
            }
        }
        Band set = claim.year().set();
        if (set.value() >= FLUSH) {
            said.add(say("back.set", "size", new BenchLength(set).hundredths(style)));
        }
        if (HORN.matcher(claim.knife().scale().id()).matches()) {
            said.add(say("back.horn"));
        }
        worked(said, "back.glue", claim.year().glueUse().value());
        claim.year().crackUse().ifPresent(use -> worked(said, "back.crack", use.value()));
        if (explained && claim.events().stream().anyMatch(chance -> chance.after() >= Claim.WORTH_NAMING)) {
            said.add(say("back.heat"));
        }
        said.add(say("back.left-out"));
        return said.stream().distinct().toList();
    }

    private void worked(List<String> said, String key, double use) {
        if (use >= WORKED) {
            said.add(say(key, "percent", Long.toString(Math.round(100 * use))));
        }
    }

    private String settled(ClaimWords words, MeasuredStep measured, Band left) {
        MeasuringPoint point = measured.point();
        boolean most = Math.abs(left.value()) > MOST * Math.abs(measured.step().metres());
        return Math.abs(left.value()) < FLUSH
                ? say("back.all", "air", air(), "point", words.point(point))
                : say(
                        most ? "back.little" : "back.some",
                        "air",
                        air(),
                        "left",
                        words.step(point, left.value()),
                        "point",
                        words.point(point),
                        "low",
                        words.step(point, left.low()),
                        "high",
                        words.step(point, left.high()));
    }

    private String air() {
        return FitText.state(claim.knife().build().made(), style);
    }

    /** How sure that is. */
    List<String> sure() {
        List<String> said = new ArrayList<>(List.of(
                claim.verdict() == ClaimVerdict.NOT_EXPLAINED
                        ? say("sure.least-bad")
                        : say("sure.chances", "causes", new ClaimChances(style, claim).after()),
                say("sure.before", "causes", new ClaimChances(style, claim).before()),
                say(
                        "sure.samples",
                        "effective",
                        style.fixed(claim.effectiveSamples(), 0),
                        "all",
                        Long.toString((long) claim.samples() * claim.chances().size()))));
        if (claim.effectiveSamples() < FEW) {
            said.add(say("sure.few"));
        }
        if (claim.history().isOnlyAtHome()
                && claim.chances().stream().anyMatch(chance -> chance.cause().kind() == Cause.Kind.FINISH)) {
            said.add(say("sure.one"));
        }
        longAgo().ifPresent(said::add);
        if (measuresHeads() && claim.thinsOverFree() >= THINS_MORE) {
            said.add(say("sure.heads", "percent", Long.toString(Math.round(100 * (claim.thinsOverFree() - 1)))));
        }
        said.add(say("sure.taken"));
        said.add(say("sure.proof"));
        return said;
    }

    /** What an event of long ago may have to do with it, wherever stock or home or such an event may be behind it. */
    private Optional<String> longAgo() {
        if (!claim.isInQuestion() || !claim.history().isLongInUse()) {
            return Optional.empty();
        }
        List<CauseChance> left = claim.events().stream()
                .filter(chance -> chance.cause().longAgo())
                .toList();
        return Optional.of(
                left.isEmpty()
                        ? say("sure.long-ago.none")
                        : say(
                                "sure.long-ago.set",
                                "events",
                                style.joined(
                                        "claim.or",
                                        left.stream()
                                                .map(chance -> style.named(
                                                        "event", chance.cause().event()))
                                                .toList()),
                                "count",
                                new ClaimWords(style, claim)
                                        .count(left.stream()
                                                .mapToDouble(CauseChance::after)
                                                .sum())));
    }

    private boolean measuresHeads() {
        return claim.history().measured().stream().anyMatch(step -> step.point() == MeasuringPoint.PIN_HEADS);
    }

    private String say(String key, String... filling) {
        return style.say("claim." + key, filling);
    }
}
