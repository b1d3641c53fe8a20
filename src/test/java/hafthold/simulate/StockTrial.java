package hafthold.simulate;

import hafthold.decide.StockAnswer;
import hafthold.decide.StockJudge;
import hafthold.decide.StockMoisture;
import hafthold.decide.StockMoisture.Days;
import hafthold.decide.StockVerdict;
import hafthold.knife.RoomAir;
import hafthold.knife.StockBlock;
import hafthold.knife.StockBlock.Sealed;
import hafthold.knife.StockBlock.SoldAs;
import hafthold.knife.StockReading;
import hafthold.material.Cut;
import hafthold.quantity.Band;
import hafthold.quantity.Mass;
import hafthold.quantity.MoistureContent;
import hafthold.table.FillTable;
import hafthold.table.FinishTable;
import hafthold.table.LimitTable;
import hafthold.table.SaltTable;
import hafthold.table.TableSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * An invented block whose truth is worked out on a grid, read as a bench reads it, and judged as the command judges.
 *
 * <p>Wood, sizes, air, seller and number of readings are drawn evenly; what is not known of the block from the ranges that
 * the command takes for it; the box is to sit where the storage does in half of them; the air of a day strays by 3 points about that of the storage; the balance shows steps and the
 * hand adds a third of one; the meter is off by two points.
 *
 * @param block the block with what was read
 * @param told what the command says to it
 * @param truth how it is
 */
record StockTrial(StockBlock block, Told told, Truth truth) {
    private static final double DAY = 86_400;
    private static final double CELSIUS = 20;
    private static final double WITHIN = 0.01;
    private static final double AIR_STRAYS = 0.03;
    private static final double AIR_REMEMBERS = 0.8;
    private static final double METER = 0.02;
    private static final double DENSITY = 0.10;
    private static final double HAND = 0.33;
    private static final List<String> WOODS =
            List.of("walnut-black", "maple-sugar", "oak-white", "ebony-gaboon", "maple-burl");
    private static final List<SoldAs> SELLERS =
            List.of(SoldAs.UNKNOWN, SoldAs.UNKNOWN, SoldAs.KILN_DRIED, SoldAs.AIR_DRIED, SoldAs.GREEN);

    /**
     * How it is.
     *
     * @param mean moisture today, kg/kg
     * @param core in its middle
     * @param goal at rest in the box
     * @param readyDays days until mean and core are near enough in the box, as the forecast counts days
     * @param isToldRight whether it was near enough when its weight first changed by less in seven days than was asked
     */
    record Truth(double mean, double core, double goal, double readyDays, boolean isToldRight) {
        boolean isReady() {
            return readyDays == 0;
        }
    }

    /**
     * What is kept of an answer, without the draws behind it: many trials fit into little memory.
     *
     * @param mean moisture today, kg/kg
     * @param core in its middle
     * @param days until it is ready in the box
     */
    record Told(StockVerdict verdict, Band mean, Band core, Days days) {
        static Told of(StockAnswer answer) {
            StockMoisture moisture = answer.moisture().orElseThrow();
            return new Told(answer.verdict(), moisture.meanNow(), moisture.coreNow(), moisture.boxDays());
        }
    }

    /** One trial; the same seed gives the same. */
    static StockTrial of(StockInputs inputs, long seed, int cells, int samples) {
        Random random = new Random(seed);
        StockStore store = new StockStore(
                StockAir.held(StockBlocks.air(0.35 + 0.05 * random.nextInt(6))),
                random.nextBoolean(),
                Mass.ofGrams(random.nextInt(3) == 0 ? 1 : 0.1),
                FinishTable.read(TableSet.builtIn()).find("wax-dipped"));
        StockBlock empty = block(random);
        BlockPiece piece = new BlockPiece(empty, store, inputs);
        StockOrigin origin = StockOrigin.of(empty, piece);
        double wax =
                Doubt.at(inputs.of(StockInput.SEAL), store.seal().resistance().band());
        FineBlock fine = new FineBlock(empty, inputs, wax, origin.wetFraction(), cells);
        fine.lie(origin.driedInFraction(), StockOrigin.CELSIUS, origin.driedDays() * DAY);
        double dry = piece.usualDryKilograms(empty.size().cubicMetres(), fine.mean())
                * Math.exp(DENSITY * random.nextGaussian());
        StockBlock read = read(empty, store, inputs, fine, dry, random);
        RoomAir box = StockBlocks.air(
                random.nextBoolean() ? store.air().meanHumidityFraction() : 0.35 + 0.05 * random.nextInt(5));
        StockAnswer answer = judge(store, box, samples).judge(read, List.of());
        return new StockTrial(
                read,
                Told.of(answer),
                truth(
                        fine,
                        box.humidity().fraction(),
                        answer.moisture().orElseThrow().telltaleKilograms() / dry));
    }

    private static StockBlock block(Random random) {
        var wood = StockBlocks.LIBRARY.plain(WOODS.get(random.nextInt(WOODS.size())));
        return new StockBlock(
                "invented",
                wood,
                wood,
                Cut.FLAT,
                StockBlocks.size(80 + random.nextInt(100), 30 + random.nextInt(30), 20 + random.nextInt(20)),
                random.nextInt(3) == 0 ? Sealed.ENDS : Sealed.NONE,
                StockBlocks.BOUGHT,
                SELLERS.get(random.nextInt(SELLERS.size())),
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    /** Lets it lie in the storage, and reads it now and then. */
    private static StockBlock read(
            StockBlock empty, StockStore store, StockInputs inputs, FineBlock fine, double dry, Random random) {
        int times = 1 + random.nextInt(6);
        int apart = 7 * (1 + random.nextInt(4));
        boolean isMetered = random.nextInt(3) == 0;
        double step = store.balance().kilograms();
        double strays = 0;
        List<StockReading> readings = new ArrayList<>();
        for (int day = 0; readings.size() < times; day++) {
            if (day % apart == 0) {
                double shown = Math.rint(dry * (1 + fine.mean()) / step + HAND * random.nextGaussian()) * step;
                double meter = Math.max(0.03, fine.mean() + METER * random.nextGaussian());
                readings.add(new StockReading(
                        empty.bought().plusDays(day),
                        Optional.of(new Mass(shown)),
                        Optional.empty(),
                        Optional.empty(),
                        isMetered && readings.size() == times - 1 && meter < 0.28
                                ? Optional.of(new MoistureContent(meter))
                                : Optional.empty(),
                        Optional.empty()));
            }
            if (readings.size() < times) {
                strays = AIR_REMEMBERS * strays
                        + Math.sqrt(1 - AIR_REMEMBERS * AIR_REMEMBERS) * AIR_STRAYS * random.nextGaussian();
                double humidity = store.air().meanHumidityFraction() + StockEngine.hygrometerShift(inputs, store);
                fine.lie(humidity + strays, CELSIUS, DAY);
            }
        }
        return new StockBlock(
                empty.name(),
                empty.material(),
                empty.wood(),
                empty.cut(),
                empty.size(),
                empty.sealed(),
                empty.bought(),
                empty.soldAs(),
                readings,
                Optional.empty(),
                Optional.empty());
    }

    private static StockJudge judge(StockStore store, RoomAir box, int samples) {
        TableSet tables = TableSet.builtIn();
        return new StockJudge(
                store,
                box,
                Optional.empty(),
                LimitTable.read(tables).get(0),
                WITHIN,
                SaltTable.read(tables),
                FillTable.read(StockBlocks.LIBRARY),
                new Sampling(samples, 1));
    }

    /** On in the box, as far as the forecast goes. */
    private static Truth truth(FineBlock fine, double humidity, double telltale) {
        double mean = fine.mean();
        double core = fine.core();
        double goal = fine.balance(humidity, CELSIUS);
        double ready = Double.POSITIVE_INFINITY;
        boolean isTold = false;
        boolean isToldRight = true;
        int day = 0;
        double before = mean;
        for (int next : StockEngine.DAYS_AHEAD) {
            fine.lie(humidity, CELSIUS, (next - day) * DAY);
            day = next;
            boolean isNear = Math.abs(fine.mean() - goal) <= WITHIN && Math.abs(fine.core() - goal) <= WITHIN;
            if (isNear && Double.isInfinite(ready)) {
                ready = next;
            }
            if (next > 0 && next % 7 == 0) {
                if (!isTold && Math.abs(fine.mean() - before) < telltale) {
                    isTold = true;
                    isToldRight = isNear;
                }
                before = fine.mean();
            }
            if (isNear && isTold) {
                break;
            }
        }
        return new Truth(mean, core, goal, ready, isToldRight);
    }
}
