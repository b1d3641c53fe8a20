package hafthold.decide;

import hafthold.decide.SeasonAnswer.Call;
import hafthold.decide.SeasonAnswer.Conditioning;
import hafthold.decide.SeasonAnswer.FinishCall;
import hafthold.decide.SeasonAnswer.GlueCall;
import hafthold.decide.SeasonAnswer.Hindrance;
import hafthold.knife.SeasonLimits;
import hafthold.simulate.BlankYear.Week;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * What to do in a week, by the workshop's judgement.
 *
 * @param limits when stock is fit to be glued up or sanded flush
 */
record SeasonRule(SeasonLimits limits) {
    /** Use of the limits that makes no odds from week to week. */
    private static final double NO_ODDS = 0.1;

    /** Chances that differ by less count as alike. */
    private static final double AS_SURE = 0.05;

    private static final Comparator<SeasonWeek> USE = Comparator.comparingDouble(SeasonWeek::use);

    /** The week with the least use of the limits. */
    static SeasonWeek least(List<SeasonWeek> weeks) {
        return weeks.stream().min(USE).orElseThrow();
    }

    /** The week with the largest. */
    static SeasonWeek most(List<SeasonWeek> weeks) {
        return weeks.stream().max(USE).orElseThrow();
    }

    /**
     * Weeks in which it is best sanded: as good a verdict as any, and nearly as little use of the limits or nearly as sure;
     * only weeks that will do, where there are any. A single week between two of them counts as well.
     */
    IntPredicate best(List<SeasonWeek> weeks, Optional<Conditioning> conditioning) {
        IntPredicate good = good(weeks, conditioning);
        IntPredicate near = nearBest(weeks);
        boolean anyGood = IntStream.range(0, weeks.size()).anyMatch(week -> near.test(week) && good.test(week));
        IntPredicate chosen = week -> near.test(week) && (!anyGood || good.test(week));
        int count = weeks.size();
        return week -> chosen.test(week)
                || (chosen.test((week + 1) % count)
                        && chosen.test((week + count - 1) % count)
                        && weeks.get(week).holds());
    }

    private IntPredicate nearBest(List<SeasonWeek> weeks) {
        Verdict verdict = weeks.stream()
                .map(SeasonWeek::verdict)
                .min(Comparator.naturalOrder())
                .orElseThrow();
        double least = weeks.stream()
                .filter(week -> week.verdict() == verdict)
                .mapToDouble(SeasonWeek::use)
                .min()
                .orElseThrow();
        double most = most(weeks).use();
        double upTo = most - least < NO_ODDS ? most : least + limits.nearBest() * (most - least);
        double surest =
                weeks.stream().mapToDouble(week -> week.keeps().orElse(0)).max().orElseThrow();
        double sure = Math.max(limits.sureEnough(), surest - AS_SURE);
        return number -> {
            SeasonWeek week = weeks.get(number);
            boolean isAsSure = week.holds() && week.keeps().orElse(-1) >= sure;
            return week.verdict() == verdict && (week.use() <= upTo || isAsSure);
        };
    }

    /** The other end of the year; none where it makes no odds. */
    IntPredicate worst(List<SeasonWeek> weeks) {
        double least = least(weeks).use();
        double most = most(weeks).use();
        double from = most - limits.nearBest() * (most - least);
        return week -> most - least >= NO_ODDS && weeks.get(week).use() >= from;
    }

    /**
     * Weeks that will do: no change of the build is asked for, and that is sure enough, or about as sure as the best air
     * would make it.
     */
    IntPredicate good(List<SeasonWeek> weeks, Optional<Conditioning> conditioning) {
        double surest = conditioning
                .filter(air -> air.keeps().isPresent())
                .map(air -> air.keeps().getAsDouble())
                .orElse(1.0);
        double enough = Math.min(limits.sureEnough(), surest - AS_SURE);
        return week -> weeks.get(week).holds() && weeks.get(week).keeps().orElse(1) >= enough;
    }

    /**
     * Whether to sand it flush.
     *
     * @param day today, from 0 on 1 January
     * @param now week of today
     */
    FinishCall finish(List<SeasonWeek> weeks, int now, int day, Optional<Conditioning> conditioning) {
        if (weeks.get(now).verdict() == Verdict.UNKNOWN) {
            return new FinishCall(Call.OPEN, 0);
        }
        IntPredicate good = good(weeks, conditioning);
        if (good.test(now)) {
            return new FinishCall(Call.GO, 0);
        }
        List<Week> blanks = weeks.stream().map(SeasonWeek::blank).toList();
        Optional<Integer> wait = DaySpan.of(blanks, good).stream()
                .map(span -> span.daysAfter(day))
                .min(Comparator.naturalOrder());
        if (wait.isPresent()) {
            return new FinishCall(Call.WAIT, wait.get());
        }
        boolean helps = conditioning
                .filter(air -> air.verdict().compareTo(Verdict.CARE) <= 0)
                .isPresent();
        return new FinishCall(helps ? Call.CONDITION : Call.CHANGE, 0);
    }

    /** Whether to glue it up; likewise. */
    GlueCall glue(List<SeasonWeek> weeks, int now, int day, Optional<Conditioning> conditioning) {
        List<Week> blanks = weeks.stream().map(SeasonWeek::blank).toList();
        List<Hindrance> today = hindrances(blanks.get(now), conditioning);
        int wait = today.isEmpty()
                ? 0
                : DaySpan.of(
                                blanks,
                                week -> hindrances(blanks.get(week), conditioning)
                                        .isEmpty())
                        .stream()
                        .mapToInt(span -> span.daysAfter(day))
                        .min()
                        .orElse(0);
        return new GlueCall(today, wait);
    }

    private List<Hindrance> hindrances(Week blank, Optional<Conditioning> conditioning) {
        List<Hindrance> hindrances = new ArrayList<>();
        conditioning.ifPresent(air -> {
            if (Math.abs(blank.surfaceFraction() - blank.coreFraction()) > limits.glueGradientFraction()) {
                hindrances.add(Hindrance.GRADIENT);
            }
            double off = blank.meanFraction() - air.moistureFraction();
            if (Math.abs(off) > limits.glueOffTargetFraction()) {
                hindrances.add(off > 0 ? Hindrance.TOO_DAMP : Hindrance.TOO_DRY);
            }
        });
        if (blank.celsius() < limits.glueCoolestCelsius()) {
            hindrances.add(Hindrance.TOO_COOL);
        }
        if (blank.celsius() > limits.glueWarmestCelsius()) {
            hindrances.add(Hindrance.TOO_WARM);
        }
        return hindrances;
    }
}
