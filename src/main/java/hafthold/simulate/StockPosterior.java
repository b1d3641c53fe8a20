package hafthold.simulate;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * What is known of a block after what was read.
 *
 * @param outlooks draws that count alike
 * @param pastDays days that the past of each draw is told at, the day it was bought first
 * @param effectiveSamples how many equally good draws would say as much
 * @param samples how many were drawn
 * @param misfit of the best draw, how far a reading lies off on the whole, in its deviations; 0 where nothing was read
 * @param furthest of the best draw, what lies furthest off
 * @param drivers share of each input in how long it takes, largest first
 */
public record StockPosterior(
        List<StockOutlook> outlooks,
        List<LocalDate> pastDays,
        double effectiveSamples,
        int samples,
        double misfit,
        StockFurthest furthest,
        Map<StockInput, Double> drivers) {}
