package hafthold.report;

import hafthold.air.ClimateGroup;
import hafthold.decide.Atlas;
import hafthold.decide.Atlas.Cell;
import hafthold.decide.Tally;
import hafthold.decide.Verdict;
import hafthold.material.Family;
import hafthold.report.chart.VerdictBar;
import hafthold.report.chart.VerdictChart;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The pictures of an atlas: how verdicts divide by family and by climate.
 *
 * @param style language and units
 */
record AtlasCharts(BenchStyle style) {

    List<ReportChart> of(Atlas atlas) {
        AtlasWords words = new AtlasWords(style);
        Map<String, Tally> families = new LinkedHashMap<>();
        for (Family family : atlas.families()) {
            families.put(
                    words.heading(family),
                    Tally.of(atlas.linesOf(family).stream()
                            .flatMap(line -> line.cells().stream())
                            .toList()));
        }
        Map<String, Tally> climates = new LinkedHashMap<>();
        for (ClimateGroup climate : atlas.climates()) {
            Stream<Cell> cells = atlas.lines().stream().flatMap(line -> atlas.cells(line, climate).stream());
            climates.put(words.climate(climate), Tally.of(cells.toList()));
        }
        return List.of(chart("families", families), chart("climates", climates));
    }

    private ReportChart chart(String what, Map<String, Tally> tallies) {
        VerdictChart chart = new VerdictChart(
                "atlas-" + what,
                style.say(what + ".title"),
                tallies.entrySet().stream()
                        .map(entry -> new VerdictBar(entry.getKey(), shares(entry.getValue())))
                        .toList(),
                Arrays.stream(Verdict.values()).map(style::verdict).toList());
        return ReportChart.of(
                chart.id(), chart.title(), reading(tallies), chart::svg, chart.fileSvg(), numbers(what, tallies));
    }

    private static List<Double> shares(Tally tally) {
        return Arrays.stream(Verdict.values()).map(tally::share).toList();
    }

    private String reading(Map<String, Tally> tallies) {
        Comparator<Map.Entry<String, Tally>> byStaying =
                Comparator.comparingDouble(entry -> entry.getValue().share(Verdict.STAYS));
        Map.Entry<String, Tally> best =
                tallies.entrySet().stream().max(byStaying).orElseThrow();
        Map.Entry<String, Tally> worst =
                tallies.entrySet().stream().min(byStaying).orElseThrow();
        return tallies.size() == 1
                ? style.say("fares.one", "name", best.getKey(), "percent", percent(best.getValue()))
                : style.say(
                        "fares.many",
                        "name",
                        best.getKey(),
                        "percent",
                        percent(best.getValue()),
                        "other",
                        worst.getKey(),
                        "least",
                        percent(worst.getValue()));
    }

    private static String percent(Tally tally) {
        return Long.toString(Math.round(100 * tally.share(Verdict.STAYS)));
    }

    private NumbersTable numbers(String what, Map<String, Tally> tallies) {
        List<String> head = new ArrayList<>(List.of(style.say(what + ".head")));
        Arrays.stream(Verdict.values()).forEach(verdict -> head.add(style.verdict(verdict)));
        List<List<String>> rows = new ArrayList<>();
        tallies.forEach((label, tally) -> rows.add(Stream.concat(
                        Stream.of(label),
                        Arrays.stream(Verdict.values()).map(verdict -> Integer.toString(tally.of(verdict))))
                .toList()));
        return new NumbersTable(style.say(what + ".caption"), head, rows);
    }
}
