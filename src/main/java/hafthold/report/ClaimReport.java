package hafthold.report;

import hafthold.decide.Claim;
import hafthold.knife.FitLimits;
import hafthold.source.Finding;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Everything that is written about one returned knife.
 *
 * @param style language and units
 * @param limits classes of work, strictest first
 * @param cautions what can hurt with the materials of the knife
 * @param input the knife's file as it was given
 * @param command the command that repeats the run
 */
public record ClaimReport(
        BenchStyle style, List<FitLimits> limits, List<Finding> cautions, String input, String command) {
    /** Name of the page among the files. */
    public static final String PAGE = "claim.html";

    /** Keeps its own copies. */
    public ClaimReport {
        limits = List.copyOf(limits);
        cautions = List.copyOf(cautions);
    }

    /** Text by file name: the picture as SVG, then claim.json, .csv, .txt and .html. */
    public Map<String, String> files(Claim claim) {
        Map<String, String> files = new LinkedHashMap<>();
        ReportChart chart = new ClaimCharts(style, limits).course(claim);
        files.put(chart.id() + ".svg", chart.fileSvg());
        files.put("claim.json", ClaimJson.of(claim));
        files.put("claim.csv", ClaimCsv.of(claim));
        files.put(
                "claim.txt",
                new ClaimText(style).of(claim)
                        + ComparisonText.cautions(style, FindingDigest.of(style, cautions, Map.of())));
        files.put(PAGE, new ClaimPage(style, limits, cautions, input, command).of(claim));
        return files;
    }
}
