package hafthold.decide;

import hafthold.air.AirSeries;
import hafthold.air.CommonYear;
import hafthold.source.Message;

/**
 * The air of the workshop through its year.
 *
 * @param rule what it was taken from, one sentence
 * @param air a closed year of hours from 1 January
 * @param humidityDoubtFraction how far its humidity may be off all year round, fraction of relative humidity
 */
public record ShopAir(Message rule, AirSeries air, double humidityDoubtFraction) {

    /** Rejects air that is no year of hours. */
    public ShopAir {
        if (air.size() != CommonYear.HOURS) {
            throw new IllegalArgumentException(
                    "a workshop's year has " + CommonYear.HOURS + " hours, got " + air.size());
        }
    }
}
