package hafthold.decide;

import hafthold.material.Cut;
import hafthold.quantity.Band;
import hafthold.simulate.BlankYear;
import hafthold.simulate.HandleYear;
import hafthold.simulate.ScaleChoice;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One material through the workshop's year: when to sand it flush and when to glue it for one customer.
 *
 * @param scale what it is about
 * @param blank its blank through the year
 * @param weeks what comes of each week, from 1 January
 * @param now number of the week of today, from 0
 * @param best spans of the weeks in which it is best sanded flush; the whole year where it makes no odds
 * @param worst spans of the worst weeks; none where it makes no odds
 * @param good spans of the weeks that will do
 * @param finish whether to sand it flush today
 * @param glue whether to glue it up today
 * @param conditioning the air to let it settle in first; empty for what takes up no water
 * @param cuts the cuts of the wood side by side; none for what has no cut
 */
public record SeasonAnswer(
        ScaleChoice scale,
        BlankYear blank,
        List<SeasonWeek> weeks,
        int now,
        List<DaySpan> best,
        List<DaySpan> worst,
        List<DaySpan> good,
        FinishCall finish,
        GlueCall glue,
        Optional<Conditioning> conditioning,
        List<CutChoice> cuts) {

    /** Keeps its own copies. */
    public SeasonAnswer {
        weeks = List.copyOf(weeks);
        best = List.copyOf(best);
        worst = List.copyOf(worst);
        good = List.copyOf(good);
        cuts = List.copyOf(cuts);
    }

    /** What comes of sanding it today. */
    public SeasonWeek today() {
        return weeks.get(now);
    }

    /** True where it makes no odds in which week it is sanded. */
    public boolean anyWeek() {
        return best.size() == 1 && best.get(0).isWholeYear();
    }

    /** The week with the least use of the limits. */
    public SeasonWeek bestWeek() {
        return SeasonRule.least(weeks);
    }

    /** The week with the largest. */
    public SeasonWeek worstWeek() {
        return SeasonRule.most(weeks);
    }

    /**
     * Whether to sand flush today.
     *
     * @param call what to do
     * @param waitDays days until the next week that will do, 0 where there is none or it is this one
     */
    public record FinishCall(Call call, int waitDays) {}

    /** What to do today. */
    public enum Call {
        /** Sand it. */
        GO,
        /** Wait: the workshop's own air brings it. */
        WAIT,
        /** The workshop's air never brings it: let it settle in other air first. */
        CONDITION,
        /** No moisture at sanding will do: another cut, build or material. */
        CHANGE,
        /** A limit cannot be judged, as a strength is not known. */
        OPEN
    }

    /** Other air to settle in that may be used instead of waiting: of stock that is not at rest there already. */
    public Optional<Conditioning> box() {
        return conditioning
                .filter(air -> finish.call() == Call.WAIT)
                .filter(air -> air.blankDays().value() > 0);
    }

    /** The same where it is there before the workshop's air, even if water goes slowly through the piece. */
    public Optional<Conditioning> soonerBox() {
        return box().filter(air -> air.blankDays().high() < finish.waitDays());
    }

    /**
     * Whether to glue up today.
     *
     * @param hindrances what stands against it; none where nothing does
     * @param waitDays days until a week in which nothing does; 0 where there is none or it is this one
     */
    public record GlueCall(List<Hindrance> hindrances, int waitDays) {

        /** Keeps its own copy. */
        public GlueCall {
            hindrances = List.copyOf(hindrances);
        }

        /** True where nothing stands against it. */
        public boolean isGo() {
            return hindrances.isEmpty();
        }
    }

    /** What stands against gluing. */
    public enum Hindrance {
        /** Its surface is drier or damper than its middle: it will cup after. */
        GRADIENT,
        /** It is damper than it should be sanded at. */
        TOO_DAMP,
        /** It is drier. */
        TOO_DRY,
        /** The workshop is cooler than glue is spread in. */
        TOO_COOL,
        /** It is warmer. */
        TOO_WARM
    }

    /**
     * Air to let the stock settle in before it is glued and sanded.
     *
     * @param celsius its temperature: that of the workshop, or of a living room where it is too cool or warm for glue
     * @param humidityFraction its relative humidity
     * @param moistureFraction moisture content that the stock then holds, kg/kg
     * @param blankDays days for the blank as it is kept: until it is within half a point of there; low, value, high
     * @param scaleDays likewise, sawn to the thickness of the scale and open on both faces first
     * @param verdict on the customer's year of a scale sanded then
     * @param keeps share of sampled years that then need no change of the build; empty where that is not known
     * @param after what comes of it
     */
    public record Conditioning(
            double celsius,
            double humidityFraction,
            double moistureFraction,
            Band blankDays,
            Band scaleDays,
            Verdict verdict,
            OptionalDouble keeps,
            HandleYear after) {}

    /**
     * One cut of a wood.
     *
     * @param cut the cut
     * @param today the customer's year when it is sanded today
     * @param todayVerdict on that
     * @param best the same when it is sanded in the best week of the material as asked for
     * @param bestVerdict on that
     */
    public record CutChoice(Cut cut, HandleYear today, Verdict todayVerdict, HandleYear best, Verdict bestVerdict) {}
}
