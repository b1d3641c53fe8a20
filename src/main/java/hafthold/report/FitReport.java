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
 * @param units units of movements
 * @param limits classes of work, strictest first
 * @param cautions what can hurt with the materials of the knife
 * @param input the knife's file as it was given
 * @param command the command that repeats the run
 */
public record FitReport(
        LengthUnits units, List<FitLimits> limits, List<Finding> cautions, String input, String command) {
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
                ? new FullTangCharts(limits).of(full)
                : new StackCharts(limits).of((StackFit) fit);
        charts.forEach(chart -> files.put(chart.id() + ".svg", chart.fileSvg()));
        files.put("fit.json", FitJson.of(answer));
        files.put(
                "fit.txt",
                new FitText(units).of(answer) + ComparisonText.cautions(FindingDigest.of(cautions, Map.of())));
        files.put(PAGE, new FitPage(units, limits, cautions, input, command).of(answer));
        return files;
    }
}
