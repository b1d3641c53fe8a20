package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.air.CommonYear;
import hafthold.air.HeldAir;
import hafthold.air.Stay;
import hafthold.air.StayChain;
import hafthold.knife.FullTangKnife;
import hafthold.knife.KnifeHistory;
import hafthold.knife.WorkState.SettledAir;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The air about a knife from final sanding to the last day on which it was measured: the workshop until it was delivered,
 * the customer's, and the bench it came back to; and the same way in air that is other than it was taken for.
 */
final class KnifeWay {
    /** How far the air of the bench is taken other to see what that does, fraction: the doubt about a cheap hygrometer. */
    static final double BENCH_SHIFT = 0.05;

    /** Moisture of longer ago than that has no part in that of today (assumed). */
    private static final int MOST_YEARS = 3;

    private final List<Stay> stays;
    private final int firstHome;
    private final int lastHome;
    private final LocalDate leaves;
    private final Destination destination;
    private final LocalDate last;

    /** In what the way differs from what was said of it. */
    enum Other {
        NONE,
        DRIER_PLACE,
        DAMPER_PLACE,
        DRIER_HABITS,
        DAMPER_HABITS,
        DAMPER_BENCH
    }

    KnifeWay(FullTangKnife knife, Destination destination, KnifeHistory history) {
        this.destination = destination;
        this.last = history.lastMeasured();
        stays = new ArrayList<>();
        LocalDate start = later(history.finished(), remembered(history));
        if (destination.stays().isPresent()) {
            stays.addAll(destination.stays().get().stays());
        } else {
            boolean rested = history.delivered().isAfter(start);
            if (rested && knife.build().made() instanceof SettledAir shop) {
                stays.add(held(
                        start,
                        "workshop",
                        new HeldAir(
                                shop.temperature().celsius(), shop.humidity().fraction())));
            }
            stays.add(at(stays.isEmpty() ? start : history.delivered()));
        }
        firstHome = stays.size() - 1;
        LocalDate gone = history.bench().map(KnifeHistory.BenchRest::since).orElse(last);
        for (LocalDate next = stays.get(firstHome).from().plusYears(1); next.isBefore(gone); next = next.plusYears(1)) {
            stays.add(stays.get(firstHome).from(next));
        }
        lastHome = stays.size() - 1;
        leaves = gone;
        history.bench()
                .filter(bench -> !bench.since().isAfter(last))
                .ifPresent(bench -> stays.add(held(
                        bench.since(),
                        "bench",
                        new HeldAir(
                                bench.temperature().celsius(), bench.humidity().fraction()))));
    }

    /** From when on its air counts: some years before it was measured, and a year before it came back. */
    private static LocalDate remembered(KnifeHistory history) {
        LocalDate years = history.firstMeasured().minusYears(MOST_YEARS);
        return history.bench()
                .map(bench -> bench.since().minusYears(1))
                .filter(years::isAfter)
                .orElse(years);
    }

    private static LocalDate later(LocalDate one, LocalDate other) {
        return one.isAfter(other) ? one : other;
    }

    private Stay at(LocalDate from) {
        return new Stay(
                from,
                destination.id(),
                destination.setting(),
                destination.outdoors(),
                destination.air(),
                destination.humidityDoubtFraction());
    }

    private static Stay held(LocalDate from, String name, HeldAir air) {
        AirSeries year = air.year();
        return new Stay(from, name, air, year, year, 0);
    }

    /** The day counted from final sanding. */
    int day(LocalDate date) {
        return Math.toIntExact(ChronoUnit.DAYS.between(stays.get(0).from(), date));
    }

    /** The day, of those before the end, on which the air of the customer's was last about it. */
    LocalDate lastAtHome(LocalDate date) {
        return date.isAfter(leaves) ? leaves : date;
    }

    /** True where that makes another air. */
    boolean knows(Other other) {
        return switch (other) {
            case NONE, DRIER_PLACE, DAMPER_PLACE -> true;
            case DRIER_HABITS -> destination.drierHabits().isPresent();
            case DAMPER_HABITS -> destination.damperHabits().isPresent();
            case DAMPER_BENCH -> stays.size() > lastHome + 1;
        };
    }

    /** Air hour by hour from final sanding to the end of the last day. */
    AirSeries air(Other other) {
        int side = switch (other) {
            case DRIER_PLACE -> -1;
            case DAMPER_PLACE, DAMPER_BENCH -> 1;
            default -> 0;
        };
        List<Stay> altered = new ArrayList<>();
        for (int i = 0; i < stays.size(); i++) {
            Stay stay = stays.get(i);
            boolean isBench = i > lastHome;
            double doubt = other == Other.DAMPER_BENCH
                    ? isBench ? BENCH_SHIFT : 0
                    : isBench ? 0 : stay.humidityDoubtFraction();
            AirSeries air = i >= firstHome && !isBench ? habits(other).orElse(stay.air()) : stay.air();
            altered.add(new Stay(stay.from(), stay.name(), stay.setting(), stay.outdoors(), air, doubt));
        }
        AirSeries all = new StayChain(altered).air(side);
        return all.firstSamples((day(last) + 1) * CommonYear.HOURS_A_DAY);
    }

    private Optional<AirSeries> habits(Other other) {
        return switch (other) {
            case DRIER_HABITS -> destination.drierHabits();
            case DAMPER_HABITS -> destination.damperHabits();
            default -> Optional.empty();
        };
    }
}
