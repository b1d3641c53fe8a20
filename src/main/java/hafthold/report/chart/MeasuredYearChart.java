package hafthold.report.chart;

import java.util.List;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * A year with what was measured in it: each reading a mark on its day, with a bar as long as it may be off either way.
 *
 * @param year the year; its upright axis must hold the readings, see {@code inSight}
 * @param readings what was measured
 */
public record MeasuredYearChart(YearChart year, List<Reading> readings) {
    private static final double HALF_CAP = 4;

    /** Keeps its own copy. */
    public MeasuredYearChart {
        readings = List.copyOf(readings);
    }

    /**
     * One reading.
     *
     * @param day days since the start of 1 January, 0 to 365
     * @param value in the units of the picture
     * @param error how far it may be off, either way
     * @param label words beside it
     */
    public record Reading(double day, double value, double error, String label) {}

    /** The picture in one format, for a page. */
    public String svg(SheetFormat format) {
        return sheet(format).svg(year.title(), year.description());
    }

    /** The wide picture for a file of its own, its title in sight. */
    public String fileSvg() {
        return sheet(SheetFormat.WIDE).fileSvg(year.title(), year.description());
    }

    private SvgSheet sheet(SheetFormat format) {
        YearLayout layout = year.layout(format);
        Span axis = year.span();
        SvgSheet sheet = year.sheet(format, words -> {
            for (Reading reading : readings) {
                words.keepOff(
                        layout.x(reading.day()) - HALF_CAP,
                        layout.y(axis, reading.value() + reading.error()),
                        layout.x(reading.day()) + HALF_CAP,
                        layout.y(axis, reading.value() - reading.error()));
            }
            for (Reading reading : readings) {
                words.mark(layout.x(reading.day()), layout.y(axis, reading.value()), reading.label());
            }
        });
        for (Reading reading : readings) {
            double x = layout.x(reading.day());
            double low = layout.y(axis, reading.value() - reading.error());
            double high = layout.y(axis, reading.value() + reading.error());
            sheet.rule(x, low, x, high, Ink.TEXT, HouseStyle.solid(1.6));
            sheet.rule(x - HALF_CAP, low, x + HALF_CAP, low, Ink.TEXT, HouseStyle.solid(1.6));
            sheet.rule(x - HALF_CAP, high, x + HALF_CAP, high, Ink.TEXT, HouseStyle.solid(1.6));
            sheet.paths(PlotTrace.of(SeriesMarkers.DIAMOND, Ink.TEXT, x, layout.y(axis, reading.value())));
        }
        return sheet;
    }
}
