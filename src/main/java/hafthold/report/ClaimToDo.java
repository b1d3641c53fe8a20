package hafthold.report;

import hafthold.decide.Claim;
import hafthold.decide.ClaimRow;
import hafthold.decide.ClaimVerdict;
import hafthold.decide.ReTrue;
import hafthold.knife.MeasuringPoint;
import hafthold.knife.WorkState.SettledAir;
import hafthold.quantity.Band;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What to do with a returned knife, sentence by sentence: what to measure next, when and where to true it up.
 *
 * @param style language and units
 * @param claim the knife, judged
 */
record ClaimToDo(BenchStyle style, Claim claim) {
    /** An edge that goes less far through the year, once flush, stays so for the eye, m (a judgement). */
    private static final double LITTLE = 0.05e-3;

    /** Air so many points from that of final sanding is another one: what a cheap hygrometer errs by. */
    private static final double FAR_PERCENT = 5;

    /** A part of a step from there on is worth a word, m. */
    private static final double TELLING = 0.02e-3;

    private static final int ALL_MONTHS = 12;

    /** What to do, in order. */
    List<String> words() {
        ReTrue retrue = claim.retrue();
        List<String> said = new ArrayList<>(List.of(say("do.loose")));
        if (asksForMore()) {
            said.add(say("do.measure", "air", air()));
        }
        if (asksForHeads()) {
            said.add(say("do.heads"));
        }
        if (claim.verdict() == ClaimVerdict.NOT_EXPLAINED) {
            said.add(say("do.measure-again"));
            said.add(say("do.cause-first"));
            return said;
        }
        if (claim.verdict() == ClaimVerdict.TOO_COARSE) {
            said.add(say("do.finer"));
            return said;
        }
        if (claim.isFlush()) {
            said.add(say("do.flush"));
            said.add(keep());
            return said;
        }
        if (restsOnThisPiece()) {
            said.add(say("do.coupon"));
        }
        if (claim.isStill()
                || retrue.humidityPercent().isEmpty()
                || retrue.restDays().isEmpty()) {
            said.add(say("do.still"));
            return said;
        }
        Band humidity = retrue.humidityPercent().get();
        Band days = retrue.restDays().get();
        said.add(say(
                "do.wait",
                "span",
                SettlingWords.span(style, days.value()),
                "humidity",
                style.fixed(humidity.value(), 0),
                "temperature",
                style.plain(retrue.celsius()),
                "low",
                SettlingWords.span(style, days.low()),
                "high",
                SettlingWords.span(style, days.high()),
                "moisture",
                style.fixed(retrue.moisturePercent().value(), 1)));
        ClaimWords words = new ClaimWords(style, claim);
        said.add(say(
                "do.retrue",
                "shy",
                words.step(MeasuringPoint.EDGES, -retrue.shyAfter().value()),
                "proud",
                words.step(MeasuringPoint.EDGES, retrue.proudAfter().value())));
        said.add(months());
        said.add(keep());
        nextOne(humidity.value()).ifPresent(said::add);
        return said;
    }

    /** In which months it may be trued up where it lives. */
    private String months() {
        List<String> months = claim.retrue().months().stream().map(style::month).toList();
        if (months.isEmpty()) {
            return say("do.months.never");
        }
        return months.size() == ALL_MONTHS
                ? say("do.months.any")
                : say("do.months", "months", style.joined("comma", months));
    }

    /** What the weather alone makes of it through the year. */
    private String keep() {
        ClaimWords words = new ClaimWords(style, claim);
        double low = claim.course().get(extreme(-1)).value();
        double high = claim.course().get(extreme(1)).value();
        return say(
                high - low < LITTLE ? "do.keep.still" : "do.keep",
                "low",
                words.step(MeasuringPoint.EDGES, low),
                "high",
                words.step(MeasuringPoint.EDGES, high));
    }

    /** In which air the next knife for that place is better finished, where the weather made the step. */
    private Optional<String> nextOne(double humidityPercent) {
        return claim.verdict() == ClaimVerdict.WEATHER
                        && claim.knife().build().made() instanceof SettledAir made
                        && Math.abs(made.humidity().percent() - humidityPercent) > FAR_PERCENT
                ? Optional.of(say("do.next", "humidity", style.fixed(humidityPercent, 0)))
                : Optional.empty();
    }

    /** Whether this piece of wood against the book makes more of the step than stock, home and use. */
    private boolean restsOnThisPiece() {
        double piece = Math.abs(claim.main().of(ClaimRow.Part.MATERIAL).value());
        return piece >= TELLING
                && Stream.of(ClaimRow.Part.FINISH, ClaimRow.Part.PLACE, ClaimRow.Part.USE)
                        .allMatch(part -> piece > Math.abs(claim.main().of(part).value()));
    }

    /** The day on which the edge stands lowest, side -1, or highest, side 1. */
    private int extreme(int side) {
        return IntStream.range(0, claim.course().size())
                .reduce((a, b) -> side * claim.course().get(a).value()
                                >= side * claim.course().get(b).value()
                        ? a
                        : b)
                .orElseThrow();
    }

    /** True where a reading in another air would tell more. */
    private boolean asksForMore() {
        return claim.isInQuestion() && claim.history().isOnlyAtHome();
    }

    /** Whether a set from long ago could be told from wood that was too wet by a reading that is not there. */
    private boolean asksForHeads() {
        return claim.isInQuestion()
                && claim.history().isLongInUse()
                && !claim.knife().build().pins().isEmpty()
                && claim.chances().stream().anyMatch(chance -> chance.cause().longAgo())
                && claim.history().measured().stream()
                        .noneMatch(step -> step.point() == MeasuringPoint.PIN_HEADS
                                && claim.history().isAtBench(step));
    }

    private String air() {
        return FitText.state(claim.knife().build().made(), style);
    }

    private String say(String key, String... filling) {
        return style.say("claim." + key, filling);
    }
}
