package hafthold.air;

import hafthold.source.Message;
import hafthold.source.PublishedModel;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A home that is heated in the cold and left alone in the warm: T_in = max(heating, T_out), p_in = p_out + dp(T_out), with
 * 24-hour means of T_out and p_out, which is how far furnishings even out the day.
 *
 * <p>We depart from the indoor humidity ramp of EN 15026, which fits Europe and gives 60 % in a desert's summer.
 *
 * @param heatingCelsius temperature held by the heating, degrees Celsius, 5 to 30
 * @param excess vapour added indoors
 * @param humidityFloorFraction humidity held by a humidifier, 0 (none) to 0.7
 */
@PublishedModel(
        source = "en-iso-13788",
        locator = "vapour balance with internal humidity class",
        validity = "homes aired to the outdoors, daily means")
public record HeatedHome(double heatingCelsius, IndoorMoistureExcess excess, double humidityFloorFraction)
        implements Setting {

    /** Rejects figures out of range. */
    public HeatedHome {
        if (!(heatingCelsius >= 5 && heatingCelsius <= 30)
                || !(humidityFloorFraction >= 0 && humidityFloorFraction <= 0.7)) {
            throw new IllegalArgumentException("heating needs 5 to 30 C and the humidifier 0 to 0.7, got "
                    + heatingCelsius + " C and " + humidityFloorFraction);
        }
    }

    /** 20.5 C, half of humidity class 2, no humidifier. */
    public static HeatedHome usual() {
        return new HeatedHome(20.5, IndoorMoistureExcess.typicalHome(), 0);
    }

    /** The same home with more or less vapour added indoors. */
    public HeatedHome livedIn(IndoorMoistureExcess otherExcess) {
        return new HeatedHome(heatingCelsius, otherExcess, humidityFloorFraction);
    }

    /** The same home with a humidifier that holds at least this humidity, such as 0.35. */
    public HeatedHome humidified(double floorFraction) {
        return new HeatedHome(heatingCelsius, excess, floorFraction);
    }

    @Override
    public String id() {
        return "heated-home";
    }

    @Override
    public String name() {
        return "heated home";
    }

    @Override
    public Message rule() {
        return Message.of(
                "rule.heated-home",
                Map.of(
                        "heating", Message.number(heatingCelsius, 1),
                        "frost", Message.number(excess.frostPascals(), 0),
                        "summer", Message.number(excess.summerPascals(), 0),
                        "humidifier", humidifierWords()));
    }

    /** What is to be said of the humidifier at the end of a rule; nothing where there is none. */
    Message humidifierWords() {
        return humidityFloorFraction > 0
                ? Message.of("rule.humidifier", Map.of("humidity", Message.number(100 * humidityFloorFraction, 0)))
                : Message.verbatim("");
    }

    @Override
    public Message basis() {
        return Message.of("basis.heated-home");
    }

    @Override
    public Optional<Setting> inHome(UnaryOperator<HeatedHome> change) {
        return Optional.of(change.apply(this));
    }

    @Override
    public AirSeries inside(AirSeries outdoor) {
        return inside(outdoor, 0, Double.POSITIVE_INFINITY, 1);
    }

    /** The balance shared by all homes: in the warm so many kelvin above outdoors, held below a cooling limit and a cap. */
    AirSeries inside(AirSeries outdoor, double warmerKelvin, double coolingCelsius, double capFraction) {
        Enclosure room = new Enclosure(outdoor);
        OutdoorDays days = room.outdoors();
        for (int i = 0; i < days.size(); i++) {
            double celsius = Math.min(coolingCelsius, temperature(days.meanCelsius(i), warmerKelvin));
            room.set(i, celsius, vapourPascals(days, i), humidityFloorFraction, capFraction);
        }
        return room.air();
    }

    double temperature(double outdoorMeanCelsius, double warmerKelvin) {
        return Math.max(heatingCelsius, outdoorMeanCelsius + warmerKelvin);
    }

    double vapourPascals(OutdoorDays days, int sample) {
        return days.meanVapourPascals(sample) + excess.pascals(days.meanCelsius(sample));
    }
}
