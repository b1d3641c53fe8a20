package hafthold.report;

import hafthold.decide.CouponFigure;
import hafthold.decide.CouponStudy;
import java.util.ArrayList;
import java.util.List;

/**
 * The tables of a study of coupons as cells, for a text and for a page.
 *
 * @param style language and units
 * @param study what the coupons told
 */
record CouponTables(BenchStyle style, CouponStudy study) {
    private static final int SIZE_DECIMALS = 3;
    private static final int WEIGHT_DECIMALS = 3;
    private static final double GRAMS = 1000;

    /** What the figures are of; each material has a table of its own. */
    String figuresCaption() {
        return style.say("coupon.caption.figures", "material", study.material().name());
    }

    /** Likewise of the readings. */
    String readingsCaption() {
        return style.say("coupon.caption.readings", "material", study.material().name());
    }

    /** Headings of the figures. */
    List<String> figuresHead() {
        return style.heads("figure", "unit", "book", "own", "as-sure");
    }

    /** One row a figure. */
    List<List<String>> figures() {
        CouponWords words = new CouponWords(style, study);
        List<List<String>> rows = new ArrayList<>();
        for (CouponFigure figure : study.figures()) {
            rows.add(List.of(
                    words.name(figure.kind()),
                    style.say("coupon.unit-of." + style.keyOf(figure.kind()), "unit", style.unit()),
                    words.cell(figure.kind(), figure.book(), figure),
                    figure.told() ? words.cell(figure.kind(), figure.own(), figure) : style.say("coupon.not-told"),
                    figure.told() ? style.say("coupon.times", "times", words.times(figure.timesAsSure())) : "–"));
        }
        return rows;
    }

    /** Headings of the readings. */
    List<String> readingsHead() {
        return style.heads("reading", "what", "measured", "by-own", "by-book");
    }

    /** One row a figure that was read. */
    List<List<String>> readings() {
        CouponWords words = new CouponWords(style, study);
        List<List<String>> rows = new ArrayList<>();
        for (CouponStudy.ReadingRow row : study.readings()) {
            rows.add(List.of(
                    words.reading(row.coupon(), row.reading()),
                    what(row),
                    number(row, row.measured()),
                    style.say(
                            "from-to",
                            "from",
                            number(row, row.own().low()),
                            "to",
                            number(row, row.own().high())),
                    style.say(
                            "from-to",
                            "from",
                            number(row, row.book().low()),
                            "to",
                            number(row, row.book().high()))));
        }
        return rows;
    }

    /** What was read, with its unit. */
    String what(CouponStudy.ReadingRow row) {
        return row.side()
                .map(side -> style.say("coupon.size." + style.keyOf(side)))
                .orElseGet(() -> style.say("coupon.weight"));
    }

    private String number(CouponStudy.ReadingRow row, double value) {
        return row.side().isPresent()
                ? style.fixed(GRAMS * value, SIZE_DECIMALS)
                : style.fixed(GRAMS * value, WEIGHT_DECIMALS);
    }
}
