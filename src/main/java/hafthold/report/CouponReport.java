package hafthold.report;

import hafthold.decide.CouponAnswer;
import hafthold.source.Finding;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Everything that is written about some coupons, but the tables of the shop's own.
 *
 * @param style language and units
 * @param cautions what can hurt with the materials, and in an oven
 * @param input the file as it was given
 * @param command the command that repeats the run
 */
public record CouponReport(BenchStyle style, List<Finding> cautions, String input, String command) {
    /** Name of the page among the files. */
    public static final String PAGE = "coupon.html";

    /** Keeps its own copy. */
    public CouponReport {
        cautions = List.copyOf(cautions);
    }

    /** Text by file name: pictures as SVG, then coupon.json, .csv, .txt and .html. */
    public Map<String, String> files(CouponAnswer answer) {
        Map<String, String> files = new LinkedHashMap<>();
        for (int i = 0; i < answer.studies().size(); i++) {
            new CouponCharts(style, answer.studies().get(i), i + 1)
                    .all()
                    .forEach(chart -> files.put(chart.id() + ".svg", chart.fileSvg()));
        }
        files.put("coupon.json", CouponJson.of(answer));
        files.put("coupon.csv", CouponCsv.of(answer));
        files.put(
                "coupon.txt",
                new CouponText(style).of(answer)
                        + ComparisonText.cautions(style, FindingDigest.of(style, cautions, Map.of())));
        files.put(PAGE, new CouponPage(style, cautions, input, command).of(answer));
        return files;
    }
}
