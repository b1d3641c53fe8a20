package hafthold.table;

import hafthold.air.AirSeries;
import hafthold.source.Finding;
import java.util.List;

/**
 * Air read from a recorded file.
 *
 * @param name what the file says it is: station and country, or the file's own name
 * @param air hourly samples of a year that starts at midnight before 1 January and is closed; of a file that covers a part
 *     of the year, what lies outside is a straight line that nothing must rest on
 * @param covered hours of the year that the file speaks for
 * @param filledHours hours that the file lacked and that were put in on a straight line between their neighbours
 * @param findings what was done to the file besides reading it
 */
public record HourlyFile(String name, AirSeries air, HourSpan covered, int filledHours, List<Finding> findings) {

    /** Keeps its own copy. */
    public HourlyFile {
        findings = List.copyOf(findings);
    }
}
