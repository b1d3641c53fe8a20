package hafthold.report;

import hafthold.decide.Season;
import hafthold.knife.FitLimits;
import hafthold.source.Finding;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Everything that is written about one season.
 *
 * @param style language and units
 * @param limits classes of work, strictest first
 * @param workClass the class that was asked for
 * @param cautions what can hurt with the materials
 * @param command the command that repeats the run
 */
public record SeasonReport(
        BenchStyle style, List<FitLimits> limits, String workClass, List<Finding> cautions, String command) {
    /** Name of the page among the files. */
    public static final String PAGE = "season.html";

    /** Keeps its own copies. */
    public SeasonReport {
        limits = List.copyOf(limits);
        cautions = List.copyOf(cautions);
    }

    /** Text by file name: the pictures as SVG, then season.json, .csv, .txt and .html. */
    public Map<String, String> files(Season season) {
        Map<String, String> files = new LinkedHashMap<>();
        List<List<ReportChart>> charts = charts(season);
        charts.forEach(pair -> pair.forEach(chart -> files.put(chart.id() + ".svg", chart.fileSvg())));
        files.put("season.json", SeasonJson.of(season));
        files.put("season.csv", SeasonCsv.of(season));
        files.put(
                "season.txt",
                new SeasonText(style).of(season)
                        + ComparisonText.cautions(style, FindingDigest.of(style, cautions, Map.of())));
        files.put(PAGE, new SeasonPage(style, limits, workClass, cautions, command).of(season, charts));
        return files;
    }

    /** Two pictures of each material. */
    private List<List<ReportChart>> charts(Season season) {
        SeasonCharts draws = new SeasonCharts(style, season, limits, workClass);
        List<List<ReportChart>> charts = new ArrayList<>();
        for (int i = 0; i < season.answers().size(); i++) {
            charts.add(List.of(
                    draws.bench(season.answers().get(i), i + 1),
                    draws.steps(season.answers().get(i), i + 1)));
        }
        return charts;
    }
}
