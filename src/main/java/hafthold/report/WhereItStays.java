package hafthold.report;

import hafthold.air.ClimateGroup;
import hafthold.decide.Atlas;
import hafthold.decide.Atlas.Cell;
import hafthold.decide.Atlas.Line;
import hafthold.decide.Tally;
import hafthold.decide.Verdict;
import hafthold.quantity.Band;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * Where a material stays, where it needs care and where it does not belong, in words and numbers.
 *
 * @param atlas what is spoken of
 */
record WhereItStays(Atlas atlas) {
    private static final int NAMED_PLACES = 2;

    /** The whole of it: one clause a verdict, then how far the edges step. */
    String sentence(Line line) {
        Tally tally = Tally.of(line.cells());
        List<String> clauses = new ArrayList<>();
        for (Verdict verdict : Verdict.values()) {
            if (tally.of(verdict) > 0) {
                clauses.add(lead(verdict) + " " + where(line, verdict));
            }
        }
        String text = String.join("; ", clauses);
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1) + ". " + edges(line);
    }

    /** The climates and places in which a material gets a verdict, with counts; a dash where there are none. */
    String where(Line line, Verdict verdict) {
        int all = line.cells().size();
        int count = Tally.of(line.cells()).of(verdict);
        if (count == 0) {
            return "–";
        }
        if (count == all) {
            return all == 1 ? atlas.sites().get(0).name() : "all " + all + " places";
        }
        List<String> parts = new ArrayList<>();
        atlas.climates().stream()
                .sorted(Comparator.comparingInt(climate -> -count(line, climate, verdict)))
                .filter(climate -> count(line, climate, verdict) > 0)
                .forEach(climate -> parts.add(part(line, climate, verdict)));
        return count + " of " + all + ": " + String.join(", ", parts);
    }

    private String part(Line line, ClimateGroup climate, Verdict verdict) {
        List<Integer> places = atlas.placesOf(climate);
        int count = count(line, climate, verdict);
        String words = climate.words();
        if (count > NAMED_PLACES && count == places.size()) {
            return words + " (all " + count + ")";
        }
        if (count <= NAMED_PLACES) {
            List<String> names = places.stream()
                    .filter(place -> line.cells().get(place).verdict() == verdict)
                    .map(place -> atlas.sites().get(place).name())
                    .toList();
            return words + " (" + String.join("; ", names) + ")";
        }
        return words + " (" + count + " of " + places.size() + ")";
    }

    private int count(Line line, ClimateGroup climate, Verdict verdict) {
        return Tally.of(atlas.cells(line, climate)).of(verdict);
    }

    /** How far the edges step over all places, such as "Edges: 0.05 mm proud (Oslo, Norway) to 0.2 mm shy (Yakutsk)". */
    private String edges(Line line) {
        int least = 0;
        int most = 0;
        for (int place = 1; place < line.cells().size(); place++) {
            if (step(line.cells().get(place)) < step(line.cells().get(least))) {
                least = place;
            }
            if (step(line.cells().get(place)) > step(line.cells().get(most))) {
                most = place;
            }
        }
        String far = stepWords(line.cells().get(most)) + " in "
                + atlas.sites().get(most).name();
        return least == most
                ? "Edges: " + far + "."
                : "Edges: from " + stepWords(line.cells().get(least)) + " in "
                        + atlas.sites().get(least).name() + " to " + far + ".";
    }

    /** The range of edge steps over places, mm, such as "0.03–0.21"; one figure where both are alike. */
    static String edgeRange(List<Cell> cells) {
        double least = cells.stream().mapToDouble(WhereItStays::step).min().orElseThrow();
        double most = cells.stream().mapToDouble(WhereItStays::step).max().orElseThrow();
        String low = hundredths(least);
        String high = hundredths(most);
        return low.equals(high) ? low : low + "–" + high;
    }

    /** The year's larger edge step, metres. */
    static double step(Cell cell) {
        return EdgeStep.worst(cell.year()).size().value();
    }

    /** A step in hundredths of a millimetre with its sign, proud positive, such as "−14"; 0 for what prints as none. */
    static String signedHundredths(Cell cell) {
        EdgeStep worst = EdgeStep.worst(cell.year());
        long size = Math.round(1e5 * worst.size().value());
        String sign = size == 0 ? "" : worst.side() == EdgeStep.Side.SHY ? "−" : "+";
        return sign + size;
    }

    private static String stepWords(Cell cell) {
        EdgeStep worst = EdgeStep.worst(cell.year());
        Band size = worst.size();
        return Math.round(1e5 * size.value()) == 0
                ? "flush"
                : hundredths(size.value()) + Paragraph.HOLD + "mm "
                        + worst.side().word();
    }

    private static String hundredths(double metres) {
        return String.format(Locale.ROOT, "%.2f", 1000 * metres);
    }

    private static String lead(Verdict verdict) {
        return switch (verdict) {
            case STAYS -> "stays in";
            case CARE -> "needs care in";
            case CHANGE -> "wants another build in";
            case REFUSE -> "does not belong in";
            case UNKNOWN -> "cannot be judged in";
        };
    }
}
