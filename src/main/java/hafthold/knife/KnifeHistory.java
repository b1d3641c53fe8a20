package hafthold.knife;

import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/**
 * What became of a knife since its last sanding, as far as its maker knows.
 *
 * @param finished day of final sanding
 * @param delivered day it came to the customer, that day or later; till then it lay in the air it was made in
 * @param bench where it lies since it came back; empty where it was measured at the customer's
 * @param measured what was measured, one or more, none before the day of delivery
 * @param suspected ids of events that may have happened to it; empty to try all that there are
 */
public record KnifeHistory(
        LocalDate finished,
        LocalDate delivered,
        Optional<BenchRest> bench,
        List<MeasuredStep> measured,
        List<String> suspected) {
    /** Longest history that is followed, days. */
    public static final long MOST_DAYS = 20L * 365;

    /** Before that a handle on the bench still holds much of the air it came from (a judgement). */
    private static final int REST_DAYS = 7;

    /** Lately is within so many days (a judgement). */
    public static final int LATELY_DAYS = 28;

    /** Keeps its own copies; rejects days out of order. */
    public KnifeHistory {
        measured = List.copyOf(measured);
        suspected = List.copyOf(suspected);
        if (delivered.isBefore(finished)) {
            throw new UnfitBuildException("delivered", delivered.toString(), "the day of finishing or a later one");
        }
        if (bench.isPresent() && !bench.get().since().isAfter(delivered)) {
            throw new UnfitBuildException("back", bench.get().since().toString(), "a day after it was delivered");
        }
        if (measured.isEmpty()) {
            throw new IllegalArgumentException("a claim needs something that was measured");
        }
    }

    /**
     * The bench a knife came back to.
     *
     * @param since day it came back
     * @param humidity humidity of the air there, as read
     * @param temperature temperature of the air there
     * @param checked whether the hygrometer there was checked against salt or another one; else it is taken for the one
     *     that was read at finishing, and as much off
     */
    public record BenchRest(LocalDate since, RelativeHumidity humidity, Temperature temperature, boolean checked) {}

    /** The last day on which something was measured. */
    public LocalDate lastMeasured() {
        return measured.stream().map(MeasuredStep::on).max(LocalDate::compareTo).orElseThrow();
    }

    /** The first such day. */
    public LocalDate firstMeasured() {
        return measured.stream().map(MeasuredStep::on).min(LocalDate::compareTo).orElseThrow();
    }

    /** True where a step was measured after the knife had come back to the bench. */
    public boolean isAtBench(MeasuredStep step) {
        return bench.filter(rest -> !step.on().isBefore(rest.since())).isPresent();
    }

    /** True where nothing was measured at rest on the bench, a week or more after it came back. */
    public boolean isOnlyAtHome() {
        return measured.stream()
                .noneMatch(step -> bench.filter(
                                rest -> !step.on().isBefore(rest.since().plusDays(REST_DAYS)))
                        .isPresent());
    }

    /** The day on which the customer's had it last before anything was measured: that day, or that of coming back. */
    public LocalDate lastUse() {
        return bench.map(BenchRest::since).filter(firstMeasured()::isAfter).orElse(firstMeasured());
    }

    /** Whether the customer had it so long that what happened to it need not have happened lately. */
    public boolean isLongInUse() {
        return ChronoUnit.DAYS.between(delivered, lastUse()) > LATELY_DAYS;
    }

    /** The same with other events suspected. */
    public KnifeHistory suspecting(List<String> events) {
        return new KnifeHistory(finished, delivered, bench, measured, events);
    }

    /**
     * The same with other days of final sanding and of coming where it lives.
     *
     * @throws UnfitBuildException where what is known does not go with them
     */
    public KnifeHistory on(LocalDate sanded, LocalDate came) {
        return new KnifeHistory(sanded, came, bench, measured, suspected);
    }
}
