package hafthold.simulate;

import hafthold.air.StayChain;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/**
 * What a handle does during one stay, everything at its value.
 *
 * @param name what the stay is called
 * @param from first day
 * @param to last day; of the year that repeats, that of its first round
 * @param repeats true for the last stay's year as it comes round for ever
 * @param moistureLowest lowest mean moisture content, kg/kg
 * @param moistureHighest highest
 * @param lowestMetres lowest daily mean of the step since final sanding, m, negative shy (a stack: short)
 * @param highestMetres highest, positive proud (long)
 * @param worstOn day with the step furthest from flush
 */
public record StaySpan(
        String name,
        LocalDate from,
        LocalDate to,
        boolean repeats,
        double moistureLowest,
        double moistureHighest,
        double lowestMetres,
        double highestMetres,
        LocalDate worstOn) {

    /**
     * One span a stay, and one for the year that repeats; none where the knife goes to one place.
     *
     * @param course moisture over all days
     * @param daily step of each day, m; asked for only where there are stays
     */
    static List<StaySpan> of(Destination destination, MoistureCourse course, Supplier<double[]> daily) {
        List<StaySpan> spans = new ArrayList<>();
        destination.stays().ifPresent(chain -> {
            double[] dailyMetres = daily.get();
            for (int stay = 0; stay < chain.stays().size(); stay++) {
                int end = stay + 1 < chain.stays().size() ? chain.firstDay(stay + 1) : chain.daysBeforeRepeat();
                spans.add(span(chain, chain.firstDay(stay), end, course, dailyMetres));
            }
            spans.add(span(chain, chain.daysBeforeRepeat(), chain.days(), course, dailyMetres));
        });
        return spans;
    }

    /** The step furthest from flush, m. */
    public double worstMetres() {
        return -lowestMetres > highestMetres ? lowestMetres : highestMetres;
    }

    private static StaySpan span(StayChain chain, int from, int end, MoistureCourse course, double[] dailyMetres) {
        int samplesADay = course.hours() / chain.days();
        double driest = Double.POSITIVE_INFINITY;
        double dampest = Double.NEGATIVE_INFINITY;
        for (int sample = from * samplesADay; sample < end * samplesADay; sample++) {
            driest = Math.min(driest, course.fraction(sample));
            dampest = Math.max(dampest, course.fraction(sample));
        }
        int low = from;
        int high = from;
        for (int day = from; day < end; day++) {
            low = dailyMetres[day] < dailyMetres[low] ? day : low;
            high = dailyMetres[day] > dailyMetres[high] ? day : high;
        }
        return new StaySpan(
                chain.stays().get(chain.stayOfDay(from)).name(),
                chain.date(from),
                chain.date(end - 1),
                from >= chain.daysBeforeRepeat(),
                driest,
                dampest,
                dailyMetres[low],
                dailyMetres[high],
                chain.date(-dailyMetres[low] > dailyMetres[high] ? low : high));
    }
}
