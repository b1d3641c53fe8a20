package hafthold.decide;

import hafthold.air.HeldAir;
import hafthold.knife.FullTangKnife;
import hafthold.knife.MeasuredStep;
import hafthold.knife.WorkState.SettledAir;
import hafthold.numeric.BlurredSample;
import hafthold.quantity.Band;
import hafthold.simulate.InputGroup;
import hafthold.simulate.ReturnEngine;
import hafthold.simulate.ReturnSample;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Sets every measured step beside what was to be expected, and shares it out.
 *
 * @param engine the knife
 * @param posterior all draws by their weight
 * @param usual draws with everything as usual
 */
record ClaimRows(ReturnEngine engine, ReturnPosterior posterior, List<ReturnSample> usual) {
    /** Readings of one claim lie all within their bands in so many of a hundred knives as usual. */
    private static final double TOGETHER = 0.90;

    /** What lies further out than that is not explained by a cause. */
    static final double UNHEARD_OF = 0.01;

    private static final int TELLING = 200;

    /** One row a step. */
    List<ClaimRow> of(FullTangKnife knife, List<MeasuredStep> measured) {
        List<ReturnSample> telling = posterior.drawn(TELLING);
        double[] nominal = engine.nominal();
        List<double[][]> shares = telling.parallelStream().map(engine::shares).toList();
        List<double[]> settled = knife.build().made() instanceof SettledAir air
                ? telling.parallelStream()
                        .map(draw -> engine.settled(
                                draw,
                                new HeldAir(
                                        air.temperature().celsius(),
                                        air.humidity().fraction())))
                        .toList()
                : List.of();
        List<ClaimRow> rows = new ArrayList<>();
        for (int i = 0; i < measured.size(); i++) {
            int step = i;
            BlurredSample readings = blurred(usual, measured.get(i), i);
            double reading = measured.get(i).step().metres();
            // A ring that reads less than nothing is none.
            double least = measured.get(i).point().isSigned() ? Double.NEGATIVE_INFINITY : 0;
            double low = Math.max(least, readings.quantile(ReturnPosterior.LOW));
            double high = Math.max(least, readings.quantile(ReturnPosterior.HIGH));
            double value = Math.max(low, Math.min(high, nominal[i]));
            rows.add(new ClaimRow(
                    measured.get(i),
                    new Band(low, value, high),
                    readings.asFarOut(reading),
                    readings.asFarOut(reading) >= (1 - TOGETHER) / measured.size(),
                    posterior.fitted(i),
                    parts(reading, nominal[i], telling, shares, i),
                    settled.isEmpty()
                            ? Optional.empty()
                            : Optional.of(ReturnPosterior.spread(settled.stream()
                                    .mapToDouble(left -> left[step])
                                    .toArray()))));
        }
        return rows;
    }

    private static List<ClaimRow.Share> parts(
            double reading, double nominal, List<ReturnSample> draws, List<double[][]> shares, int step) {
        List<ClaimRow.Share> parts = new ArrayList<>();
        parts.add(new ClaimRow.Share(ClaimRow.Part.WEATHER, Band.exact(nominal)));
        parts.add(of(ClaimRow.Part.FINISH, group(shares, InputGroup.FINISH, step)));
        parts.add(of(ClaimRow.Part.PLACE, group(shares, InputGroup.PLACE, step)));
        parts.add(of(
                ClaimRow.Part.USE,
                draws.stream().mapToDouble(draw -> draw.byUse()[step]).toArray()));
        parts.add(of(ClaimRow.Part.MATERIAL, group(shares, InputGroup.MATERIAL, step)));
        parts.add(of(
                ClaimRow.Part.REST,
                draws.stream().mapToDouble(draw -> reading - draw.steps()[step]).toArray()));
        return parts;
    }

    private static double[] group(List<double[][]> shares, InputGroup group, int step) {
        return shares.stream()
                .mapToDouble(share -> share[InputGroup.ALL.indexOf(group)][step])
                .toArray();
    }

    private static ClaimRow.Share of(ClaimRow.Part part, double[] values) {
        return new ClaimRow.Share(part, ReturnPosterior.spread(values));
    }

    /** Whether no step lies too far out for a cause with these draws. */
    static boolean explains(List<ReturnSample> draws, List<MeasuredStep> measured) {
        int count = measured.size();
        return IntStream.range(0, count)
                .allMatch(i -> blurred(draws, measured.get(i), i)
                                .asFarOut(measured.get(i).step().metres())
                        >= UNHEARD_OF / count);
    }

    private static BlurredSample blurred(List<ReturnSample> draws, MeasuredStep measured, int step) {
        return new BlurredSample(
                draws.stream().mapToDouble(draw -> draw.steps()[step]).toArray(), measured.deviationMetres());
    }
}
