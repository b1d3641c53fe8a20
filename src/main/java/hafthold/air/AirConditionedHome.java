package hafthold.air;

import hafthold.source.Message;
import hafthold.source.PublishedModel;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A home heated in the cold and cooled in the warm: as {@link UncooledHome}, temperature and humidity held below limits.
 *
 * @param home the home when the plant is off
 * @param coolingCelsius temperature held by the cooling, degrees Celsius, above the heating, at most 32
 * @param humidityCapFraction humidity not exceeded, 0.3 to 1
 */
@PublishedModel(
        source = "setting-rules",
        locator = "air-conditioned home",
        validity = "cooling that runs day and night whenever it is needed")
public record AirConditionedHome(UncooledHome home, double coolingCelsius, double humidityCapFraction)
        implements Setting {

    /** Rejects figures out of range. */
    public AirConditionedHome {
        if (!(coolingCelsius >= home.home().heatingCelsius() && coolingCelsius <= 32)
                || !(humidityCapFraction >= 0.3 && humidityCapFraction <= 1)) {
            throw new IllegalArgumentException("cooling needs a temperature from the heating's to 32 C and a cap from"
                    + " 0.3 to 1, got " + coolingCelsius + " C and " + humidityCapFraction);
        }
        if (home.home().humidityFloorFraction() > humidityCapFraction) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "a humidifier that holds %.0f %% works against air conditioning that allows %.0f %%",
                    100 * home.home().humidityFloorFraction(),
                    100 * humidityCapFraction));
        }
    }

    /** 24.5 C and 55 %. */
    public static AirConditionedHome usual() {
        return new AirConditionedHome(UncooledHome.usual(), 24.5, 0.55);
    }

    /** The same home with its humidity held below another limit. */
    public AirConditionedHome capped(double capFraction) {
        return new AirConditionedHome(home, coolingCelsius, capFraction);
    }

    @Override
    public String id() {
        return "air-conditioned";
    }

    @Override
    public String name() {
        return "air-conditioned home";
    }

    @Override
    public Message rule() {
        return Message.of(
                "rule.air-conditioned",
                Map.of(
                        "cooling", Message.number(coolingCelsius, 1),
                        "cap", Message.number(100 * humidityCapFraction, 0),
                        "humidifier", home.home().humidifierWords()));
    }

    @Override
    public Message basis() {
        return Message.of("basis.air-conditioned");
    }

    @Override
    public Optional<Setting> inHome(UnaryOperator<HeatedHome> change) {
        return Optional.of(new AirConditionedHome(home.inHomeLike(change), coolingCelsius, humidityCapFraction));
    }

    @Override
    public AirSeries inside(AirSeries outdoor) {
        return home.home().inside(outdoor, home.warmerKelvin(), coolingCelsius, humidityCapFraction);
    }
}
