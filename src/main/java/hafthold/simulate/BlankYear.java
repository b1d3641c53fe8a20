package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.air.CommonYear;
import hafthold.knife.BenchStock;
import hafthold.knife.Blank;
import hafthold.material.Cut;
import hafthold.material.Hybrid;
import hafthold.material.ScaleMaterial;
import hafthold.quantity.Temperature;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A blank that lies in the workshop's air until a scale is made of it: what it holds week by week, in a year that repeats or,
 * where it was read today, in the year to come.
 *
 * <p>It takes up water as a slab between its open faces, edges and ends counted in (Newman 1931, see
 * {@link hafthold.transport.EdgeUptake}), by the equations of the customer's year
 * ({@link hafthold.transport.PeriodicMoisture}). Under a doubt it is the same wood as the customer's: one factor on the
 * isotherm and one speed of water for both.
 */
public final class BlankYear {
    /** Weeks of a year; the last one has the day that is left over. */
    public static final int WEEKS = 52;

    private static final int DAYS_A_WEEK = 7;

    private final List<Week> weeks;
    private final List<Double> dailyMean;
    private final List<Double> dailySurface;
    private final Map<Hybrid.Part, Worked> parts;
    private final Hybrid.Part leading;
    private final Occasion occasion;
    private final Optional<Reading> reading;

    /**
     * What becomes of one part.
     *
     * @param blank the blank day by day
     * @param sanded the scale that is sanded flush on each day
     */
    record Worked(StockDays blank, StockDays sanded) {}

    /**
     * When stock was read and when it is glued.
     *
     * @param readOn day of the reading, from 0 on 1 January
     * @param gluedDays days from glue-up to final sanding
     */
    record Occasion(OptionalInt readOn, int gluedDays) {

        /**
         * Mean over a week of what holds so many days before, or of the day of the reading alone in its week. Of stock that
         * was glued before it was read nobody knows the past: it is taken to have followed the workshop's year all along,
         * as far off it as the reading is (assumed), so that glue-up and reading speak of the same stock.
         */
        double weekly(double[] days, int week, int daysBefore) {
            int first = firstDay(week);
            int next = firstDay(week + 1);
            if (readOn.isPresent() && weekOf(readOn.getAsInt()) == week) {
                first = readOn.getAsInt();
                next = first + 1;
            }
            double sum = 0;
            for (int day = first; day < next; day++) {
                double then = days[Math.floorMod(day - daysBefore, CommonYear.DAYS)];
                sum += isBeforeReading(day, daysBefore) ? Math.max(0, then + offYear(days)) : then;
            }
            return sum / (next - first);
        }

        private boolean isBeforeReading(int day, int daysBefore) {
            return readOn.isPresent() && Math.floorMod(day - readOn.getAsInt(), CommonYear.DAYS) < daysBefore;
        }

        /** How far the reading lies off the workshop's year, to which the stock has gone back by the day before it. */
        private double offYear(double[] days) {
            int read = readOn.orElseThrow();
            return days[read] - days[Math.floorMod(read - 1, CommonYear.DAYS)];
        }
    }

    /**
     * A reading of the stock beside what the workshop's air alone would have made of it.
     *
     * @param readFraction moisture content that was read, kg/kg
     * @param settledFraction what stock that has lain there for long holds on that day, kg/kg
     * @param doubtFraction how far the two may lie apart for what meter, hygrometer and wood leave open, kg/kg: the ends of
     *     their ranges put together as if they were independent
     */
    public record Reading(double readFraction, double settledFraction, double doubtFraction) {

        /** True where they lie further apart than that. */
        public boolean contradicts() {
            return apartFraction() > doubtFraction;
        }

        /** How far they lie apart, kg/kg. */
        public double apartFraction() {
            return Math.abs(readFraction - settledFraction);
        }
    }

    /**
     * One week of the workshop's year, means over it; in the week of a reading the stock as it was read.
     *
     * @param firstDay first day, from 0 on 1 January
     * @param lastDay last day, it included
     * @param celsius temperature of the air
     * @param humidityFraction relative humidity of the air
     * @param meanFraction moisture content over the whole blank, kg/kg; of a hybrid that of its leading part; 0 where it
     *     takes up no water
     * @param surfaceFraction at its open faces
     * @param coreFraction in its middle, or at the closed face
     */
    public record Week(
            int firstDay,
            int lastDay,
            double celsius,
            double humidityFraction,
            double meanFraction,
            double surfaceFraction,
            double coreFraction) {}

    BlankYear(
            List<Week> weeks,
            List<Double> dailyMean,
            List<Double> dailySurface,
            Map<Hybrid.Part, Worked> parts,
            Hybrid.Part leading,
            Occasion occasion,
            Optional<Reading> reading) {
        this.weeks = List.copyOf(weeks);
        this.dailyMean = List.copyOf(dailyMean);
        this.dailySurface = List.copyOf(dailySurface);
        this.parts = Map.copyOf(parts);
        this.leading = leading;
        this.occasion = occasion;
        this.reading = reading;
    }

    /**
     * A blank in the air of a workshop, as it has been for a year or more.
     *
     * @param air a year of hours in the workshop, closed, from 1 January
     * @param humidityDoubtFraction how far its humidity may be off all year round, fraction of relative humidity
     * @throws OutsideModelsException when its moisture does not come round
     */
    public static BlankYear of(
            Blank blank, AirSeries air, double humidityDoubtFraction, ScaleMaterial material, Cut cut) {
        return new BlankYears(BenchStock.unread(blank), air, humidityDoubtFraction, 0).year(material, cut);
    }

    /** Week, from 0, of a day counted from 0 on 1 January. */
    public static int weekOf(int day) {
        return Math.min(WEEKS - 1, day / DAYS_A_WEEK);
    }

    static int firstDay(int week) {
        return week < WEEKS ? week * DAYS_A_WEEK : CommonYear.DAYS;
    }

    /** The weeks from 1 January on. */
    public List<Week> weeks() {
        return weeks;
    }

    /** Mean moisture content of the blank on each day from 1 January on, kg/kg. */
    public List<Double> dailyMean() {
        return dailyMean;
    }

    /** Moisture content at its open faces, likewise. */
    public List<Double> dailySurface() {
        return dailySurface;
    }

    /** What was read of it; empty where nothing was. */
    public Optional<Reading> reading() {
        return reading;
    }

    /** Moisture content at glue-up of a scale that is sanded flush in a week, kg/kg. */
    public double gluedFraction(int week) {
        return weekly(parts.get(leading).blank(), Doubt.NONE, week, occasion.gluedDays());
    }

    /**
     * What the stock is like when a scale of it is sanded flush.
     *
     * @param week from 0
     * @param temperature of the room where it is sanded
     * @param whenGlued of that where it was glued
     */
    public FinishState sandedIn(int week, Temperature temperature, Temperature whenGlued) {
        Optional<FinishState> glued = occasion.gluedDays() == 0
                ? Optional.empty()
                : Optional.of(new State(whenGlued, Optional.empty()) {
                    @Override
                    public double stockFraction(Hybrid.Part part, Doubt doubt) {
                        return weekly(parts.get(part).blank(), doubt, week, occasion.gluedDays());
                    }
                });
        return new State(temperature, glued) {
            @Override
            public double stockFraction(Hybrid.Part part, Doubt doubt) {
                return weekly(parts.get(part).sanded(), doubt, week, 0);
            }
        };
    }

    private double weekly(StockDays days, Doubt doubt, int week, int daysBefore) {
        return occasion.weekly(days.under(doubt), week, daysBefore);
    }

    private abstract static class State implements FinishState {
        private final Temperature temperature;
        private final Optional<FinishState> glued;

        State(Temperature temperature, Optional<FinishState> glued) {
            this.temperature = temperature;
            this.glued = glued;
        }

        @Override
        public Temperature temperature() {
            return temperature;
        }

        @Override
        public Optional<FinishState> gluedIn() {
            return glued;
        }
    }
}
