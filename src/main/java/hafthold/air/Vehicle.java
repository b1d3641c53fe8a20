package hafthold.air;

import hafthold.source.Message;
import hafthold.source.PublishedModel;
import java.util.Map;

/**
 * The cabin or tool box of a parked vehicle: outdoor air, and from 8 to 18 o'clock the sun on top of it,
 *
 * <pre>
 * T_in = T_out + min(cap, gain R) sin(pi (hour - 8)/10),     p_in = p_day
 * </pre>
 *
 * <p>R is the outdoor temperature range of the calendar day: a clear sky makes both the range and the heat in the car,
 * so the range stands for the sun. On clear days closed cars were measured 22 K above the outdoor air within an hour.
 *
 * @param gain heat per kelvin of the day's range, K/K, 0 to 4
 * @param capKelvin most the sun adds, kelvin, 0 to 40
 */
@PublishedModel(
        source = "mclaren-2005",
        locator = "rise within an hour, mean of clear days: 40 F",
        validity = "parked by day, shade now and then; not the worst hour of the year")
public record Vehicle(double gain, double capKelvin) implements Setting {
    private static final double SUN_FROM_HOUR = 8;
    private static final double SUN_HOURS = 10;

    /** Rejects figures out of range. */
    public Vehicle {
        if (!(gain >= 0 && gain <= 4) || !(capKelvin >= 0 && capKelvin <= 40)) {
            throw new IllegalArgumentException(
                    "a vehicle needs a gain of 0 to 4 and a cap of 0 to 40 K, got " + gain + " and " + capKelvin);
        }
    }

    /** One and a half times the day's range, at most 22 K. */
    public static Vehicle usual() {
        return new Vehicle(1.5, 22);
    }

    @Override
    public String id() {
        return "vehicle";
    }

    @Override
    public String name() {
        return "parked vehicle";
    }

    @Override
    public Message rule() {
        return Message.of(
                "rule.vehicle",
                Map.of(
                        "times", Message.number(gain, 1),
                        "most", Message.number(capKelvin, 0)));
    }

    @Override
    public Message basis() {
        return Message.of("basis.vehicle");
    }

    @Override
    public AirSeries inside(AirSeries outdoor) {
        Enclosure cabin = new Enclosure(outdoor);
        OutdoorDays days = cabin.outdoors();
        double[] range = days.rangeKelvin();
        for (int i = 0; i < days.size(); i++) {
            double sun = (days.clockHour(i) - SUN_FROM_HOUR) / SUN_HOURS;
            double rise = sun > 0 && sun < 1 ? Math.min(capKelvin, gain * range[i]) * Math.sin(Math.PI * sun) : 0;
            cabin.set(i, days.temperatureCelsius(i) + rise, days.meanVapourPascals(i), 0, 1);
        }
        return cabin.air();
    }
}
