package hafthold.report;

import hafthold.decide.StockAnswer;
import hafthold.source.Finding;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Everything that is written about some blocks.
 *
 * @param style language and units
 * @param cautions what can hurt with their materials
 * @param input the file as it was given
 * @param command the command that repeats the run
 */
public record StockReport(BenchStyle style, List<Finding> cautions, String input, String command) {
    /** Name of the page among the files. */
    public static final String PAGE = "stock.html";

    /** Keeps its own copy. */
    public StockReport {
        cautions = List.copyOf(cautions);
    }

    /** Text by file name: a picture a block as SVG, then stock.json, .csv, .txt and .html. */
    public Map<String, String> files(List<StockAnswer> answers) {
        Map<String, String> files = new LinkedHashMap<>();
        for (int i = 0; i < answers.size(); i++) {
            if (answers.get(i).told().isPresent()) {
                ReportChart chart = new StockCharts(style).course(answers.get(i), i + 1);
                files.put(chart.id() + ".svg", chart.fileSvg());
            }
        }
        files.put("stock.json", StockJson.of(answers));
        files.put("stock.csv", StockCsv.of(answers));
        files.put(
                "stock.txt",
                new StockText(style).of(answers)
                        + ComparisonText.cautions(style, FindingDigest.of(style, cautions, Map.of())));
        files.put(PAGE, new StockPage(style, cautions, input, command).of(answers));
        return files;
    }
}
