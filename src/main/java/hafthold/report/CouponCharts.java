package hafthold.report;

import hafthold.decide.CouponFigure;
import hafthold.decide.CouponStudy;
import hafthold.decide.CouponStudy.ReadingRow;
import hafthold.knife.CouponSide;
import hafthold.quantity.Band;
import hafthold.report.chart.BookOwnChart;
import hafthold.report.chart.BookOwnRow;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The pictures of a study of coupons: figures against the book, readings against both.
 *
 * @param style language and units
 * @param study what the coupons told
 * @param number of the study in its answer, from 1
 */
record CouponCharts(BenchStyle style, CouponStudy study, int number) {
    private static final double PERCENT = 100;

    /** Every picture there is something to draw in. */
    List<ReportChart> all() {
        List<ReportChart> charts = new ArrayList<>(List.of(figures()));
        readings().ifPresent(charts::add);
        return charts;
    }

    /** Each figure, the book's middle being a hundred. */
    private ReportChart figures() {
        CouponWords words = new CouponWords(style, study);
        CouponTables tables = new CouponTables(style, study);
        List<BookOwnRow> rows = new ArrayList<>();
        for (CouponFigure figure : study.figures()) {
            double book = figure.book().value();
            rows.add(new BookOwnRow(
                    words.name(figure.kind()),
                    share(figure.book(), book),
                    figure.told() ? Optional.of(share(figure.own(), book)) : Optional.empty(),
                    OptionalDouble.empty(),
                    figure.told() ? words.cell(figure.kind(), figure.own(), figure) : style.say("coupon.not-told")));
        }
        long told = study.told().size();
        return chart(
                "coupon-figures-",
                style.say("coupon.figures.title", "material", study.material().name()),
                style.say(
                        "coupon.figures.reading",
                        "told",
                        Long.toString(told),
                        "count",
                        Integer.toString(study.figures().size())),
                style.say("coupon.figures.unit"),
                rows,
                PERCENT,
                "",
                new NumbersTable(tables.figuresCaption(), tables.figuresHead(), tables.figures()));
    }

    private static Band share(Band band, double of) {
        return band.times(PERCENT / of);
    }

    /** Each reading after the first of its kind, as a change from that one. */
    private Optional<ReportChart> readings() {
        CouponWords words = new CouponWords(style, study);
        CouponTables tables = new CouponTables(style, study);
        Map<String, ReadingRow> first = new LinkedHashMap<>();
        List<BookOwnRow> rows = new ArrayList<>();
        for (ReadingRow row : study.readings()) {
            String series = row.coupon() + row.side().map(CouponSide::name).orElse("");
            ReadingRow start = first.putIfAbsent(series, row);
            if (start != null) {
                rows.add(new BookOwnRow(
                        style.say(
                                "coupon.readings.row",
                                "reading",
                                words.reading(row.coupon(), row.reading()),
                                "what",
                                tables.what(row)),
                        change(row.book(), start.measured()),
                        Optional.of(change(row.own(), start.measured())),
                        OptionalDouble.of(PERCENT * (row.measured() / start.measured() - 1)),
                        style.signed(PERCENT * (row.measured() / start.measured() - 1), 2)));
            }
        }
        if (rows.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(chart(
                "coupon-readings-",
                style.say("coupon.readings.title", "material", study.material().name()),
                style.say("coupon.readings.reading"),
                style.say("coupon.readings.unit"),
                rows,
                0,
                style.say("coupon.key.measured"),
                new NumbersTable(tables.readingsCaption(), tables.readingsHead(), tables.readings())));
    }

    private static Band change(Band band, double from) {
        return new Band(
                PERCENT * (band.low() / from - 1),
                PERCENT * (band.value() / from - 1),
                PERCENT * (band.high() / from - 1));
    }

    private ReportChart chart(
            String id,
            String title,
            String reading,
            String unit,
            List<BookOwnRow> rows,
            double level,
            String measured,
            NumbersTable numbers) {
        BookOwnChart chart = new BookOwnChart(
                id + number,
                title,
                reading,
                unit,
                rows,
                level,
                new BookOwnChart.Words(style.say("coupon.key.book"), style.say("coupon.key.own"), measured, style));
        return ReportChart.of(chart.id(), title, reading, chart::svg, chart.fileSvg(), numbers);
    }
}
