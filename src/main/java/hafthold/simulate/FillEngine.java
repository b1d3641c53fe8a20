package hafthold.simulate;

import hafthold.knife.FillTrial;
import hafthold.knife.StockBlock;
import hafthold.material.Axis;
import hafthold.material.FillScale;
import hafthold.material.HalpinTsaiFilling;
import hafthold.material.Material;
import hafthold.material.Property;
import hafthold.numeric.ImportanceWeights;
import hafthold.numeric.LatinHypercube;
import hafthold.quantity.Band;
import hafthold.source.Figure;
import hafthold.transport.CapillaryUptake;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * How far resin has got into a block, from what it weighs, whether it floats and what it drinks.
 *
 * <p>Resin can only be where the wood is open: the lumens take 1 - rho/1500 of the volume (cell wall 1500 kg/m3). The gain in
 * weight tells how much of that is filled; it does not tell where. So blocks are drawn in two ways, the same all through or
 * a filled shell about an open core, as likely before anything is known (a judgement), and weighed by the tests: gain or
 * density with the block's own volume, floating or sinking of the block and of a piece from its middle, and a soak against
 * what plain wood of that surface would drink.
 */
public final class FillEngine {
    private static final int DRAWS = 20_000;
    private static final double WATER_DENSITY = 998;
    /** Standard deviation of a density told from floating: air bubbles, wax, a size that is rough. */
    private static final double FLOAT_DEVIATION = 20;

    private static final double DENSITY_DEVIATION = 0.10;
    private static final double VOLUME_DEVIATION = 0.02;
    private static final double GAIN_DEVIATION = 0.01;
    private static final double MOST_LEVEL = 0.97;
    private static final double LEAST_SHELL_LEVEL = 0.55;
    private static final double DAMPEST_BEFORE = 0.06;
    private static final double DAMPEST_AFTER = 0.08;
    /** A soak is known to a factor of two: standard deviation of its logarithm. */
    private static final double SOAK_DEVIATION = 0.6;
    /** Ends drink so many times as much as sides, for their size (assumed, 3 to 10). */
    private static final double ENDS_OVER_SIDES = 5;

    private static final double SOAK_CELSIUS = 20;
    private static final double MOST_SOAK_RATIO = 2;
    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    private final StockBlock block;
    private final FillTrial test;
    private final FillScale scale;
    private final Material wood;

    /** An engine for a block on which something was tried. */
    public FillEngine(StockBlock block, FillScale scale) {
        this.block = block;
        this.test = block.stabilised().orElseThrow();
        this.scale = scale;
        this.wood = block.wood();
    }

    /** What the tests tell. */
    public FillPosterior posterior(long seed) {
        List<FillDraw> draws = draws(seed);
        double[] misfit = draws.stream().mapToDouble(this::misfit).toArray();
        ImportanceWeights weights = new ImportanceWeights(
                Arrays.stream(misfit).map(squares -> -squares / 2).toArray());
        Map<FillGrade, Double> chances = new EnumMap<>(FillGrade.class);
        for (FillGrade grade : FillGrade.values()) {
            chances.put(grade, 0.0);
        }
        for (int i = 0; i < draws.size(); i++) {
            chances.merge(draws.get(i).grade(), weights.of(i), Double::sum);
        }
        return new FillPosterior(
                chances,
                band(draws, weights, FillDraw::filledFraction),
                band(draws, weights, draw -> draw.density(draw.filledFraction())),
                weights.mean(draws.stream().mapToDouble(FillDraw::lumenFraction).toArray()),
                test.soak().flatMap(soak -> plainSoakKilograms(soak).map(plain -> soak.kilograms() / plain)),
                Math.sqrt(Arrays.stream(misfit).min().orElseThrow()));
    }

    private static Band band(List<FillDraw> draws, ImportanceWeights weights, ToDoubleFunction<FillDraw> of) {
        double[] values = draws.stream().mapToDouble(of).toArray();
        return new Band(weights.quantile(values, 0.1), weights.quantile(values, 0.5), weights.quantile(values, 0.9));
    }

    private List<FillDraw> draws(long seed) {
        double[][] share = LatinHypercube.of(6, DRAWS, new SplittableRandom(seed * 0x9e3779b97f4a7c15L + 0xF111))
                .columns();
        double usual = wood.water().orElseThrow().dryDensity().value();
        List<FillDraw> draws = new ArrayList<>();
        for (int i = 0; i < DRAWS; i++) {
            double density = usual * Math.exp(DENSITY_DEVIATION * NORMAL.inverseCumulativeProbability(share[0][i]));
            boolean isShell = i % 2 == 0;
            double level = isShell
                    ? LEAST_SHELL_LEVEL + share[2][i] * (MOST_LEVEL - LEAST_SHELL_LEVEL)
                    : share[2][i] * MOST_LEVEL;
            draws.add(new FillDraw(
                    Math.min(density, 0.98 * HalpinTsaiFilling.CELL_WALL_DENSITY),
                    Doubt.at(Draws.position(share[1][i]), scale.resinDensity()),
                    level,
                    isShell ? share[3][i] : 1,
                    DAMPEST_BEFORE * share[4][i],
                    DAMPEST_AFTER * share[5][i]));
        }
        return draws;
    }

    /** Squares of how far the tests lie from a draw, in deviations; what a test makes unlikely counts as its logarithm. */
    private double misfit(FillDraw draw) {
        double volume = block.size().cubicMetres();
        double squares = 0;
        if (test.before().isPresent()) {
            double kilograms = draw.dryDensity() * volume * (1 + draw.waterBefore());
            squares += square(Math.log(test.before().get().kilograms() / kilograms) / VOLUME_DEVIATION);
        }
        if (test.isWeighed()) {
            double ratio = draw.density(draw.filledFraction()) / (draw.dryDensity() * (1 + draw.waterBefore()));
            double seen = test.after().orElseThrow().kilograms()
                    / test.before().orElseThrow().kilograms();
            squares += square(Math.log(seen / ratio) / GAIN_DEVIATION);
        } else if (test.after().isPresent()) {
            double kilograms = draw.density(draw.filledFraction()) * volume;
            squares += square(Math.log(test.after().get().kilograms() / kilograms) / VOLUME_DEVIATION);
        }
        if (test.floats().isPresent()) {
            squares += floating(test.floats().get(), draw.density(draw.filledFraction()));
        }
        if (test.coreFloats().isPresent()) {
            squares += floating(test.coreFloats().get(), draw.density(draw.coreFilledFraction()));
        }
        if (test.soak().isPresent()) {
            squares += soak(test.soak().get(), draw);
        }
        return squares;
    }

    private static double floating(boolean floats, double density) {
        double below = (WATER_DENSITY - density) / FLOAT_DEVIATION;
        double chance = NORMAL.cumulativeProbability(floats ? below : -below);
        return -2 * Math.log(Math.max(1e-12, chance));
    }

    private double soak(FillTrial.Soak soak, FillDraw draw) {
        Optional<Double> plain = plainSoakKilograms(soak);
        if (plain.isEmpty()) {
            return 0;
        }
        double seen = Math.min(MOST_SOAK_RATIO, Math.max(0.01, soak.kilograms() / plain.get()));
        // Under water it is the outside that drinks: a shell drinks as its own filling does.
        double expected = scale.uptakeRatio(draw.level());
        return square(Math.log(seen / expected) / SOAK_DEVIATION);
    }

    /** What plain wood of that surface drinks, at most what its lumens hold. */
    private Optional<Double> plainSoakKilograms(FillTrial.Soak soak) {
        Optional<Figure> absorption = wood.sheet()
                .figure(Property.WATER_ABSORPTION, Axis.ACROSS)
                .or(() -> wood.sheet().figure(Property.WATER_ABSORPTION));
        StockBlock.Size size = block.size();
        double ends = 2 * size.width().metres() * size.thickness().metres();
        double sides = size.squareMetres() - ends;
        double density = wood.water().orElseThrow().dryDensity().value();
        double most = HalpinTsaiFilling.lumenFraction(density) * WATER_DENSITY * size.cubicMetres();
        return absorption.map(figure -> Math.min(
                most,
                (sides + ENDS_OVER_SIDES * ends)
                        * new CapillaryUptake(figure.value()).kilogramsPerSquareMetre(SOAK_CELSIUS, soak.seconds())));
    }

    private static double square(double x) {
        return x * x;
    }
}
