package hafthold.report;

import hafthold.quantity.Band;
import hafthold.report.chart.LimitMark;
import hafthold.report.chart.MonthPanels;
import hafthold.report.chart.MonthPanels.Panel;
import hafthold.report.chart.SheetFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** The pictures of a card, each with its numbers and the sentence that reads it. */
final class CardCharts {
    private static final double THOU_PER_METRE = 1000 / 0.0254;
    private static final int MONTHS = 12;

    private final CardOrder order;
    private final Wording wording;

    CardCharts(CardOrder order) {
        this.order = order;
        this.wording = order.wording();
    }

    /** One handle through its year, with what is normal and when to call. */
    ReportChart year(CardHandle handle) {
        String reading = handle.size().isNothing() || handle.isUnknown()
                ? wording.say("chart.year.level")
                : wording.say(
                        "chart.year.reading",
                        "low",
                        wording.month(handle.lowestMonth()),
                        "high",
                        wording.month(handle.highestMonth()));
        MonthPanels panels = new MonthPanels(
                "year",
                handle.stays()
                        .last()
                        .map(place -> wording.say("chart.year.title.stays", "place", place))
                        .orElseGet(() -> wording.say("chart.year.title")),
                description(List.of(handle)),
                List.of(panel("", handle)),
                words(),
                limits(handle));
        return chart("year", panels, reading, monthNumbers(panels.title(), List.of(handle)));
    }

    /** Up to three handles in one home. */
    ReportChart beside(String id, String title, List<CardHandle> handles, String reading) {
        MonthPanels panels = new MonthPanels(
                id,
                title,
                description(handles),
                handles.stream()
                        .map(handle -> panel(handle.nameAsHeading(), handle))
                        .toList(),
                words(),
                List.of());
        return chart(id, panels, reading, monthNumbers(panels.title(), handles));
    }

    private static ReportChart chart(String id, MonthPanels panels, String reading, NumbersTable numbers) {
        return new ReportChart(
                id, panels.title(), reading, panels.svg(SheetFormat.WIDE), panels.svg(SheetFormat.NARROW), "", numbers);
    }

    private String description(List<CardHandle> handles) {
        List<String> said = new ArrayList<>();
        handles.forEach(handle ->
                said.add(wording.say("chart.description", "material", handle.name(), "number", handle.shortNumber())));
        return String.join(" ", said);
    }

    private Panel panel(String name, CardHandle handle) {
        return new Panel(
                name,
                days(handle, Band::value),
                days(handle, Band::low),
                days(handle, Band::high),
                handle.isUnknown() || handle.size().isNothing() ? "" : handle.shortNumber());
    }

    private List<Double> days(CardHandle handle, Function<Band, Double> end) {
        return handle.year().days().edgeOffset().stream()
                .map(band -> scale() * end.apply(band))
                .toList();
    }

    private boolean isThou() {
        return order.units() == LengthUnits.THOU;
    }

    private double scale() {
        return isThou() ? THOU_PER_METRE : 1000;
    }

    private String unit() {
        return wording.say(isThou() ? "unit.thou" : "unit.mm");
    }

    private MonthPanels.Words words() {
        return new MonthPanels.Words(
                unit(),
                wording.say("chart.level"),
                wording.say("chart.handle-up"),
                wording.say("chart.steel-up"),
                wording.shortMonths(),
                wording.say("number.decimal"));
    }

    private List<LimitMark> limits(CardHandle handle) {
        double unit = scale() / 1000;
        List<LimitMark> limits = new ArrayList<>();
        ToDoubleFunction<CardLength> at = length -> unit * length.millimetres();
        limits.add(new LimitMark(
                wording.say("chart.normal"), -at.applyAsDouble(handle.bounds().normal(EdgeStep.Side.SHY))));
        limits.add(new LimitMark(
                wording.say("chart.normal"), at.applyAsDouble(handle.bounds().normal(EdgeStep.Side.PROUD))));
        limits.add(new LimitMark(
                wording.say("chart.call"), -at.applyAsDouble(handle.bounds().alarm(EdgeStep.Side.SHY))));
        limits.add(new LimitMark(
                wording.say("chart.call"), at.applyAsDouble(handle.bounds().alarm(EdgeStep.Side.PROUD))));
        return limits;
    }

    /** A row a handle, a column a month: mean step, minus where the steel stands up. */
    private NumbersTable monthNumbers(String title, List<CardHandle> handles) {
        List<String> head = new ArrayList<>(List.of(wording.say("chart.numbers.handle")));
        head.addAll(wording.shortMonths());
        List<List<String>> rows = new ArrayList<>();
        for (CardHandle handle : handles) {
            List<String> row = new ArrayList<>(List.of(handle.nameAsHeading()));
            for (int month = 1; month <= MONTHS; month++) {
                row.add(
                        handle.isUnknown()
                                ? wording.say("short.unknown")
                                : signed(handle.months().of(month)));
            }
            rows.add(row);
        }
        return new NumbersTable(wording.say("chart.numbers.caption", "title", title, "unit", unit()), head, rows);
    }

    private String signed(double metres) {
        String plain = String.format(Locale.ROOT, isThou() ? "%+.1f" : "%+.2f", scale() * metres);
        boolean zero = plain.chars().noneMatch(digit -> digit >= '1' && digit <= '9');
        return wording.number(zero ? plain.substring(1) : plain);
    }
}
