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
    private static final double[] PLACES = {1, 0, 0.5, 0.25, 0.75, 0.125, 0.375, 0.625, 0.875};

    /** Room between a mark and its words, drawing units. */
    private static final double BESIDE = 8;

    /** Room that is enough, drawing units: more of it is no more welcome. */
    private static final double AMPLE = 24;

    /** How far words reach below their base line, as a share of their size. */
    private static final double DESCENT = 0.25;

    /** Room between words and an upright line, drawing units. */
    private static final double CLEAR = 6;

    private final SvgSheet sheet;
    private final YearLayout layout;
    private final Span axis;
    private final List<YearLine> lines;
    private final OptionalDouble upright;
    private final double size;
    private final List<Box> taken = new ArrayList<>();

    /** A part of the sheet, drawing units, downwards. */
    private record Box(double left, double top, double right, double foot) {
        boolean isHit(Box other) {
            return left < other.right && other.left < right && top < other.foot && other.top < foot;
        }
    }

    /**
     * Words on a sheet.
     *
     * @param axis upright axis
     * @param lines lines of the chart
     * @param upright day of a line that no words may stand across, 0 to 365
     */
    PlotWords(SvgSheet sheet, YearLayout layout, Span axis, List<YearLine> lines, OptionalDouble upright) {
        this.sheet = sheet;
        this.layout = layout;
        this.axis = axis;
        this.lines = lines;
        this.upright = upright;
        this.size = layout.format().fontSize();
    }

    /** Keeps words off a part of the sheet. */
    void keepOff(double left, double top, double right, double foot) {
        taken.add(new Box(left, top, right, foot));
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
        taken.add(words(right - width, width, top));
        taken.add(words(right - width, width, foot));
    }

    /**
     * Sets the words of a mark beside it, where the lines leave most room.
     *
     * @param x where it lies on the sheet
     * @param y likewise
     */
    void mark(double x, double y, String label) {
        double width = layout.format().widthOf(label);
        List<Box> places = new ArrayList<>();
        for (double left : new double[] {x + BESIDE, x - BESIDE - width}) {
            for (double base : new double[] {y - 4, y + size * 0.35, y + size}) {
                places.add(words(left, width, base));
            }
        }
        Box best = roomiest(places.stream()
                .filter(place -> place.left >= layout.left() && place.right <= layout.left() + layout.plotWidth())
                .toList());
        set(best, Ink.TEXT, label);
    }

    /**
     * Sets the words of a limit where the lines leave most room, on its outer side while that is on the plot.
     *
     * @param isNegative whether its outer side is below
     */
    void limit(LimitMark limit, boolean isNegative) {
        double height = layout.y(axis, limit.value());
        double lineHeight = size + 1.0;
        double width = layout.format().widthOf(limit.label());
        double days =
                width / layout.plotWidth() * (layout.x().highest() - layout.x().lowest());
        boolean isBelow = isNegative && height + lineHeight < layout.top() + layout.plotHeight();
        double base = isBelow || height - lineHeight < layout.top() ? height + lineHeight : height - 4;
        set(
                roomiest(starts(days).stream()
                        .map(start -> words(layout.x(start), width, base))
                        .toList()),
                Ink.LIMIT,
                limit.label());
    }

    private Box words(double left, double width, double base) {
        return new Box(left, base - size, left + width, base + size * DESCENT);
    }

    private void set(Box place, Ink ink, String label) {
        taken.add(place);
        sheet.text(place.left, place.foot - size * DESCENT, Anchor.START, ink, label);
    }

    /** The first of the places with most room that nothing stands on; where there is none, with least run through. */
    private Box roomiest(List<Box> places) {
        Box best = places.get(0);
        double bestRoom = Double.NEGATIVE_INFINITY;
        for (Box place : places) {
            double room = taken.stream().anyMatch(place::isHit) ? -YearDays.DAYS : Math.min(AMPLE, room(place));
            if (room > bestRoom + 1e-9) {
                best = place;
                bestRoom = room;
            }
        }
        return best;
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

    /** Least distance of the lines from words, drawing units; below 0, the days on which one runs through them. */
    private double room(Box words) {
        return lines.stream().mapToDouble(line -> room(words, line)).min().orElse(0);
    }

    private double room(Box words, YearLine line) {
        double[] away = IntStream.range(0, (int) YearDays.DAYS)
                .filter(day -> layout.x(day) > words.left - CLEAR && layout.x(day) < words.right + CLEAR)
                .mapToDouble(day -> layout.y(axis, YearDays.valueAt(line.daily(), day)))
                .map(height -> Math.max(0, Math.max(words.top - height, height - words.foot)))
                .toArray();
        long through = Arrays.stream(away).filter(distance -> distance == 0).count();
        return through > 0 ? -through : Arrays.stream(away).min().orElse(0);
    }
}
