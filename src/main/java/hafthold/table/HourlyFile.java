package hafthold.table;

import hafthold.air.AirSeries;

/**
 * Air read from a recorded file.
 *
 * @param name what the file says it is: station and country, or the file's own name
 * @param air hourly samples; a whole year starts at midnight before 1 January and is closed
 * @param filledHours hours that the file lacked and that were put in on a straight line between their neighbours
 */
public record HourlyFile(String name, AirSeries air, int filledHours) {}
