package hafthold.air;

import java.util.Optional;

/**
 * How far one household lies from the usual one: the dry end airs and heats much and adds half the usual vapour, the damp
 * end saves heat and adds twice the usual, which is class 2 of EN ISO 13788 in full (the class second-hand, the ends
 * assumed). Cooling that holds 55 % holds 50 to 60. What is no home has no habits.
 */
public final class HomeHabits {
    private static final double VAPOUR_FACTOR = 2;
    private static final double HEATING_KELVIN = 1.5;
    private static final double CAP_FRACTION = 0.05;

    private HomeHabits() {}

    /** The same setting with dry habits; empty where habits play no part. */
    public static Optional<Setting> drier(Setting setting) {
        return changed(setting, 1 / VAPOUR_FACTOR, HEATING_KELVIN, -CAP_FRACTION);
    }

    /** The same setting with damp habits; empty where habits play no part. */
    public static Optional<Setting> damper(Setting setting) {
        return changed(setting, VAPOUR_FACTOR, -HEATING_KELVIN, CAP_FRACTION);
    }

    private static Optional<Setting> changed(Setting setting, double vapour, double kelvin, double cap) {
        if (setting instanceof HeatedHome home) {
            return Optional.of(home(home, vapour, kelvin));
        }
        if (setting instanceof UncooledHome home) {
            return Optional.of(home(home, vapour, kelvin));
        }
        if (setting instanceof AirConditionedHome home) {
            return Optional.of(new AirConditionedHome(
                    home(home.home(), vapour, kelvin),
                    home.coolingCelsius(),
                    Math.min(1, Math.max(0.3, home.humidityCapFraction() + cap))));
        }
        if (setting instanceof Kitchen kitchen) {
            return Optional.of(
                    new Kitchen(home(kitchen.home(), vapour, kelvin), kitchen.excessFactor(), kitchen.steamPascals()));
        }
        return Optional.empty();
    }

    private static UncooledHome home(UncooledHome home, double vapour, double kelvin) {
        return new UncooledHome(home(home.home(), vapour, kelvin), home.warmerKelvin());
    }

    private static HeatedHome home(HeatedHome home, double vapour, double kelvin) {
        double heating = Math.min(30, Math.max(5, home.heatingCelsius() + kelvin));
        return new HeatedHome(heating, home.excess().times(vapour), home.humidityFloorFraction());
    }
}
