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
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** The pictures of an atlas: how verdicts divide by family and by climate. */
final class AtlasCharts {
    private AtlasCharts() {}

    static List<ReportChart> of(Atlas atlas) {
        Map<String, Tally> families = new LinkedHashMap<>();
        for (Family family : atlas.families()) {
            families.put(
                    AtlasWords.heading(family),
                    Tally.of(atlas.linesOf(family).stream()
                            .flatMap(line -> line.cells().stream())
                            .toList()));
        }
        Map<String, Tally> climates = new LinkedHashMap<>();
        for (ClimateGroup climate : atlas.climates()) {
            Stream<Cell> cells = atlas.lines().stream().flatMap(line -> atlas.cells(line, climate).stream());
            climates.put(climate.words(), Tally.of(cells.toList()));
        }
        return List.of(
                chart("atlas-families", "How the families fare", "family", families),
                chart("atlas-climates", "How the climates fare", "climate", climates));
    }

    private static ReportChart chart(String id, String title, String what, Map<String, Tally> tallies) {
        VerdictChart chart = new VerdictChart(
                id,
                title,
                tallies.entrySet().stream()
                        .map(entry -> new VerdictBar(entry.getKey(), shares(entry.getValue())))
                        .toList());
        return ReportChart.of(id, title, reading(tallies), chart::svg, chart.fileSvg(), numbers(what, tallies));
    }

    private static List<Double> shares(Tally tally) {
        return Arrays.stream(Verdict.values()).map(tally::share).toList();
    }

    private static String reading(Map<String, Tally> tallies) {
        Comparator<Map.Entry<String, Tally>> byStaying =
                Comparator.comparingDouble(entry -> entry.getValue().share(Verdict.STAYS));
        Map.Entry<String, Tally> best =
                tallies.entrySet().stream().max(byStaying).orElseThrow();
        Map.Entry<String, Tally> worst =
                tallies.entrySet().stream().min(byStaying).orElseThrow();
        String most = best.getKey() + ": " + percent(best.getValue()) + " of the pairs of material and place stay";
        return tallies.size() == 1 ? most + "." : most + "; " + worst.getKey() + ": " + percent(worst.getValue()) + ".";
    }

    private static String percent(Tally tally) {
        return Math.round(100 * tally.share(Verdict.STAYS)) + " %";
    }

    private static NumbersTable numbers(String what, Map<String, Tally> tallies) {
        List<String> head = new ArrayList<>(List.of(what.substring(0, 1).toUpperCase(Locale.ROOT) + what.substring(1)));
        Arrays.stream(Verdict.values()).forEach(verdict -> head.add(verdict.word()));
        List<List<String>> rows = new ArrayList<>();
        tallies.forEach((label, tally) -> rows.add(Stream.concat(
                        Stream.of(label),
                        Arrays.stream(Verdict.values()).map(verdict -> Integer.toString(tally.of(verdict))))
                .toList()));
        return new NumbersTable("Pairs of material and place by " + what + " and verdict", head, rows);
    }
}
