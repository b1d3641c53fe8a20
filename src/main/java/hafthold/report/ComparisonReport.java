package hafthold.report;

import hafthold.decide.Comparison;
import hafthold.decide.EventComparison;
import hafthold.knife.FitLimits;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything that is written about one comparison.
 *
 * @param style language and units
 * @param namedMaterial id of the material asked for
 * @param limits classes of work, strictest first
 * @param command the command that repeats the run
 */
public record ComparisonReport(
        BenchStyle style, Optional<String> namedMaterial, List<FitLimits> limits, String command) {

    /** Keeps its own copy. */
    public ComparisonReport {
        limits = List.copyOf(limits);
    }

    /** Text by file name: the pictures as SVG, then comparison.csv, .json, .txt and .html. */
    public Map<String, String> files(Comparison comparison) {
        return files(EventComparison.quiet(comparison));
    }

    /** Likewise, with what each event does. */
    public Map<String, String> files(EventComparison answers) {
        Comparison comparison = answers.comparison();
        Map<String, String> files = new LinkedHashMap<>();
        for (ReportChart chart : new ComparisonCharts(style, namedMaterial, limits).of(comparison)) {
            files.put(chart.id() + ".svg", chart.fileSvg());
        }
        files.put("comparison.csv", ComparisonCsv.of(comparison));
        files.put("comparison.json", ComparisonJson.of(answers));
        files.put(
                "comparison.txt",
                new ComparisonText(style, namedMaterial).of(answers)
                        + ComparisonText.cautions(style, FindingDigest.of(style, comparison)));
        files.put("comparison.html", new ComparisonPage(style, namedMaterial, limits, command).of(answers));
        return files;
    }
}
