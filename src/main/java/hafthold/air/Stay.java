package hafthold.air;

import java.time.LocalDate;

/**
 * A place and a setting that a knife comes to on a day.
 *
 * @param from the day, from midnight on
 * @param name what it is called for people, such as "parcel" or "Phoenix"
 * @param setting where the knife lives there
 * @param outdoors outdoor air, closed year of hours from 1 January
 * @param air air about the knife, likewise
 * @param humidityDoubtFraction how far the humidity may be off all the time, fraction of relative humidity
 */
public record Stay(
        LocalDate from, String name, Setting setting, AirSeries outdoors, AirSeries air, double humidityDoubtFraction) {

    /** Rejects air that is no year of hours. */
    public Stay {
        if (outdoors.size() != CommonYear.HOURS || air.size() != CommonYear.HOURS) {
            throw new IllegalArgumentException("a stay needs a year of " + CommonYear.HOURS + " hours, got "
                    + outdoors.size() + " and " + air.size());
        }
    }

    /** A stay in the air that a setting makes of outdoor air. */
    public static Stay of(
            LocalDate from, String name, Setting setting, AirSeries outdoors, double humidityDoubtFraction) {
        return new Stay(from, name, setting, outdoors, setting.inside(outdoors), humidityDoubtFraction);
    }

    /** The same from another day on. */
    public Stay from(LocalDate day) {
        return new Stay(day, name, setting, outdoors, air, humidityDoubtFraction);
    }
}
