package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.air.CommonYear;
import hafthold.air.Outdoors;
import hafthold.knife.BenchStock;
import hafthold.knife.Handle;
import hafthold.material.Cut;
import hafthold.material.Finish;
import hafthold.material.Hybrid;
import hafthold.material.Material;
import hafthold.material.ScaleMaterial;
import hafthold.simulate.BlankYear.Occasion;
import hafthold.simulate.BlankYear.Reading;
import hafthold.simulate.BlankYear.Week;
import hafthold.simulate.BlankYear.Worked;
import hafthold.transport.MoistureHistory;
import hafthold.transport.PeriodicMoisture;
import hafthold.transport.Slab;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.IntToDoubleFunction;

/** Works out the year of stock in one workshop, whatever it is of. */
public final class BlankYears {
    /** A meter is off by a point or so (common practice, no source). */
    private static final double METER = Doubt.METER_FRACTION;

    private final BenchStock stock;
    private final AirSeries air;
    private final double humidityDoubt;
    private final int today;
    private final Optional<Conditions> order;
    private final LayerMoisture shop;

    /**
     * A workshop whose stock is sanded flush as it is glued.
     *
     * @param air a year of hours in the workshop, closed, from 1 January
     * @param humidityDoubtFraction how far its humidity may be off all year round, fraction of relative humidity
     * @param today day of a reading of the stock, from 0 on 1 January
     */
    public BlankYears(BenchStock stock, AirSeries air, double humidityDoubtFraction, int today) {
        this(stock, air, humidityDoubtFraction, today, Optional.empty());
    }

    /**
     * A workshop.
     *
     * @param order handle that the stock is glued to, bare until it is sanded; empty where it is sanded as it is glued
     */
    public BlankYears(
            BenchStock stock, AirSeries air, double humidityDoubtFraction, int today, Optional<Conditions> order) {
        if (stock.gluedDays() > 0 && order.isEmpty()) {
            throw new IllegalArgumentException("stock that lies glued for days lies on a handle");
        }
        this.stock = stock;
        this.air = air;
        this.humidityDoubt = humidityDoubtFraction;
        this.today = today;
        this.order = order;
        shop = new LayerMoisture(Destination.recorded("shop", "shop", Outdoors.usual(), air, humidityDoubtFraction));
    }

    /**
     * The year of a material.
     *
     * @throws OutsideModelsException when its moisture does not come round
     */
    public BlankYear year(ScaleMaterial material, Cut cut) {
        List<Hybrid.Part> parts = HandleEngine.partsOf(material, cut);
        Map<Hybrid.Part, Worked> worked = new HashMap<>();
        Optional<Followed> leading = Optional.empty();
        for (Hybrid.Part part : parts) {
            Optional<Followed> followed =
                    PartSlab.blank(part.material(), part.cut(), stock.blank()).map(slab -> followed(part, slab));
            worked.put(part, followed.map(Followed::worked).orElseGet(BlankYears::dry));
            if (part.equals(parts.get(0))) {
                leading = followed;
            }
        }
        Occasion occasion = new Occasion(readOn(), stock.gluedDays());
        Course course = leading.map(Followed::course).orElseGet(Course::dry);
        return new BlankYear(
                weeks(occasion, course),
                boxed(course.mean()),
                boxed(course.surface()),
                worked,
                parts.get(0),
                occasion,
                leading.flatMap(Followed::reading));
    }

    private OptionalInt readOn() {
        return stock.reading().isPresent() ? OptionalInt.of(today) : OptionalInt.empty();
    }

    private static Worked dry() {
        double[] none = new double[CommonYear.DAYS];
        return new Worked(doubt -> none, doubt -> none);
    }

    /** What became of one part: under any doubt, and with everything at its value. */
    private record Followed(Worked worked, Course course, Optional<Reading> reading) {}

    /** Daily moisture from 1 January on, everything at its value, kg/kg. */
    private record Course(double[] mean, double[] surface, double[] core) {

        static Course dry() {
            double[] none = new double[CommonYear.DAYS];
            return new Course(none, none, none);
        }
    }

    private Followed followed(Hybrid.Part part, Slab slab) {
        Material material = part.material();
        StockDays settled =
                remembering(StockDays.settled(material, shop.blankMean(material, part.cut(), stock.blank())));
        if (stock.reading().isEmpty()) {
            return new Followed(worked(part, settled), settledCourse(material, slab), Optional.empty());
        }
        double read = stock.reading().get().fraction();
        ReadStock ahead = new ReadStock(material, slab, air, humidityDoubt, today, read);
        MoistureHistory history = ahead.history();
        return new Followed(
                worked(part, remembering(ahead)),
                new Course(
                        ahead.daily(history::meanFraction),
                        ahead.daily(history::surfaceFraction),
                        ahead.daily(history::backFraction)),
                Optional.of(
                        new Reading(read, settled.under(Doubt.NONE)[today], Math.hypot(METER, settledDoubt(settled)))));
    }

    /** How far settled stock may lie off what it should hold today, kg/kg. */
    private double settledDoubt(StockDays settled) {
        double usual = settled.under(Doubt.NONE)[today];
        double squares = 0;
        for (Input input : List.of(Input.HYGROMETER, Input.SORPTION, Input.STOCK)) {
            double damper = settled.under(Doubt.alone(input, 1))[today] - usual;
            double drier = settled.under(Doubt.alone(input, -1))[today] - usual;
            double most = Math.max(Math.abs(damper), Math.abs(drier));
            squares += most * most;
        }
        return Math.sqrt(squares);
    }

    private Worked worked(Hybrid.Part part, StockDays blank) {
        if (stock.gluedDays() == 0) {
            return new Worked(blank, blank);
        }
        Handle handle = order.orElseThrow().handle();
        Finish bare = order.orElseThrow().finish().resisting(0);
        Material material = part.material();
        Slab slab =
                PartSlab.scale(material, part.cut(), handle, bare, Doubt.NONE).orElseThrow();
        StockDays scale = remembering(StockDays.settled(material, shop.scaleMean(material, part.cut(), handle, bare)));
        return new Worked(
                blank, remembering(new GluedStock(material, blank, scale, slab, air, stock.gluedDays(), readOn())));
    }

    /** A doubt is asked for by every week: it is worked out once. */
    private static StockDays remembering(StockDays days) {
        Map<Doubt, double[]> known = new ConcurrentHashMap<>();
        return doubt -> known.computeIfAbsent(doubt, days::under);
    }

    private Course settledCourse(Material material, Slab slab) {
        PeriodicMoisture year = PeriodicMoisture.of(slab, air);
        SlabYears.requireSettled(material.id(), year);
        MoistureHistory history = year.history();
        return new Course(
                daily(hour -> history.meanFraction(hour)),
                daily(hour -> history.surfaceFraction(hour)),
                daily(hour -> history.backFraction(hour)));
    }

    private double[] daily(IntToDoubleFunction ofHour) {
        double[] hours = new double[air.size()];
        Arrays.setAll(hours, ofHour);
        return YearSeries.dailyMean(hours, air.size() / CommonYear.DAYS);
    }

    private List<Week> weeks(Occasion occasion, Course course) {
        Occasion unread = new Occasion(OptionalInt.empty(), 0);
        double[] celsius = daily(hour -> air.temperatureCelsius(hour));
        double[] humidity = daily(hour -> air.relativeHumidityFraction(hour));
        List<Week> weeks = new ArrayList<>();
        for (int week = 0; week < BlankYear.WEEKS; week++) {
            weeks.add(new Week(
                    BlankYear.firstDay(week),
                    BlankYear.firstDay(week + 1) - 1,
                    unread.weekly(celsius, week, 0),
                    unread.weekly(humidity, week, 0),
                    occasion.weekly(course.mean(), week, 0),
                    occasion.weekly(course.surface(), week, 0),
                    occasion.weekly(course.core(), week, 0)));
        }
        return weeks;
    }

    private static List<Double> boxed(double[] days) {
        return Arrays.stream(days).boxed().toList();
    }
}
