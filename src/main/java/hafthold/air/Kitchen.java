package hafthold.air;

import hafthold.source.Message;
import hafthold.source.PublishedModel;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A kitchen: the home without cooling with more vapour all day, and steam for an hour at 7, 12 and 18 o'clock.
 *
 * @param home the home it is in
 * @param excessFactor vapour added indoors, in times the home's, 1 to 4
 * @param steamPascals further vapour in the three cooking hours, pascals, 0 to 2000
 */
@PublishedModel(source = "setting-rules", locator = "kitchen", validity = "a home's kitchen away from the hob and sink")
public record Kitchen(UncooledHome home, double excessFactor, double steamPascals) implements Setting {

    /** Rejects figures out of range. */
    public Kitchen {
        if (!(excessFactor >= 1 && excessFactor <= 4) || !(steamPascals >= 0 && steamPascals <= 2000)) {
            throw new IllegalArgumentException("a kitchen needs a factor of 1 to 4 and 0 to 2000 Pa of steam, got "
                    + excessFactor + " and " + steamPascals);
        }
    }

    /** Twice the usual home's vapour (class 2 in full), 500 Pa when cooking: some 20 points at 20 C. */
    public static Kitchen usual() {
        return new Kitchen(UncooledHome.usual(), 2, 500);
    }

    @Override
    public String id() {
        return "kitchen";
    }

    @Override
    public String name() {
        return "kitchen";
    }

    @Override
    public Message rule() {
        return Message.of(
                "rule.kitchen",
                Map.of(
                        "times", Message.number(excessFactor, 0),
                        "steam", Message.number(steamPascals, 0),
                        "humidifier", home.home().humidifierWords()));
    }

    @Override
    public Message basis() {
        return Message.of("basis.kitchen");
    }

    @Override
    public Optional<Setting> inHome(UnaryOperator<HeatedHome> change) {
        return Optional.of(new Kitchen(home.inHomeLike(change), excessFactor, steamPascals));
    }

    @Override
    public AirSeries inside(AirSeries outdoor) {
        Enclosure room = new Enclosure(outdoor);
        OutdoorDays days = room.outdoors();
        IndoorMoistureExcess excess = home.home().excess().times(excessFactor);
        for (int i = 0; i < days.size(); i++) {
            double mean = days.meanCelsius(i);
            double vapour = days.meanVapourPascals(i)
                    + excess.pascals(mean)
                    + (isCooking((int) days.clockHour(i)) ? steamPascals : 0);
            room.set(
                    i,
                    home.home().temperature(mean, home.warmerKelvin()),
                    vapour,
                    home.home().humidityFloorFraction(),
                    1);
        }
        return room.air();
    }

    private static boolean isCooking(int hour) {
        return hour == 7 || hour == 12 || hour == 18;
    }
}
