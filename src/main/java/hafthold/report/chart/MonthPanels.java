package hafthold.report.chart;

import hafthold.report.chart.SvgSheet.Anchor;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.knowm.xchart.XYChart;

/**
 * Small pictures of a handle's edge through the months, on one scale: one, or up to three side by side.
 *
 * @param id id unique in the page
 * @param title title
 * @param description what the picture shows, for those who cannot see it
 * @param panels one to three
 * @param words what stands round them
 * @param limits level lines with labels
 */
public record MonthPanels(
        String id, String title, String description, List<Panel> panels, Words words, List<LimitMark> limits) {
    private static final int MOST_PANELS = 3;
    private static final int DAYS_TOGETHER = 3;
    /** Width of a heavy letter over its height, wide for most faces. */
    private static final double BOLD_SHARE = 0.64;

    private static final double LEAST_REACH = 0.02;
    private static final double LIMITS_APART = 0.16;

    /**
     * One handle.
     *
     * @param name words over it; none where it is empty
     * @param daily a value a day from 1 January on, in the units of the picture
     * @param low lower end of the band by day
     * @param high upper end likewise
     * @param worst words beside the day that lies furthest from zero; none where they are empty
     */
    public record Panel(String name, List<Double> daily, List<Double> low, List<Double> high, String worst) {

        /** Keeps its own copies. */
        public Panel {
            daily = List.copyOf(daily);
            low = List.copyOf(low);
            high = List.copyOf(high);
            if (daily.isEmpty() || low.size() != daily.size() || high.size() != daily.size()) {
                throw new IllegalArgumentException("panel " + name + " needs days and a band of as many, got "
                        + daily.size() + ", " + low.size() + " and " + high.size());
            }
        }

        /** Day from 0 whose value lies furthest from zero. */
        int worstDay() {
            int worst = 0;
            for (int day = 1; day < daily.size(); day++) {
                worst = Math.abs(daily.get(day)) > Math.abs(daily.get(worst)) ? day : worst;
            }
            return worst;
        }

        private Stream<Double> all() {
            return Stream.of(daily, low, high).flatMap(List::stream);
        }
    }

    /**
     * Words round the panels.
     *
     * @param unit over the upright axis
     * @param level at zero
     * @param above for what lies above
     * @param below for what lies below
     * @param months twelve short names
     * @param decimalMark between whole and tenths
     */
    public record Words(
            String unit, String level, String above, String below, List<String> months, String decimalMark) {

        /** Keeps its own copy. */
        public Words {
            months = List.copyOf(months);
            if (months.size() != YearDays.MONTHS) {
                throw new IllegalArgumentException("a year has twelve months, got " + months.size() + " names");
            }
        }
    }

    /** Keeps its own copies. */
    public MonthPanels {
        panels = List.copyOf(panels);
        limits = List.copyOf(limits);
        if (panels.isEmpty() || panels.size() > MOST_PANELS) {
            throw new IllegalArgumentException("month panels are 1 to " + MOST_PANELS + ", got " + panels.size());
        }
    }

    /** The picture in one format, for a page. */
    public String svg(SheetFormat format) {
        MonthPanelsLayout layout = MonthPanelsLayout.of(format, panels.size());
        SvgSheet sheet =
                new SvgSheet(id + "-" + format.name().charAt(0), layout.width(), layout.height(), layout.fontSize());
        Span y = span(layout);
        sheet.text(2, layout.fontSize(), Anchor.START, Ink.MUTED, words.unit());
        for (int order = 0; order < panels.size(); order++) {
            panel(sheet, layout, y, order);
        }
        return sheet.svg(title, description);
    }

    private void panel(SvgSheet sheet, MonthPanelsLayout layout, Span y, int order) {
        Panel panel = panels.get(order);
        double left = layout.left(order);
        double top = layout.top(order);
        sheet.plot(left, top, PlotTrace.of(plot(layout, y, order)));
        List<String> name = LineBreak.lines(panel.name(), layout.nameCharacters());
        for (int line = 0; line < name.size(); line++) {
            double base = top - 8.0 - (name.size() - 1 - line) * (layout.fontSize() + 2.0);
            sheet.strongText(left, base, Anchor.START, Ink.TEXT, name.get(line));
        }
        if (layout.hasTicks(order)) {
            for (BigDecimal tick : y.ticks()) {
                String label =
                        tick.signum() == 0 ? words.level() : y.label(tick.abs()).replace(".", words.decimalMark());
                double base = top + layout.y(y, tick.doubleValue()) + layout.fontSize() * 0.35;
                sheet.text(left - 5, base, Anchor.END, Ink.MUTED, label);
            }
        }
        for (int month = 0; month < YearDays.MONTHS; month++) {
            double middle = (YearDays.monthStart(month) + YearDays.monthStart(month + 1)) / 2;
            sheet.text(
                    left + layout.x(middle),
                    top + layout.plotHeight() + layout.fontSize() + 3.0,
                    Anchor.MIDDLE,
                    Ink.MUTED,
                    layout.monthWord(words.months().get(month)));
        }
        if (layout.isSingle()) {
            sideWords(sheet, layout, order);
        }
        limitWords(sheet, layout, y, order);
        worstWords(sheet, layout, y, order);
    }

    /** Which way is up, over and under the plot; a row of panels has no room for it. */
    private void sideWords(SvgSheet sheet, MonthPanelsLayout layout, int order) {
        double right = layout.left(order) + layout.plotWidth();
        double under = layout.top(order) + layout.plotHeight() + 2.0 * layout.fontSize() + 7;
        sheet.strongText(right, layout.top(order) - 7, Anchor.END, Ink.PROUD, "\u2191 " + words.above());
        sheet.strongText(right, under, Anchor.END, Ink.SHY, "\u2193 " + words.below());
    }

    private void limitWords(SvgSheet sheet, MonthPanelsLayout layout, Span y, int order) {
        boolean late = isLate(order);
        double x = layout.left(order) + (late ? 4 : layout.plotWidth() - 4.0);
        for (LimitMark limit : drawnLimits()) {
            double line = layout.top(order) + layout.y(y, limit.value());
            double base = isRoomAbove(layout, y, order, limit) ? line - 4 : line + layout.fontSize();
            sheet.text(x, base, late ? Anchor.START : Anchor.END, Ink.LIMIT, limit.label());
        }
    }

    /** Whether the words of a limit keep further from the handle's line above the limit than below it. */
    private boolean isRoomAbove(MonthPanelsLayout layout, Span y, int order, LimitMark limit) {
        List<Double> daily = panels.get(order).daily();
        int days = (int) (BOLD_SHARE * layout.fontSize() * limit.label().length() / layout.plotWidth() * daily.size());
        int from = isLate(order) ? 0 : Math.max(0, daily.size() - days);
        double line = layout.y(y, limit.value());
        double data = daily.subList(from, Math.min(daily.size(), from + Math.max(1, days))).stream()
                .mapToDouble(value -> layout.y(y, value))
                .average()
                .orElseThrow();
        boolean fitsAbove = line > layout.fontSize() + 2.0;
        boolean fitsBelow = line < layout.plotHeight() - layout.fontSize() - 2.0;
        return fitsAbove && (!fitsBelow || data > line);
    }

    private void worstWords(SvgSheet sheet, MonthPanelsLayout layout, Span y, int order) {
        Panel panel = panels.get(order);
        if (panel.worst().isEmpty()) {
            return;
        }
        int day = panel.worstDay();
        double value = panel.daily().get(day);
        double wide = BOLD_SHARE * layout.fontSize() * panel.worst().length();
        double x = layout.x(day * YearDays.DAYS / panel.daily().size());
        double start = Math.max(3, Math.min(x - wide / 2, layout.plotWidth() - wide - 3));
        List<Double> ends = value < 0 ? panel.low() : panel.high();
        int reach = Math.max(1, (int) Math.round(wide / 2 / layout.plotWidth() * ends.size()));
        double beyond = ends.subList(Math.max(0, day - reach), Math.min(ends.size(), day + reach)).stream()
                .mapToDouble(end -> layout.y(y, end))
                .reduce(value < 0 ? Math::max : Math::min)
                .orElseThrow();
        double base = value < 0 ? beyond + layout.fontSize() + 2 : beyond - 4;
        double held = Math.max(layout.fontSize() + 1.0, Math.min(base, layout.plotHeight() - 3.0));
        sheet.strongText(layout.left(order) + start, layout.top(order) + held, Anchor.START, Ink.TEXT, panel.worst());
    }

    private boolean isLate(int order) {
        int days = panels.get(order).daily().size();
        return panels.get(order).worstDay() > days / 2;
    }

    private List<LimitMark> drawnLimits() {
        return LimitMark.worthDrawing(
                limits, data().min().orElseThrow(), data().max().orElseThrow(), LIMITS_APART);
    }

    private DoubleStream data() {
        return panels.stream().flatMap(Panel::all).mapToDouble(Double::doubleValue);
    }

    /** Everything in sight, with room beyond the band for the words of each worst day. */
    private Span span(MonthPanelsLayout layout) {
        double lowest = Math.min(-LEAST_REACH, data().min().orElseThrow());
        double highest = Math.max(LEAST_REACH, data().max().orElseThrow());
        double room = (highest - lowest) * (layout.fontSize() + 6.0) / layout.plotHeight();
        for (Panel panel : panels) {
            if (!panel.worst().isEmpty() && panel.daily().get(panel.worstDay()) < 0) {
                lowest = Math.min(lowest, Collections.min(panel.low()) - room);
            } else if (!panel.worst().isEmpty()) {
                highest = Math.max(highest, Collections.max(panel.high()) + room);
            }
        }
        for (LimitMark limit : drawnLimits()) {
            lowest = Math.min(lowest, limit.value());
            highest = Math.max(highest, limit.value());
        }
        return Span.covering(lowest, highest, 4);
    }

    private XYChart plot(MonthPanelsLayout layout, Span y, int order) {
        Span x = new Span(BigDecimal.ZERO, BigDecimal.valueOf(YearDays.DAYS), BigDecimal.ONE);
        XYChart chart = YearPlot.ground(layout.plotWidth(), layout.plotHeight(), x, y, drawnLimits(), true);
        Panel panel = panels.get(order);
        double[] values = YearDays.means(panel.daily(), DAYS_TOGETHER);
        double[] days = YearDays.days(values.length, panel.daily().size(), DAYS_TOGETHER);
        HouseStyle.area(
                chart,
                "band",
                Ink.ofLine(order),
                days,
                YearDays.means(panel.low(), DAYS_TOGETHER),
                YearDays.means(panel.high(), DAYS_TOGETHER));
        HouseStyle.line(chart, "line", Ink.ofLine(order), HouseStyle.ofLine(order), days, values);
        if (!panel.worst().isEmpty()) {
            double day = panel.worstDay() * YearDays.DAYS / panel.daily().size();
            HouseStyle.marks(chart, "worst", Ink.ofLine(order), HouseStyle.markerOf(order), List.of(new double[] {
                day, panel.daily().get(panel.worstDay())
            }));
        }
        return chart;
    }
}
