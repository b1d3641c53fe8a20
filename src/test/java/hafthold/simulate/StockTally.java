package hafthold.simulate;

import hafthold.decide.StockMoisture.Days;
import hafthold.decide.StockVerdict;
import hafthold.quantity.Band;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How often the command was right about invented blocks.
 *
 * @param blocks how many
 * @param mean of them with their mean moisture in its band of eight of ten
 * @param core likewise, of the core
 * @param date likewise, of the day they are ready
 * @param later of them ready later than the late end of the band, beyond which one in ten may lie
 * @param ready said to be ready
 * @param readyWrongly of those, not ready
 * @param wet said to be too wet
 * @param wetWrongly of those, not wetter than they should be
 * @param odd said not to fit
 * @param toldRight ready when the seven days' change of weight told so
 */
record StockTally(
        int blocks,
        int mean,
        int core,
        int date,
        int later,
        int ready,
        int readyWrongly,
        int wet,
        int wetWrongly,
        int odd,
        int toldRight) {

    /** Trials of a Latin hypercube over what is not known. */
    static List<StockTrial> trials(int count, long seed, int cells, int samples) {
        List<StockInputs> draws = StockDraws.of(count, seed).draws();
        return IntStream.range(0, count)
                .parallel()
                .mapToObj(i -> StockTrial.of(draws.get(i), 1000 * seed + i, cells, samples))
                .toList();
    }

    static StockTally of(List<StockTrial> trials) {
        int[] counts = new int[10];
        for (StockTrial trial : trials) {
            StockTrial.Told told = trial.told();
            StockTrial.Truth truth = trial.truth();
            Days days = told.days();
            StockVerdict verdict = told.verdict();
            boolean isWet = !truth.isReady() && truth.mean() + truth.core() > 2 * truth.goal();
            boolean[] marks = {
                holds(told.mean(), truth.mean()),
                holds(told.core(), truth.core()),
                truth.readyDays() >= days.low() && truth.readyDays() <= days.high(),
                truth.readyDays() > days.high(),
                verdict == StockVerdict.READY,
                verdict == StockVerdict.READY && !truth.isReady(),
                verdict == StockVerdict.WET,
                verdict == StockVerdict.WET && !isWet,
                verdict == StockVerdict.ODD,
                truth.isToldRight()
            };
            for (int i = 0; i < marks.length; i++) {
                counts[i] += marks[i] ? 1 : 0;
            }
        }
        return new StockTally(
                trials.size(),
                counts[0],
                counts[1],
                counts[2],
                counts[3],
                counts[4],
                counts[5],
                counts[6],
                counts[7],
                counts[8],
                counts[9]);
    }

    private static boolean holds(Band band, double value) {
        return value >= band.low() && value <= band.high();
    }
}
