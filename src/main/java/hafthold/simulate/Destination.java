package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.air.Place;
import hafthold.air.Setting;
import hafthold.air.StraightAir;

/**
 * Where a knife goes: a year of outdoor air, and the air about the knife there.
 *
 * @param id id of the place, or name of the file its air was read from
 * @param name name for people
 * @param setting where the knife lives there
 * @param outdoors outdoor air, closed year
 * @param air air about the knife, closed year
 * @param humidityDoubtFraction how far the humidity may be off all year round, fraction of relative humidity
 */
public record Destination(
        String id, String name, Setting setting, AirSeries outdoors, AirSeries air, double humidityDoubtFraction) {

    /** A place of the tables, by its reference year. */
    public static Destination of(Place place, Setting setting) {
        return recorded(
                place.id(), place.fullName(), setting, place.referenceYear(), place.humidityUncertaintyPoints() / 100);
    }

    /**
     * The same with the air about the knife reduced to as many samples as it takes to keep its course.
     *
     * @param strayFraction how far a sample left out may lie off, see {@link StraightAir}
     */
    Destination thinned(double strayFraction) {
        AirSeries kept = StraightAir.thinned(air, StraightAir.stride(air, strayFraction));
        return new Destination(id, name, setting, outdoors, kept, humidityDoubtFraction);
    }

    /** A recorded outdoor year. */
    public static Destination recorded(
            String id, String name, Setting setting, AirSeries outdoors, double humidityDoubtFraction) {
        return new Destination(id, name, setting, outdoors, setting.inside(outdoors), humidityDoubtFraction);
    }
}
