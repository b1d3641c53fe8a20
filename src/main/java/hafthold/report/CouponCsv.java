package hafthold.report;

import hafthold.decide.CouponAnswer;
import hafthold.decide.CouponFigure;
import hafthold.decide.CouponStudy;
import hafthold.quantity.Band;
import java.util.List;
import java.util.stream.Stream;

/** What coupons told as CSV: one row a figure. */
public final class CouponCsv {
    private static final List<String> HEAD = List.of(
            "material",
            "own_id",
            "figure",
            "unit",
            "book_low",
            "book",
            "book_high",
            "own_low",
            "own",
            "own_high",
            "told",
            "times_as_sure",
            "beyond_both_bands");

    private CouponCsv() {}

    /** Header and rows. */
    public static String of(CouponAnswer answer) {
        StringBuilder text = new StringBuilder(String.join(",", HEAD)).append('\n');
        for (CouponStudy study : answer.studies()) {
            for (CouponFigure figure : study.figures()) {
                double factor = CouponJson.factor(figure.kind());
                text.append(String.join(
                                ",",
                                Stream.of(
                                                Stream.of(
                                                        study.material().id(),
                                                        study.own().id(),
                                                        CouponJson.key(figure.kind()),
                                                        CouponJson.unit(figure.kind())),
                                                numbers(figure.book(), factor),
                                                numbers(figure.own(), factor),
                                                Stream.of(
                                                        Boolean.toString(figure.told()),
                                                        CsvFigures.number(figure.timesAsSure()),
                                                        Boolean.toString(figure.apart())))
                                        .flatMap(cells -> cells)
                                        .toList()))
                        .append('\n');
            }
        }
        return text.toString();
    }

    private static Stream<String> numbers(Band band, double factor) {
        return Stream.of(band.low(), band.value(), band.high()).map(number -> CsvFigures.number(factor * number));
    }
}
