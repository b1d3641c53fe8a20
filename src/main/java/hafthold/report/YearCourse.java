package hafthold.report;

import hafthold.decide.Reason;
import hafthold.decide.Verdict;
import hafthold.quantity.Band;
import hafthold.simulate.HandleYear;
import java.util.List;

/**
 * How the edge goes through the year that repeats. Where the air hardly changes, as by the equator, a handle takes its
 * size once and keeps it; elsewhere it comes and goes with the seasons.
 *
 * @param swingMetres highest less lowest daily mean of the edge; 0 where no days are known
 * @param lastingMetres mean of the year, positive where the scale stands proud; 0 where no days are known
 */
record YearCourse(double swingMetres, double lastingMetres) {
    /** A swing below this share of what lasts is no matter of seasons (a judgement). */
    private static final double LITTLE = 1.0 / 3;

    /** What no finger minds: a quarter of a sheet of office paper. */
    private static final double FELT_METRES = 0.025e-3;

    /** Reads the days of a year. */
    static YearCourse of(HandleYear year) {
        List<Double> days = year.days().edgeOffset().stream().map(Band::value).toList();
        double highest = days.stream().mapToDouble(day -> day).max().orElse(0);
        double lowest = days.stream().mapToDouble(day -> day).min().orElse(0);
        return new YearCourse(
                highest - lowest,
                days.stream().mapToDouble(day -> day).average().orElse(0));
    }

    /** Whether it moves once and then stays about where it is. */
    boolean isOnce() {
        double lasting = Math.abs(lastingMetres);
        return lasting >= FELT_METRES && (swingMetres < LITTLE * lasting || swingMetres < FELT_METRES);
    }

    /** Which side stays up. */
    EdgeStep.Side side() {
        return lastingMetres < 0 ? EdgeStep.Side.SHY : EdgeStep.Side.PROUD;
    }

    /** What lasts, without its sign. */
    Band lasting() {
        return Band.exact(Math.abs(lastingMetres));
    }

    /**
     * The word under which a verdict is told: that of the verdict; where it asks for care, "care.once" for a handle that
     * takes its size once, and "care.watch" for one that needs it for another reason than its seasons: what glue or scale
     * bears, what an event does, or the way from place to place.
     *
     * @param reasons everything that is not the best class of work, the deciding one first
     * @param isWater whether water moves it, so that there are first weeks to speak of
     */
    static String word(Verdict verdict, HandleYear year, List<Reason> reasons, boolean isWater) {
        if (verdict != Verdict.CARE) {
            return verdict.word();
        }
        YearCourse course = of(year);
        boolean isMove = reasons.isEmpty() || isMove(reasons.get(0).kind());
        if (!isMove || EdgeStep.worst(year).isFlush()) {
            return "care.watch";
        }
        if (!course.isOnce()) {
            return verdict.word();
        }
        return isWater && year.stays().isEmpty() ? "care.once" : "care.watch";
    }

    private static boolean isMove(Reason.Kind kind) {
        return !kind.canHarm();
    }
}
