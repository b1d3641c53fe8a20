package hafthold.decide;

import hafthold.air.AirSeries;
import hafthold.air.CommonYear;
import hafthold.air.HomeHabits;
import hafthold.air.Setting;
import hafthold.source.Message;

/**
 * The air of the workshop through its year.
 *
 * @param rule what it was taken from, one sentence
 * @param air a closed year of hours from 1 January
 * @param humidityDoubtFraction how far its humidity may be off all year round, fraction of relative humidity
 */
public record ShopAir(Message rule, AirSeries air, double humidityDoubtFraction) {
    /** A cheap hygrometer is off by 5 points of relative humidity (common practice, no source). */
    public static final double HYGROMETER_FRACTION = 0.05;

    /** Rejects air that is no year of hours. */
    public ShopAir {
        if (air.size() != CommonYear.HOURS) {
            throw new IllegalArgumentException(
                    "a workshop's year has " + CommonYear.HOURS + " hours, got " + air.size());
        }
    }

    /**
     * What a setting makes of outdoor air. Nobody has read its humidity: it is as doubtful as that of the place and the
     * habits in such rooms together.
     *
     * @param placeDoubtFraction how far the humidity of the place may be off
     */
    public static ShopAir in(Setting setting, Message rule, AirSeries outdoors, double placeDoubtFraction) {
        double habits = (meanHumidity(HomeHabits.damper(setting).orElse(setting), outdoors)
                        - meanHumidity(HomeHabits.drier(setting).orElse(setting), outdoors))
                / 2;
        return new ShopAir(rule, setting.inside(outdoors), Math.hypot(placeDoubtFraction, habits));
    }

    private static double meanHumidity(Setting setting, AirSeries outdoors) {
        AirSeries air = setting.inside(outdoors);
        double sum = 0;
        for (int hour = 0; hour < air.size(); hour++) {
            sum += air.relativeHumidityFraction(hour);
        }
        return sum / air.size();
    }
}
