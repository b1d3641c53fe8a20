package hafthold.air;

import hafthold.numeric.PeriodicFilter;
import hafthold.source.Message;
import hafthold.source.PublishedModel;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A closed case or drawer in a home: room temperature, and the room's humidity with a half time.
 *
 * @param home the room
 * @param halfTimeDays time in which the case makes up half of a step in humidity, days, 0.1 to 365
 */
@PublishedModel(
        source = "thomson-1977",
        locator = "hygrometric half-time of a case",
        validity = "closed case without added humidity buffer; half time from memory")
public record DisplayCase(UncooledHome home, double halfTimeDays) implements Setting {

    /** Rejects figures out of range. */
    public DisplayCase {
        if (!(halfTimeDays >= 0.1 && halfTimeDays <= 365)) {
            throw new IllegalArgumentException("a case needs a half time of 0.1 to 365 days, got " + halfTimeDays);
        }
    }

    /** Ten days: a wooden case with an ordinary lid. */
    public static DisplayCase usual() {
        return new DisplayCase(UncooledHome.usual(), 10);
    }

    @Override
    public String id() {
        return "display-case";
    }

    @Override
    public String name() {
        return "display case";
    }

    @Override
    public Message rule() {
        return Message.of(
                "rule.display-case",
                Map.of(
                        "humidifier", home.home().humidifierWords(),
                        "half-time", Message.number(halfTimeDays, 0)));
    }

    @Override
    public Message basis() {
        return Message.of("basis.display-case");
    }

    @Override
    public Optional<Setting> inHome(UnaryOperator<HeatedHome> change) {
        return Optional.of(new DisplayCase(home.inHomeLike(change), halfTimeDays));
    }

    @Override
    public AirSeries inside(AirSeries outdoor) {
        AirSeries room = home.inside(outdoor);
        int n = room.size();
        double[] temperature = new double[n];
        double[] humidity = new double[n];
        for (int i = 0; i < n; i++) {
            temperature[i] = room.temperatureCelsius(i);
            humidity[i] = room.relativeHumidityFraction(i);
        }
        double halfTime = halfTimeDays * OutdoorDays.DAY_SECONDS / room.stepSeconds();
        return new AirSeries(room.stepSeconds(), temperature, PeriodicFilter.firstOrderLag(humidity, halfTime));
    }
}
