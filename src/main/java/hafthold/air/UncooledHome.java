package hafthold.air;

import hafthold.source.Message;
import hafthold.source.PublishedModel;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A home heated in the cold and without cooling in the warm: as {@link HeatedHome}, but T_in = max(heating, T_out + some
 * kelvin) from sun, people and appliances.
 *
 * @param home heating and moisture
 * @param warmerKelvin how much warmer than outdoors in the warm, kelvin, 0 to 5
 */
@PublishedModel(
        source = "setting-rules",
        locator = "home without cooling",
        validity = "homes aired to the outdoors, daily means")
public record UncooledHome(HeatedHome home, double warmerKelvin) implements Setting {

    /** Rejects figures out of range. */
    public UncooledHome {
        if (!(warmerKelvin >= 0 && warmerKelvin <= 5)) {
            throw new IllegalArgumentException("a home is 0 to 5 K warmer than outdoors, got " + warmerKelvin);
        }
    }

    /** The usual home, 1.5 K warmer than outdoors. */
    public static UncooledHome usual() {
        return new UncooledHome(HeatedHome.usual(), 1.5);
    }

    @Override
    public String id() {
        return "uncooled-home";
    }

    @Override
    public String name() {
        return "home without cooling";
    }

    @Override
    public Message rule() {
        return Message.of(
                "rule.uncooled-home",
                Map.of(
                        "heating", Message.number(home.heatingCelsius(), 1),
                        "warmer", Message.number(warmerKelvin, 1),
                        "frost", Message.number(home.excess().frostPascals(), 0),
                        "summer", Message.number(home.excess().summerPascals(), 0),
                        "humidifier", home.humidifierWords()));
    }

    @Override
    public Message basis() {
        return Message.of("basis.uncooled-home");
    }

    /** The same, home by home. */
    UncooledHome inHomeLike(UnaryOperator<HeatedHome> change) {
        return new UncooledHome(change.apply(home), warmerKelvin);
    }

    @Override
    public Optional<Setting> inHome(UnaryOperator<HeatedHome> change) {
        return Optional.of(inHomeLike(change));
    }

    @Override
    public AirSeries inside(AirSeries outdoor) {
        return home.inside(outdoor, warmerKelvin, Double.POSITIVE_INFINITY, 1);
    }
}
