package hafthold.report;

import hafthold.decide.Atlas;
import hafthold.knife.FitLimits;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Everything that is written about one atlas.
 *
 * @param style language and units
 * @param named true where materials were named
 * @param limits classes of work, strictest first
 * @param command the command that repeats the run
 */
public record AtlasReport(BenchStyle style, boolean named, List<FitLimits> limits, String command) {
    private static final String PAGE = "atlas.html";

    /** Keeps its own copy. */
    public AtlasReport {
        limits = List.copyOf(limits);
    }

    /**
     * Writes the pictures as SVG, then atlas.csv, .json, .txt and .html, all of them or none.
     *
     * @return the page
     */
    public Path write(Atlas atlas, Path folder) throws IOException {
        Map<String, ReportFolder.Body> files = new LinkedHashMap<>();
        for (ReportChart chart : new AtlasCharts(style).of(atlas)) {
            files.put(chart.id() + ".svg", writer -> writer.write(chart.fileSvg()));
        }
        files.put("atlas.csv", writer -> AtlasCsv.write(atlas, writer));
        files.put("atlas.json", writer -> AtlasJson.write(atlas, writer));
        files.put(
                "atlas.txt",
                writer -> writer.write(new AtlasText(style, named).of(atlas)
                        + ComparisonText.cautions(style, FindingDigest.of(style, atlas.findings(), Map.of()))));
        files.put(PAGE, writer -> writer.write(new AtlasPage(style, limits, command).of(atlas)));
        new ReportFolder(folder).writeAll(files);
        return folder.resolve(PAGE);
    }
}
