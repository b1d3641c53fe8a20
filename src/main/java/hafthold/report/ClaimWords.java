package hafthold.report;

import hafthold.decide.CauseChance;
import hafthold.decide.Claim;
import hafthold.decide.ClaimRow;
import hafthold.knife.MeasuredStep;
import hafthold.knife.MeasuringPoint;
import hafthold.quantity.Band;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The verdict on a returned knife in words, and what it is put together from.
 *
 * @param style language and units
 * @param claim the knife, judged
 */
record ClaimWords(BenchStyle style, Claim claim) {
    private static final double CERTAIN = 0.95;
    private static final double VERY_LIKELY = 0.8;
    private static final double LIKELY = 0.6;
    private static final double RATHER = 0.5;
    private static final double FLUSH = 0.005e-3;

    /** Which knife, from where, whose affair. */
    String title() {
        return say("title", "knife", knife(), "place", style.tell(claim.home().name()), "verdict", verdictAndSure());
    }

    /** Which knife, from where. */
    String pageTitle() {
        return say(
                "page-title", "knife", knife(), "place", style.tell(claim.home().name()));
    }

    private String knife() {
        return claim.knife().build().order().name().orElse(style.say("fit.unnamed"));
    }

    /** Whose affair, and how likely. */
    String verdictAndSure() {
        return !claim.namesACause()
                ? called()
                : say(claim.mayBeInPart() ? "stamp.in-part" : "stamp", "verdict", called(), "sure", sure(claim.sure()));
    }

    private String called() {
        return say("called." + claim.verdict().word());
    }

    private String sure(double chance) {
        String key = chance >= CERTAIN
                ? "certain"
                : chance >= VERY_LIKELY
                        ? "very-likely"
                        : chance >= LIKELY ? "likely" : chance >= RATHER ? "rather" : "likeliest";
        return say("sure." + key);
    }

    /** The verdict and what it rests on, a few sentences. */
    String verdict() {
        ClaimLead lead = new ClaimLead(style, claim);
        List<String> sentences = new ArrayList<>(List.of(lead.words()));
        if (claim.mayBeInPart()) {
            sentences.add(lead.inPart());
        }
        sentences.addAll(lead.besidesThat());
        String more = claim.rows().stream()
                .filter(row -> !row.consistent() && !row.equals(claim.main()))
                .min(Comparator.comparingDouble(ClaimRow::asFarOut))
                .map(row -> odds("odds.more", row, ""))
                .orElse("");
        sentences.add(odds("odds", claim.main(), more));
        sentences.add(say(claim.consistent() ? "consistent" : claim.isBorderline() ? "borderline" : "inconsistent"));
        double use = Math.max(
                claim.year().glueUse().value(),
                claim.year().crackUse().map(Band::value).orElse(0.0));
        if (use > 1) {
            sentences.add(say("lead.worked", "percent", Long.toString(Math.round(100 * use))));
        }
        return String.join(" ", sentences);
    }

    /** An event by its name, and whether that was longer ago. */
    String eventName(CauseChance chance) {
        String event = style.named("event", chance.cause().event());
        return chance.cause().longAgo() ? say("event.long-ago", "event", event) : event;
    }

    /** Wood that was wetter than stated has shrunk more since: edges lie lower, heads stand higher, rings are tighter. */
    boolean wetterAtFinish() {
        return movesUp(ClaimRow.Part.FINISH) < 0;
    }

    /** Air that is drier than that of the tables leaves less water in the wood. */
    boolean drierPlace() {
        return movesUp(ClaimRow.Part.PLACE) < 0;
    }

    private double movesUp(ClaimRow.Part part) {
        double step = claim.main().of(part).value();
        return claim.main().measured().point().risesWithDamp() ? step : -step;
    }

    private String odds(String key, ClaimRow row, String more) {
        MeasuredStep measured = row.measured();
        return say(
                key,
                "more",
                more,
                "count",
                count(row.asFarOut()),
                "point",
                point(measured.point()),
                "step",
                step(measured),
                "day",
                day(measured.on()));
    }

    /** Which step is shared out. */
    String shared(ClaimRow row) {
        MeasuredStep measured = row.measured();
        return say("shares", "step", step(measured), "point", point(measured.point()), "day", day(measured.on()));
    }

    /** Of a hundred. */
    String count(double chance) {
        long count = Math.round(100 * chance);
        return count == 0 ? say("odds.none") : Long.toString(count);
    }

    /** Name of a point. */
    String point(MeasuringPoint point) {
        return say("point." + style.keyOf(point));
    }

    /** A day of a year. */
    String day(LocalDate day) {
        return style.words().date(day);
    }

    /** The same where there is little room. */
    String shortDay(LocalDate day) {
        return say(
                "short-date",
                "day",
                Integer.toString(day.getDayOfMonth()),
                "month",
                style.shortMonth(day.getMonthValue()),
                "year",
                Integer.toString(day.getYear()));
    }

    /** A measured step with its side. */
    String step(MeasuredStep measured) {
        return step(measured.point(), measured.step().metres());
    }

    /** A step with its side. */
    String step(MeasuringPoint point, double metres) {
        boolean isNone = Math.abs(metres) < FLUSH;
        if (point == MeasuringPoint.PIN_GAP) {
            return isNone || metres < 0 ? say("step.none") : say("step.wide", "size", size(metres));
        }
        if (isNone) {
            return style.say("flush");
        }
        String down = point == MeasuringPoint.PIN_HEADS ? "step.sunk" : "step.shy";
        return say(metres < 0 ? down : "step.proud", "size", size(Math.abs(metres)));
    }

    private String size(double metres) {
        return new BenchLength(Band.exact(metres)).hundredths(style);
    }

    /** A step with its side and without its unit, for a table headed by the unit. */
    String cell(MeasuringPoint point, double metres) {
        if (Math.abs(metres) < FLUSH) {
            return step(point, 0);
        }
        String down = point == MeasuringPoint.PIN_HEADS ? "step.sunk" : "step.shy";
        String size = style.hundredths(Math.abs(metres));
        return point == MeasuringPoint.PIN_GAP
                ? style.hundredths(metres)
                : say(metres < 0 ? down : "step.proud", "size", size);
    }

    private String say(String key, String... filling) {
        return style.say("claim." + key, filling);
    }
}
