package hafthold.table;

import hafthold.air.CommonYear;
import java.util.Arrays;

/** A year of readings, an hour that has none marked by NaN; the year is closed. */
final class ClosedReadings {
    private final double[] late = new double[CommonYear.HOURS];
    private final double[] celsius = new double[CommonYear.HOURS];
    private final double[] humidity = new double[CommonYear.HOURS];

    ClosedReadings() {
        Arrays.fill(celsius, Double.NaN);
    }

    void put(int slot, double lateBy, double celsiusThere, double humidityThere) {
        late[slot] = lateBy;
        celsius[slot] = celsiusThere;
        humidity[slot] = humidityThere;
    }

    boolean has(int slot) {
        return !Double.isNaN(celsius[slot]);
    }

    /** Hours of the year that have readings. */
    int[] slots() {
        int[] slots = new int[CommonYear.HOURS];
        int n = 0;
        for (int slot = 0; slot < CommonYear.HOURS; slot++) {
            if (has(slot)) {
                slots[n++] = slot;
            }
        }
        return Arrays.copyOf(slots, n);
    }

    int[] inGapsOver(int hours) {
        int[] slots = new int[CommonYear.HOURS];
        int n = 0;
        int[] there = slots();
        for (int i = 0; i < there.length; i++) {
            int apart = apart(there, i);
            for (int step = 1; apart - 1 > hours && step < apart; step++) {
                slots[n++] = (there[i] + step) % CommonYear.HOURS;
            }
        }
        return Arrays.copyOf(slots, n);
    }

    /** Hours from one hour that has readings to the next; the last is followed by the first. */
    static int apart(int[] slots, int i) {
        return i + 1 < slots.length ? slots[i + 1] - slots[i] : slots[0] + CommonYear.HOURS - slots[i];
    }

    /** When the readings of an hour were taken on the mean, hours. */
    private double time(int slot) {
        return slot + late[slot];
    }

    /** Both columns at whole hours, on straight lines between the means of the hours that have readings. */
    void lines(double[] temperatureCelsius, double[] humidityFraction) {
        int[] there = slots();
        for (int i = 0; i < there.length; i++) {
            int from = there[i];
            int to = there[(i + 1) % there.length];
            double start = time(from);
            double span = from + apart(there, i) + late[to] - start;
            for (int hour = (int) Math.ceil(start); hour < start + span; hour++) {
                double share = (hour - start) / span;
                int slot = Math.floorMod(hour, CommonYear.HOURS);
                temperatureCelsius[slot] = celsius[from] + share * (celsius[to] - celsius[from]);
                humidityFraction[slot] = humidity[from] + share * (humidity[to] - humidity[from]);
            }
        }
    }
}
