package hafthold.report.chart;

import hafthold.report.chart.SvgSheet.Anchor;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** Words that stand in the plot of a year: none over another, none across an upright line. */
final class PlotWords {
    /** Places for words on a line, as shares from left to right, the most welcome first. */
    private static final double[] PLACES = {1, 0, 0.5, 0.25, 0.75};

    /** Room between words and an upright line, drawing units. */
    private static final double CLEAR = 6;

    private final SvgSheet sheet;
    private final YearLayout layout;
    private final OptionalDouble upright;
    private final List<Taken> taken = new ArrayList<>();

    /**
     * Words that stand already.
     *
     * @param left where they begin, drawing units
     * @param width how wide they are
     * @param base their base line
     */
    private record Taken(double left, double width, double base) {

        boolean isHit(Taken other, double lineHeight) {
            return Math.abs(base - other.base) < lineHeight
                    && left < other.left + other.width
                    && other.left < left + width;
        }
    }

    /**
     * Words on a sheet.
     *
     * @param upright day of a line that no words may stand across, 0 to 365
     */
    PlotWords(SvgSheet sheet, YearLayout layout, OptionalDouble upright) {
        this.sheet = sheet;
        this.layout = layout;
        this.upright = upright;
    }

    /** What lies above and below zero, at the right end of the plot, or left of a line that stands there. */
    void zero(ZeroLine line) {
        double width =
                Math.max(layout.format().widthOf(line.above()), layout.format().widthOf(line.below()));
        double end = layout.left() + layout.plotWidth() - 4.0;
        boolean isCrossed = upright.isPresent() && layout.x(upright.getAsDouble()) > end - width - CLEAR;
        double right = isCrossed ? layout.x(upright.getAsDouble()) - CLEAR : end;
        double top = layout.top() + 14.0;
        double foot = layout.top() + layout.plotHeight() - 6.0;
        sheet.strongText(right, top, Anchor.END, Ink.PROUD, line.above());
        sheet.strongText(right, foot, Anchor.END, Ink.SHY, line.below());
        taken.add(new Taken(right - width, width, top));
        taken.add(new Taken(right - width, width, foot));
    }

    /**
     * Sets the words of a limit where the lines leave most room, on its outer side while that is on the plot.
     *
     * @param height where it lies on the sheet
     * @param isNegative whether its outer side is below
     * @param lines lines of the chart
     */
    void limit(LimitMark limit, double height, boolean isNegative, List<YearLine> lines) {
        double lineHeight = layout.format().fontSize() + 1.0;
        double width = layout.format().widthOf(limit.label());
        double days =
                width / layout.plotWidth() * (layout.x().highest() - layout.x().lowest());
        boolean isBelow = isNegative && height + lineHeight < layout.top() + layout.plotHeight();
        double base = isBelow || height - lineHeight < layout.top() ? height + lineHeight : height - 4;
        double best = 0;
        double bestRoom = -1;
        for (double start : starts(days)) {
            Taken here = new Taken(layout.x(start), width, base);
            boolean isTaken = taken.stream().anyMatch(words -> words.isHit(here, lineHeight));
            double room = isTaken ? 0 : room(lines, limit.value(), start, start + days);
            if (room > bestRoom + 1e-9) {
                best = start;
                bestRoom = room;
            }
        }
        taken.add(new Taken(layout.x(best), width, base));
        sheet.text(layout.x(best), base, Anchor.START, Ink.LIMIT, limit.label());
    }

    /** Days that words of some days' width may begin on, the most welcome first. */
    private List<Double> starts(double days) {
        double latest = YearDays.DAYS - days - 4;
        double clear = CLEAR / layout.plotWidth() * YearDays.DAYS;
        DoubleStream beside = upright.stream().flatMap(day -> DoubleStream.of(day + clear, day - clear - days));
        return DoubleStream.concat(Arrays.stream(PLACES).map(share -> 4 + share * (latest - 4)), beside)
                .filter(start -> start >= 4 && start <= latest)
                .filter(start -> upright.isEmpty()
                        || start + days + clear <= upright.getAsDouble() + 1e-9
                        || start - clear >= upright.getAsDouble() - 1e-9)
                .boxed()
                .toList();
    }

    /** Least distance of the lines from a value over some days. */
    private static double room(List<YearLine> lines, double value, double firstDay, double lastDay) {
        return lines.stream()
                .mapToDouble(line -> IntStream.rangeClosed((int) firstDay, (int) lastDay)
                        .mapToDouble(day -> Math.abs(YearDays.valueAt(line.daily(), day) - value))
                        .min()
                        .orElse(0))
                .min()
                .orElse(0);
    }
}
