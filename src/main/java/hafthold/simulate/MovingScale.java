package hafthold.simulate;

import hafthold.knife.Bond;
import hafthold.material.Hybrid;
import hafthold.quantity.Band;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/** One scale on one handle through the year: its motion with everything at its value, in samples and day by day. */
final class MovingScale {
    private final Conditions conditions;
    private final List<Part> parts;
    private final Optional<GluedSections.Readings> sections;
    private final double[] warmer;
    private final List<PartMotion> motions;

    /**
     * A part of the scale.
     *
     * @param share fraction of the width and length that it takes
     * @param lie how it lies
     * @param stock moisture content at finish under a doubt, kg/kg
     * @param crackPerStrain use of strength per squeeze strain on a pin, 0 where it is not known
     * @param moisture its course under a doubt
     */
    record Part(double share, GrainLie lie, Stock stock, double crackPerStrain, DoubtedMoisture moisture) {

        PartMotion motion(Doubt doubt) {
            return PartMotion.of(
                    lie, share, stock.fraction(doubt), moisture.course(doubt).mean(), crackPerStrain, doubt);
        }

        /** The same with its courses of moisture taken otherwise. */
        Part mapped(UnaryOperator<double[]> series) {
            return new Part(share, lie, stock, crackPerStrain, moisture.mapped(series));
        }
    }

    /** Moisture content at finish, kg/kg. */
    interface Stock {
        double fraction(Doubt doubt);
    }

    /**
     * A scale of some parts.
     *
     * @param conditions order whose air the courses of the parts follow
     * @param sections those under the scale; empty where it is not glued
     */
    MovingScale(Conditions conditions, List<Part> parts, Optional<GluedSections.Readings> sections) {
        this.conditions = conditions;
        this.parts = parts;
        this.sections = sections;
        this.warmer = conditions.warmer();
        this.motions = motions(parts, Doubt.NONE);
    }

    /** Motions of the parts, everything at its value. */
    List<PartMotion> motions() {
        return motions;
    }

    private static List<PartMotion> motions(List<Part> parts, Doubt doubt) {
        List<PartMotion> motions = new ArrayList<>();
        for (Part part : parts) {
            motions.add(part.motion(doubt));
        }
        return motions;
    }

    private static List<Part> mapped(List<Part> parts, UnaryOperator<double[]> series) {
        return parts.stream().map(part -> part.mapped(series)).toList();
    }

    /** The year with everything at its value, and with every input drawn from its range, looked at where it can be worst. */
    Spread<Movement> year(List<Doubt> doubts) {
        Movement value = Movement.of(motions, sections, conditions, warmer);
        if (doubts.isEmpty()) {
            return new Spread<>(value, List.of());
        }
        int[] telling = TellingSamples.of(parts.stream().map(Part::moisture).toList(), warmer);
        UnaryOperator<double[]> excerpt = series ->
                Arrays.stream(telling).mapToDouble(sample -> series[sample]).toArray();
        List<Part> then = mapped(parts, excerpt);
        double[] warmerThen = excerpt.apply(warmer);
        return new Spread<>(
                value,
                doubts.stream()
                        .map(doubt -> Movement.of(motions(then, doubt), sections, conditions, warmerThen)
                                .at(telling))
                        .toList());
    }

    /** The year day by day, worked out when it is asked for. */
    HandleDays days(List<Doubt> doubts) {
        Destination destination = conditions.destination();
        return new HandleDays(
                () -> destination.calendarYear(dailyBands(doubts)),
                () -> destination.calendarYear(motions.get(0).course().dailyMeans(samplesADay())));
    }

    /** Edge offset day by day, everything at its value, m. */
    double[] dailyEdge() {
        return YearSeries.dailyMean(edge(motions, warmer), samplesADay());
    }

    private List<Band> dailyBands(List<Doubt> doubts) {
        UnaryOperator<double[]> daily = series -> YearSeries.dailyMean(series, samplesADay());
        List<Part> byDay = mapped(parts, daily);
        double[] warmerByDay = daily.apply(warmer);
        Spread<double[]> spread = new Spread<>(
                dailyEdge(),
                doubts.stream()
                        .map(doubt -> edge(motions(byDay, doubt), warmerByDay))
                        .toList());
        return IntStream.range(0, warmerByDay.length)
                .mapToObj(day -> spread.signed(days -> days[day]))
                .toList();
    }

    /** Edge offset at each sample, glued where it is, m. */
    double[] edge() {
        return edge(motions, warmer);
    }

    private double[] edge(List<PartMotion> moving, double[] warmth) {
        return sections.map(handle -> GluedEdge.offsets(moving, handle, warmth))
                .orElseGet(() -> FreeMovement.edge(moving, conditions, warmth));
    }

    /**
     * What glue and scale bear in the year, everything at its value and in samples; empty where it is not glued. Samples are
     * not led through the year again: stress goes with the step, see {@link GluedLoad#under}.
     *
     * @param spread the movements under the same doubts
     */
    Optional<Spread<GluedLoad>> load(List<Hybrid.Part> materials, Spread<Movement> spread, List<Doubt> doubts) {
        if (sections.isEmpty()) {
            return Optional.empty();
        }
        Bond bond = conditions.bond().orElseThrow();
        GluedLoad value = GluedLoad.of(materials, motions, sections.get(), bond, conditions);
        double step = spread.value().edgeEither();
        List<GluedLoad> samples = new ArrayList<>();
        for (int i = 0; i < doubts.size(); i++) {
            double share = step > 0 ? spread.samples().get(i).edgeEither() / step : 1;
            samples.add(value.under(doubts.get(i), share, materials, bond));
        }
        return Optional.of(new Spread<>(value, samples));
    }

    private int samplesADay() {
        return FreeMovement.samplesADay(conditions.destination().air());
    }
}
