package hafthold.report;

import hafthold.decide.Reason;
import hafthold.decide.Season;
import hafthold.decide.SeasonAnswer;
import hafthold.decide.SeasonWeek;
import hafthold.quantity.Band;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * How far to leave the edges off flush if it cannot wait, in sentences for the bench.
 *
 * @param style language and units
 * @param season the plan
 * @param answer one material of it
 */
record SeasonAllowance(BenchStyle style, Season season, SeasonAnswer answer) {
    private static final Set<Reason.Kind> EDGES = Set.of(Reason.Kind.EDGE_SHY, Reason.Kind.EDGE_PROUD);

    /** Of less moisture than that between the ends of the year no rate is read, points. */
    private static final double LEAST_POINTS = 0.3;

    /** Nobody leaves an edge proud by less than that on purpose, m. */
    private static final double NO_DIFFERENCE = 0.02e-3;

    /** How far to leave the edges if it cannot wait, and what that does not help. */
    String words() {
        SeasonWeek week = answer.today();
        Band proud = week.allowance().proud();
        if (Math.abs(proud.value()) < NO_DIFFERENCE) {
            return style.say("season.leave.flush", "size", new BenchLength(Band.exact(NO_DIFFERENCE)).text(both()));
        }
        boolean isProud = proud.value() > 0;
        Band size = isProud
                ? new Band(Math.max(0, proud.low()), proud.value(), Math.max(proud.value(), proud.high()))
                : new Band(Math.max(0, -proud.high()), -proud.value(), Math.max(-proud.value(), -proud.low()));
        String told = style.say(
                isProud ? "season.leave.proud" : "season.leave.shy",
                "size",
                new BenchLength(Band.exact(size.value())).text(both()),
                "range",
                size.isExact() ? "" : " (" + style.withUnit(new BenchLength(size).hundredthsRange(style)) + ")",
                "shy",
                new BenchLength(Band.exact(week.allowance().shyAfter())).text(style),
                "proud",
                new BenchLength(Band.exact(week.allowance().proudAfter())).text(style));
        List<String> sentences = new ArrayList<>(List.of(told));
        if (isProud && proud.value() > season.held().proud().metres()) {
            sentences.add(style.say("season.leave.felt"));
        }
        boolean edgeDecides = week.reasons().stream()
                .findFirst()
                .map(Reason::kind)
                .filter(EDGES::contains)
                .isPresent();
        if (!week.holds() && !edgeDecides) {
            sentences.add(style.say("season.leave.not-edge"));
        }
        return String.join(" ", sentences);
    }

    private BenchStyle both() {
        return style.isThou() ? style : new BenchStyle(LengthUnits.BOTH, style.words());
    }

    /** How far the customer's year moves with a point of moisture at sanding, m; empty where the year does not tell. */
    Optional<Double> perPoint() {
        SeasonWeek one = answer.bestWeek();
        SeasonWeek other = answer.worstWeek();
        double points =
                100 * (other.year().moisture().finish() - one.year().moisture().finish());
        double moved =
                other.allowance().proud().value() - one.allowance().proud().value();
        return Math.abs(points) < LEAST_POINTS ? Optional.empty() : Optional.of(Math.abs(moved / points));
    }
}
