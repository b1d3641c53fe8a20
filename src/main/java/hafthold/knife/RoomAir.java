package hafthold.knife;

import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;

/**
 * Air of a room, a shelf or a box.
 *
 * @param humidity relative humidity
 * @param temperature temperature
 */
public record RoomAir(RelativeHumidity humidity, Temperature temperature) {}
