package hafthold.decide;

import hafthold.air.SaturatedSalt;
import hafthold.knife.FitLimits;
import hafthold.knife.RoomAir;
import hafthold.knife.StockBlock;
import hafthold.material.FillScale;
import hafthold.material.WaterUptake;
import hafthold.simulate.CustomersMoisture;
import hafthold.simulate.Destination;
import hafthold.simulate.FillEngine;
import hafthold.simulate.FillPosterior;
import hafthold.simulate.MoistureSpan;
import hafthold.simulate.Sampling;
import hafthold.simulate.StockAim;
import hafthold.simulate.StockEngine;
import hafthold.simulate.StockPosterior;
import hafthold.simulate.StockStore;
import hafthold.source.Finding;
import java.util.List;
import java.util.Optional;

/**
 * Judges blocks on the shelf.
 *
 * @param store where they lie
 * @param usual air of the box until another is asked for: what the storage has
 * @param goesTo where the knives go; empty where nobody said
 * @param limits of good new work, which say how much worse steel is that stands proud
 * @param withinFraction how near to rest is near enough, kg/kg
 * @param salts to hold a box with
 * @param scale what is known of resin in lumens
 * @param sampling how many draws
 */
public record StockJudge(
        StockStore store,
        RoomAir usual,
        Optional<Destination> goesTo,
        FitLimits limits,
        double withinFraction,
        List<SaturatedSalt> salts,
        FillScale scale,
        Sampling sampling) {
    /** Whoever says that a block is ready stakes his name: nine times of ten. */
    static final double SURE = 0.9;

    /** A filling is told from this chance on. */
    static final double FILL_SURE = 0.8;

    /** Readings lie off by two deviations and more, on the whole, one time in twenty at most. */
    private static final double ODD = 2.5;

    /** A single one lies off by three one time in three hundred; many good readings are not to hide it. */
    private static final double ODD_ONE = 3;

    /** Judges one. */
    public StockAnswer judge(StockBlock block, List<Finding> findings) {
        StockTarget target = target(block);
        BoxChoice box = BoxChoice.of(
                salts, target.aim().humidityFraction(), target.aim().celsius());
        Optional<FillPosterior> fill = block.stabilised()
                .filter(test -> !test.isEmpty())
                .map(test -> new FillEngine(block, scale).posterior(sampling.seed()));
        boolean isFillOnly = fill.isPresent() && !block.isRead();
        Optional<StockMoisture> moisture = isFillOnly ? Optional.empty() : Optional.of(moisture(block, target));
        StockVerdict verdict = moisture.map(StockJudge::verdict).orElse(StockVerdict.FILL_ONLY);
        return new StockAnswer(
                block,
                store,
                target,
                box,
                verdict,
                moisture.map(known -> sure(verdict, known)).orElse(0.0),
                moisture,
                fill,
                findings);
    }

    private StockMoisture moisture(StockBlock block, StockTarget target) {
        StockPosterior posterior = new StockEngine(block, store).posterior(target.aim(), sampling);
        return new StockMoisture(posterior, store.balance().kilograms(), withinFraction);
    }

    private static StockVerdict verdict(StockMoisture moisture) {
        StockPosterior known = moisture.posterior();
        if (known.misfit() > ODD || known.furthest().deviations() > ODD_ONE) {
            return StockVerdict.ODD;
        }
        if (moisture.chanceReady() >= SURE) {
            return StockVerdict.READY;
        }
        if (moisture.chanceWet() >= SURE) {
            return StockVerdict.WET;
        }
        double dry = 1 - moisture.chanceReady() - moisture.chanceWet();
        return dry >= SURE ? StockVerdict.DRY : StockVerdict.OPEN;
    }

    private static double sure(StockVerdict verdict, StockMoisture moisture) {
        return switch (verdict) {
            case READY -> moisture.chanceReady();
            case WET -> moisture.chanceWet();
            case DRY -> 1 - moisture.chanceReady() - moisture.chanceWet();
            default -> 0;
        };
    }

    private StockTarget target(StockBlock block) {
        WaterUptake water = block.material().water().orElseThrow();
        double celsius = usual.temperature().celsius();
        if (goesTo.isEmpty()) {
            double humidity = usual.humidity().fraction();
            return new StockTarget(
                    new StockAim(humidity, celsius, withinFraction),
                    water.isotherm().moistureFraction(humidity, celsius),
                    Optional.empty(),
                    Optional.empty(),
                    false);
        }
        MoistureSpan year = CustomersMoisture.of(block.material(), goesTo.get());
        double wanted = limits.between(year.lowest(), year.highest());
        double asked = water.isotherm().waterActivity(wanted, celsius);
        WorkableAir workable = WorkableAir.of(block.material(), celsius);
        double humidity = workable.percentNearest(asked) / 100.0;
        return new StockTarget(
                new StockAim(humidity, celsius, withinFraction),
                water.isotherm().moistureFraction(humidity, celsius),
                Optional.of(year),
                Optional.of(goesTo.get().name()),
                !workable.allows(asked));
    }
}
