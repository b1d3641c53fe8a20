package hafthold.air;

import hafthold.numeric.PeriodicFilter;
import hafthold.source.Message;
import hafthold.source.PublishedModel;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A knife kept and carried in a leather sheath: outdoors for some hours of the day, in the home for the rest; leather
 * evens out the humidity, with a half time, and not the temperature. Vapour carries the water, so the pace goes with the
 * saturation pressure: leather that takes a day to settle at 20 C takes months at -35 C.
 *
 * @param home where the sheath hangs when it is not carried
 * @param carriedFromHour clock hour when it goes out, 0 to {@code carriedToHour}
 * @param carriedToHour clock hour when it comes home, at most 24
 * @param halfTimeHours time in which the leather makes up half of a step in humidity at 20 C, hours, 1 to 1000
 */
@PublishedModel(source = "setting-rules", locator = "leather sheath", validity = "dry carry; a wet sheath is an event")
public record LeatherSheath(UncooledHome home, double carriedFromHour, double carriedToHour, double halfTimeHours)
        implements Setting {
    private static final double HOUR_SECONDS = 3600;
    private static final double REFERENCE_CELSIUS = 20;

    /** Rejects figures out of range. */
    public LeatherSheath {
        if (!(carriedFromHour >= 0 && carriedFromHour <= carriedToHour && carriedToHour <= CommonYear.HOURS_A_DAY)
                || !(halfTimeHours >= 1 && halfTimeHours <= 1000)) {
            throw new IllegalArgumentException("a sheath needs 0 <= out <= home <= 24 o'clock and a half time of 1 to"
                    + " 1000 h, got " + carriedFromHour + ", " + carriedToHour + ", " + halfTimeHours);
        }
    }

    /** Out from 8 to 16 o'clock, half time one day. */
    public static LeatherSheath usual() {
        return new LeatherSheath(UncooledHome.usual(), 8, 16, 24);
    }

    @Override
    public String id() {
        return "sheath";
    }

    @Override
    public String name() {
        return "leather sheath";
    }

    @Override
    public Message rule() {
        return Message.of(
                "rule.sheath",
                Map.of(
                        "from", Message.number(carriedFromHour, 0),
                        "to", Message.number(carriedToHour, 0),
                        "humidifier", home.home().humidifierWords(),
                        "half-time", Message.number(halfTimeHours, 0)));
    }

    @Override
    public Message basis() {
        return Message.of("basis.sheath");
    }

    @Override
    public Optional<Setting> inHome(UnaryOperator<HeatedHome> change) {
        return Optional.of(new LeatherSheath(home.inHomeLike(change), carriedFromHour, carriedToHour, halfTimeHours));
    }

    @Override
    public AirSeries inside(AirSeries outdoor) {
        AirSeries room = home.inside(outdoor);
        int n = outdoor.size();
        double[] temperature = new double[n];
        double[] humidity = new double[n];
        for (int i = 0; i < n; i++) {
            double hour = i * outdoor.stepSeconds() / HOUR_SECONDS % CommonYear.HOURS_A_DAY;
            AirSeries here = hour >= carriedFromHour && hour < carriedToHour ? outdoor : room;
            temperature[i] = here.temperatureCelsius(i);
            humidity[i] = here.relativeHumidityFraction(i);
        }
        return new AirSeries(
                outdoor.stepSeconds(), temperature, PeriodicFilter.firstOrderLag(humidity, kept(temperature, outdoor)));
    }

    private double[] kept(double[] temperature, AirSeries outdoor) {
        double halfTimes = outdoor.stepSeconds() / (halfTimeHours * HOUR_SECONDS);
        double reference = Enclosure.saturationPascals(REFERENCE_CELSIUS);
        double[] kept = new double[temperature.length];
        for (int i = 0; i < kept.length; i++) {
            kept[i] = Math.pow(0.5, halfTimes * Enclosure.saturationPascals(temperature[i]) / reference);
        }
        return kept;
    }
}
