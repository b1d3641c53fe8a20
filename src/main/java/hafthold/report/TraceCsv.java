package hafthold.report;

import hafthold.simulate.EventTrace;
import hafthold.simulate.ScaleTrace;
import java.math.BigDecimal;

/** The year of one scale as CSV, one row an hour, rounded to a few digits more than the figures carry. */
public final class TraceCsv {
    private static final String HEADER = "hour,temperature_c,rh_percent,mc_mean_percent,mc_surface_percent,"
            + "mc_back_percent,width_strain,thickness_strain,length_strain,edge_offset_mm,free_offset_mm\n";

    private TraceCsv() {}

    /** All hours under a header row. */
    public static String of(ScaleTrace trace) {
        StringBuilder text = new StringBuilder(HEADER);
        for (int hour = 0; hour < trace.hours(); hour++) {
            text.append(trace.samplesAnHour() == 1 ? hour : plain((double) hour / trace.samplesAnHour()));
            row(text, trace.hour(hour));
        }
        return text.toString();
    }

    /** All moments of a year with events under the same header row; hours have fractions about an event. */
    public static String of(EventTrace trace) {
        StringBuilder text = new StringBuilder(HEADER);
        for (EventTrace.Moment moment : trace.moments()) {
            text.append(plain(Math.rint(moment.hour() * 1e4) / 1e4));
            row(text, moment.state());
        }
        return text.toString();
    }

    private static void row(StringBuilder text, ScaleTrace.Hour now) {
        number(text, now.temperatureCelsius(), 1e3);
        number(text, 100 * now.relativeHumidityFraction(), 1e3);
        number(text, 100 * now.meanFraction(), 1e4);
        number(text, 100 * now.surfaceFraction(), 1e4);
        number(text, 100 * now.backFraction(), 1e4);
        number(text, now.widthStrain(), 1e8);
        number(text, now.thicknessStrain(), 1e8);
        number(text, now.lengthStrain(), 1e8);
        number(text, 1000 * now.edgeOffsetMetres(), 1e5);
        number(text, 1000 * now.freeOffsetMetres(), 1e5);
        text.append('\n');
    }

    private static void number(StringBuilder text, double value, double scale) {
        double rounded = Math.rint(value * scale) / scale;
        text.append(',').append(plain(rounded));
    }

    private static String plain(double number) {
        return number == 0
                ? "0"
                : BigDecimal.valueOf(Math.rint(number * 1e9) / 1e9)
                        .stripTrailingZeros()
                        .toPlainString();
    }
}
