package hafthold.decide;

import hafthold.knife.Handle;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.simulate.HandleYear;
import hafthold.simulate.Once;
import hafthold.simulate.Settling;
import hafthold.source.Evidence;
import hafthold.source.Finding;
import hafthold.source.Message;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Materials held against one place, best first.
 *
 * @param placeId id of the place
 * @param placeName name and country for people
 * @param settingId where the knife lives there
 * @param settingRule one sentence: how its air follows from the outdoor air
 * @param handle the handle they are compared on
 * @param madeTemperature temperature at final sanding
 * @param madeHumidity humidity of the workshop at final sanding
 * @param finishName finish on the scales
 * @param dailyOutdoors outdoor air, daily means
 * @param dailyIndoors air of the setting, daily means
 * @param ranked answers, best first
 * @param findings choices common to all answers
 */
public record Comparison(
        String placeId,
        Message placeName,
        String settingId,
        Message settingRule,
        Handle handle,
        Temperature madeTemperature,
        RelativeHumidity madeHumidity,
        String finishName,
        List<DayOfAir> dailyOutdoors,
        List<DayOfAir> dailyIndoors,
        List<Ranked> ranked,
        List<Finding> findings) {

    /** Keeps its own copies. */
    public Comparison {
        dailyOutdoors = List.copyOf(dailyOutdoors);
        dailyIndoors = List.copyOf(dailyIndoors);
        ranked = List.copyOf(ranked);
        findings = List.copyOf(findings);
    }

    /** The same with its answers in an order of material ids; cuts of one material stay as they are ranked. */
    public Comparison inOrder(List<String> materialIds) {
        List<Ranked> ordered = ranked.stream()
                .sorted(Comparator.comparingInt(
                        answer -> materialIds.indexOf(answer.year().scale().id())))
                .toList();
        return new Comparison(
                placeId,
                placeName,
                settingId,
                settingRule,
                handle,
                madeTemperature,
                madeHumidity,
                finishName,
                dailyOutdoors,
                dailyIndoors,
                ordered,
                findings);
    }

    /**
     * Mean air of one day.
     *
     * @param temperatureCelsius degrees Celsius
     * @param relativeHumidityFraction 0 to 1
     */
    public record DayOfAir(double temperatureCelsius, double relativeHumidityFraction) {}

    /**
     * One answer in its place.
     *
     * @param rank 1 is best; equal answers share no rank
     * @param year what the handle does
     * @param verdict what to tell the customer
     * @param reasons everything that is not the best class of work, the deciding one first
     * @param settling how soon a change shows and is over; empty for what takes up no water
     * @param holds see {@link #likelihood}
     */
    public record Ranked(
            int rank,
            HandleYear year,
            Verdict verdict,
            List<Reason> reasons,
            Optional<Settling> settling,
            Once<Likelihood> holds) {
        private static final Once<Likelihood> NOT_ASKED = Once.of(Likelihood.NONE);

        /** An answer of which neither settling nor likelihood was asked. */
        public Ranked(int rank, HandleYear year, Verdict verdict, List<Reason> reasons) {
            this(rank, year, verdict, reasons, Optional.empty(), NOT_ASKED);
        }

        /** An answer of which the likelihood was not asked. */
        public Ranked(int rank, HandleYear year, Verdict verdict, List<Reason> reasons, Optional<Settling> settling) {
            this(rank, year, verdict, reasons, settling, NOT_ASKED);
        }

        /** Keeps its own copy. */
        public Ranked {
            reasons = List.copyOf(reasons);
        }

        /** The same answer at a rank. */
        Ranked at(int place) {
            return new Ranked(place, year, verdict, reasons, settling, holds);
        }

        /** How often the verdict holds. */
        public Likelihood likelihood() {
            return holds.get();
        }

        /** True where its movement is more than a guess, whether or not every limit could be judged. */
        public boolean isMovementKnown() {
            return verdict != Verdict.UNKNOWN || year.grounds().evidence() != Evidence.UNKNOWN;
        }
    }
}
