package hafthold.simulate;

import hafthold.knife.RoomAir;
import hafthold.knife.StockBlock;
import hafthold.knife.StockReading;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * The days of a block from the one it was bought on to the last reading, cut into spans that end on every day something was
 * read, and the air of each.
 *
 * @param spans oldest first; none where it was bought today
 */
record StockPast(List<Span> spans) {
    private static final int ABOUT_SPANS = 50;
    private static final double DAY_SECONDS = 86_400;

    /** Keeps its own copy. */
    StockPast {
        spans = List.copyOf(spans);
    }

    /**
     * A while in one air.
     *
     * @param until the day it ends on
     * @param days how long
     * @param humidityFraction relative humidity as read
     * @param celsius temperature
     */
    record Span(LocalDate until, double days, double humidityFraction, double celsius) {
        double seconds() {
            return days * DAY_SECONDS;
        }
    }

    /** The past of a block. */
    static StockPast of(StockBlock block, StockAir storage) {
        long whole = ChronoUnit.DAYS.between(block.bought(), block.today());
        long stride = Math.max(1, whole / ABOUT_SPANS);
        TreeSet<LocalDate> ends = new TreeSet<>();
        for (long day = stride; day < whole; day += stride) {
            ends.add(block.bought().plusDays(day));
        }
        block.readings().forEach(reading -> ends.add(reading.on()));
        block.coupon().ifPresent(slice -> ends.add(slice.on()));
        ends.remove(block.bought());
        List<Span> spans = new ArrayList<>();
        LocalDate from = block.bought();
        for (LocalDate until : ends) {
            long days = ChronoUnit.DAYS.between(from, until);
            LocalDate middle = from.plusDays(days / 2);
            Optional<RoomAir> told = air(block, until);
            spans.add(new Span(
                    until,
                    days,
                    told.map(air -> air.humidity().fraction()).orElseGet(() -> storage.humidityFraction(middle)),
                    told.map(air -> air.temperature().celsius()).orElseGet(() -> storage.celsius(middle))));
            from = until;
        }
        return new StockPast(spans);
    }

    /** The air that the next reading on or after a day says it had lain in. */
    private static Optional<RoomAir> air(StockBlock block, LocalDate day) {
        return block.readings().stream()
                .filter(reading -> !reading.on().isBefore(day))
                .findFirst()
                .flatMap(StockReading::air);
    }

    /** Place of a day among its starts and ends: 0 for the day it was bought on, then 1 for the end of the first span. */
    int at(LocalDate day) {
        for (int i = 0; i < spans.size(); i++) {
            if (spans.get(i).until().equals(day)) {
                return i + 1;
            }
        }
        return 0;
    }
}
