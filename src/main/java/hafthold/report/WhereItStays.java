package hafthold.report;

import hafthold.air.ClimateGroup;
import hafthold.decide.Atlas;
import hafthold.decide.Atlas.Cell;
import hafthold.decide.Atlas.Line;
import hafthold.decide.Tally;
import hafthold.decide.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Where a material stays, where it needs care and where it does not belong, in words and numbers.
 *
 * @param atlas what is spoken of
 * @param style language and units
 */
record WhereItStays(Atlas atlas, BenchStyle style) {
    private static final int NAMED_PLACES = 2;
    private static final int HUNDREDTHS = 100;
    private static final double SHOWS = 0.005e-3;

    /** The whole of it: one clause a verdict, then how far the edges step. */
    String sentence(Line line) {
        Tally tally = Tally.of(line.cells());
        List<String> clauses = new ArrayList<>();
        for (Verdict verdict : Verdict.values()) {
            if (tally.of(verdict) > 0) {
                clauses.add(style.say("where." + verdict.word(), "where", where(line, verdict)));
            }
        }
        String text = BenchStyle.capital(style.joined("semicolon", clauses));
        return style.say("sentence", "text", text) + " " + edges(line);
    }

    /** The climates and places in which a material gets a verdict, with counts; a dash where there are none. */
    String where(Line line, Verdict verdict) {
        int all = line.cells().size();
        int count = Tally.of(line.cells()).of(verdict);
        if (count == 0) {
            return "–";
        }
        if (count == all) {
            return all == 1 ? atlas.sites().get(0).name() : style.say("where.all", "count", Integer.toString(all));
        }
        List<String> parts = new ArrayList<>();
        atlas.climates().stream()
                .sorted(Comparator.comparingInt(climate -> -count(line, climate, verdict)))
                .filter(climate -> count(line, climate, verdict) > 0)
                .forEach(climate -> parts.add(part(line, climate, verdict)));
        return style.say(
                "where.some",
                "count",
                Integer.toString(count),
                "all",
                Integer.toString(all),
                "list",
                style.joined("comma", parts));
    }

    private String part(Line line, ClimateGroup climate, Verdict verdict) {
        List<Integer> places = atlas.placesOf(climate);
        int count = count(line, climate, verdict);
        String words = new AtlasWords(style).climate(climate);
        if (count > NAMED_PLACES && count == places.size()) {
            return style.say("where.climate.all", "climate", words, "count", Integer.toString(count));
        }
        if (count <= NAMED_PLACES) {
            List<String> names = places.stream()
                    .filter(place -> line.cells().get(place).verdict() == verdict)
                    .map(place -> atlas.sites().get(place).name())
                    .toList();
            return style.say("where.climate", "climate", words, "places", style.joined("semicolon", names));
        }
        return style.say(
                "where.climate.some",
                "climate",
                words,
                "count",
                Integer.toString(count),
                "all",
                Integer.toString(places.size()));
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
        String far = stepWords(line.cells().get(most));
        String furthest = atlas.sites().get(most).name();
        return least == most
                ? style.say("where.edges", "step", far, "place", furthest)
                : style.say(
                        "where.edges.range",
                        "least",
                        stepWords(line.cells().get(least)),
                        "there",
                        atlas.sites().get(least).name(),
                        "step",
                        far,
                        "place",
                        furthest);
    }

    /** The range of edge steps over places without its unit, such as "0.03–0.21"; one figure where both are alike. */
    String edgeRange(List<Cell> cells) {
        double least = cells.stream().mapToDouble(WhereItStays::step).min().orElseThrow();
        double most = cells.stream().mapToDouble(WhereItStays::step).max().orElseThrow();
        String low = style.hundredths(least);
        String high = style.hundredths(most);
        return low.equals(high) ? low : low + "–" + high;
    }

    /** The year's larger edge step, metres. */
    static double step(Cell cell) {
        return EdgeStep.worst(cell.year()).size().value();
    }

    /**
     * A step in hundredths of a millimetre, or in thou, with its sign, proud positive, such as "−14"; 0 for what prints as
     * none.
     */
    String signed(Cell cell) {
        EdgeStep worst = EdgeStep.worst(cell.year());
        double shown = style.shown(worst.size().value());
        long size = Math.round(style.isThou() ? shown : HUNDREDTHS * shown);
        if (size == 0) {
            return "0";
        }
        return worst.side() == EdgeStep.Side.SHY ? style.number("-" + size) : "+" + size;
    }

    private String stepWords(Cell cell) {
        EdgeStep worst = EdgeStep.worst(cell.year());
        return worst.size().value() < SHOWS
                ? style.say("flush")
                : new AnswerWords(style)
                        .side(
                                worst.side(),
                                style.withUnit(style.hundredths(worst.size().value())));
    }
}
