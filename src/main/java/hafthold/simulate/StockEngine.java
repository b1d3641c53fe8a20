package hafthold.simulate;

import hafthold.knife.StockBlock;
import hafthold.numeric.ImportanceWeights;
import hafthold.transport.BlockMoisture;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * One block on the shelf, from before it was bought to the day it may be worked.
 *
 * <p>Read it as the method statement: a block is drawn as it may be, wet once, dried for a while in air nobody knows; it
 * comes into the storage and lies there until today; what was read on the way weighs the draw; draws by their weight are led
 * on, once in the storage as it is and once in the air aimed at, until mean and core are near enough to rest. Weights alone
 * do not tell moisture: the dry mass is known from volume and density to a tenth, so that it is the change of weight that
 * tells, against the water that must come and go.
 */
public final class StockEngine {
    /** Days from today that the forecast is told at: by days for four weeks, then by weeks for three years. */
    public static final List<Integer> DAYS_AHEAD = Stream.concat(
                    IntStream.rangeClosed(0, 28).boxed(),
                    IntStream.rangeClosed(5, 156).mapToObj(week -> 7 * week))
            .toList();

    private static final double DAY_SECONDS = 86_400;
    private static final double WEEK_SECONDS = 7 * DAY_SECONDS;
    private static final double HYGROMETER = 0.05;
    private static final double CHECKED_HYGROMETER = 0.02;
    private static final int OUTLOOKS = 200;
    private static final double ENOUGH = 150;
    private static final int MOST_ROUNDS = 4;
    /** Where fewer draws fit than that, chance decides what is told: they are evened out, and the ranges grow. */
    private static final double LEAST_COUNTED = 40;

    private static final double LEAST_SHARE = 0.2;

    private static final int SPANS_BEFORE = 12;

    private final StockBlock block;
    private final StockStore store;
    private final StockPast past;
    private final StockReadings readings;

    /** An engine for a block that takes up water. */
    public StockEngine(StockBlock block, StockStore store) {
        this.block = block;
        this.store = store;
        past = StockPast.of(block, store.air());
        readings = new StockReadings(block, past, store.balance());
    }

    /** What is known of it, and how it goes on. */
    public StockPosterior posterior(StockAim aim, Sampling sampling) {
        StockDraws draws = StockDraws.of(sampling.samples(), sampling.seed());
        Weighed weighed = weighed(draws);
        for (int round = 1; round < MOST_ROUNDS && weighed.weights().effectiveSamples() < ENOUGH; round++) {
            draws = draws.next(weighed.logWeights(), ENOUGH, sampling.seed() + round);
            weighed = weighed(draws);
        }
        StockDraws last = draws;
        ImportanceWeights counted = ImportanceWeights.evened(
                weighed.logWeights(), Math.min(LEAST_COUNTED, LEAST_SHARE * sampling.samples()));
        List<StockSample> drawn = Arrays.stream(counted.resampled(OUTLOOKS))
                .mapToObj(number -> sample(last.draws().get(number), true))
                .toList();
        List<StockOutlook> outlooks =
                drawn.parallelStream().map(sample -> outlook(sample, aim)).toList();
        return new StockPosterior(
                outlooks,
                pastDays(),
                weighed.weights().effectiveSamples(),
                draws.draws().size(),
                readings.count() == 0 ? 0 : Math.sqrt(weighed.best().misfit() / readings.count()),
                weighed.best().furthest(),
                StockDrivers.of(drawn, outlooks));
    }

    /**
     * What the readings say to some draws, whose courses are forgotten, for there are many.
     *
     * @param logWeights logarithm of the weight of each
     * @param weights their weights
     * @param best the one that fits best
     */
    private record Weighed(double[] logWeights, ImportanceWeights weights, StockReadings.Told best) {}

    private Weighed weighed(StockDraws draws) {
        List<StockReadings.Told> told = draws.draws().parallelStream()
                .map(inputs -> sample(inputs, false).told())
                .toList();
        double[] logs = new double[told.size()];
        Arrays.setAll(logs, i -> told.get(i).logLikelihood() + draws.logPrior()[i]);
        return new Weighed(
                logs,
                new ImportanceWeights(logs),
                told.stream()
                        .min(Comparator.comparingDouble(StockReadings.Told::misfit))
                        .orElseThrow());
    }

    private List<LocalDate> pastDays() {
        return Stream.concat(Stream.of(block.bought()), past.spans().stream().map(StockPast.Span::until))
                .toList();
    }

    private StockSample sample(StockInputs inputs, boolean withCore) {
        BlockPiece piece = new BlockPiece(block, store, inputs);
        StockOrigin origin = StockOrigin.of(block, piece);
        BlockMoisture moisture = piece.uniform(origin.wetFraction());
        dryBefore(origin, piece, moisture);
        List<Double> mean = new ArrayList<>(List.of(moisture.meanFraction()));
        List<Double> core = new ArrayList<>();
        if (withCore) {
            core.add(moisture.coreFraction());
        }
        double shift = hygrometerShift(piece);
        for (StockPast.Span span : past.spans()) {
            piece.lie(moisture, held(span.humidityFraction() + shift), span.celsius(), span.seconds());
            mean.add(moisture.meanFraction());
            if (withCore) {
                core.add(moisture.coreFraction());
            }
        }
        return new StockSample(piece, mean, core, readings.under(piece, mean), moisture);
    }

    private static void dryBefore(StockOrigin origin, BlockPiece piece, BlockMoisture moisture) {
        double before = 0;
        for (int span = 1; span <= SPANS_BEFORE; span++) {
            double until = origin.driedDays() * Math.pow((double) span / SPANS_BEFORE, 3);
            piece.lie(moisture, origin.driedInFraction(), StockOrigin.CELSIUS, (until - before) * DAY_SECONDS);
            before = until;
        }
    }

    private double hygrometerShift(BlockPiece piece) {
        return hygrometerShift(piece.inputs(), store);
    }

    /** How far the humidity of the storage lies above what its hygrometer says, 0 to 1. */
    static double hygrometerShift(StockInputs inputs, StockStore store) {
        return inputs.of(StockInput.HYGROMETER) * (store.isChecked() ? CHECKED_HYGROMETER : HYGROMETER);
    }

    private static double held(double humidity) {
        return Math.min(StockOrigin.DAMPEST, Math.max(0, humidity));
    }

    private StockOutlook outlook(StockSample sample, StockAim aim) {
        BlockPiece piece = sample.piece();
        double goal = piece.balance(aim.humidityFraction(), aim.celsius());
        double shift = hygrometerShift(piece);
        LocalDate today = block.today();
        StockOutlook.Way asItLies = way(sample, goal, aim, (moisture, day, seconds) -> {
            LocalDate on = today.plusDays(day);
            piece.lie(
                    moisture,
                    held(store.air().humidityFraction(on) + shift),
                    store.air().celsius(on),
                    seconds);
        });
        StockOutlook.Way inBox = way(
                sample,
                goal,
                aim,
                (moisture, day, seconds) -> piece.lie(moisture, aim.humidityFraction(), aim.celsius(), seconds));
        double nearMean = aim.withinFraction() * sample.now().meanOverCoreAtLast();
        double telltale = sample.told().dryKilograms()
                * nearMean
                * piece.lost(sample.now(), aim.humidityFraction(), aim.celsius(), WEEK_SECONDS);
        return new StockOutlook(
                sample.now().meanFraction(),
                sample.now().coreFraction(),
                goal,
                piece.balance(
                        held(store.air().meanHumidityFraction() + shift),
                        store.air().meanCelsius()),
                sample.told().dryKilograms(),
                asItLies,
                inBox,
                sample.mean(),
                sample.core(),
                telltale);
    }

    /** Lets time pass in some air. */
    private interface Lying {
        void pass(BlockMoisture moisture, int middleDay, double seconds);
    }

    private StockOutlook.Way way(StockSample sample, double goal, StockAim aim, Lying lying) {
        BlockMoisture moisture = sample.now().copy();
        List<Double> mean = new ArrayList<>();
        List<Double> core = new ArrayList<>();
        double ready = Double.POSITIVE_INFINITY;
        int day = 0;
        for (int next : DAYS_AHEAD) {
            if (next > day) {
                lying.pass(moisture, (day + next) / 2, (next - day) * DAY_SECONDS);
                day = next;
            }
            mean.add(moisture.meanFraction());
            core.add(moisture.coreFraction());
            double off = DoubleStream.of(moisture.meanFraction() - goal, moisture.coreFraction() - goal)
                    .map(Math::abs)
                    .max()
                    .orElseThrow();
            if (Double.isInfinite(ready) && off <= aim.withinFraction()) {
                ready = day;
            }
        }
        return new StockOutlook.Way(List.copyOf(mean), List.copyOf(core), ready);
    }
}
