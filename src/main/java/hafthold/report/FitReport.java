package hafthold.report;

import hafthold.decide.EventFit;
import hafthold.decide.FullTangFit;
import hafthold.decide.KnifeFit;
import hafthold.decide.StackFit;
import hafthold.knife.FitLimits;
import hafthold.source.Finding;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Everything that is written about one knife in one place.
 *
 * @param style language and units
 * @param limits classes of work, strictest first
 * @param cautions what can hurt with the materials of the knife
 * @param input the knife's file as it was given
 * @param command the command that repeats the run
 */
public record FitReport(
        BenchStyle style, List<FitLimits> limits, List<Finding> cautions, String input, String command) {
    /** Name of the page among the files. */
    public static final String PAGE = "fit.html";

    /** Keeps its own copy. */
    public FitReport {
        limits = List.copyOf(limits);
        cautions = List.copyOf(cautions);
    }

    /** Text by file name: the pictures as SVG, then fit.json, .txt and .html. */
    public Map<String, String> files(KnifeFit fit) {
        return files(EventFit.quiet(fit));
    }

    /** Likewise, with what each event does. */
    public Map<String, String> files(EventFit answer) {
        KnifeFit fit = answer.fit();
        Map<String, String> files = new LinkedHashMap<>();
        List<ReportChart> charts = fit instanceof FullTangFit full
                ? new FullTangCharts(style, limits).of(full)
                : new StackCharts(style, limits).of((StackFit) fit);
        charts.forEach(chart -> files.put(chart.id() + ".svg", chart.fileSvg()));
        files.put("fit.json", FitJson.of(answer));
        files.put(
                "fit.txt",
                new FitText(style).of(answer)
                        + ComparisonText.cautions(style, FindingDigest.of(style, cautions, Map.of())));
        files.put(PAGE, new FitPage(style, limits, cautions, input, command).of(answer));
        return files;
    }
}
