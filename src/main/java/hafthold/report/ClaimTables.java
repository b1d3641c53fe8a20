package hafthold.report;

import hafthold.decide.Claim;
import hafthold.decide.ClaimRow;
import hafthold.decide.ClaimVerdict;
import hafthold.knife.MeasuringPoint;
import hafthold.quantity.Band;
import java.util.ArrayList;
import java.util.List;

/**
 * The tables of a judged claim as cells, for a text and for a page.
 *
 * @param style language and units
 * @param claim the knife, judged
 */
record ClaimTables(BenchStyle style, Claim claim) {

    /** Of less than that no share is told, m. */
    private static final double SMALLEST = 0.005e-3;

    /** Headings of what was measured. */
    List<String> measuredHead() {
        return style.heads("day", "at", "point", "measured", "expected", "nine-of-ten", "as-far-out");
    }

    /** One row a measured step. */
    List<List<String>> measured() {
        ClaimWords words = new ClaimWords(style, claim);
        List<List<String>> rows = new ArrayList<>();
        for (ClaimRow row : claim.rows()) {
            MeasuringPoint point = row.measured().point();
            rows.add(List.of(
                    words.shortDay(row.measured().on()),
                    say(claim.history().isAtBench(row.measured()) ? "at.bench" : "at.home"),
                    words.point(point),
                    words.cell(point, row.measured().step().metres()),
                    words.cell(point, row.expected().value()),
                    style.say(
                            "from-to",
                            "from",
                            words.cell(point, row.expected().low()),
                            "to",
                            words.cell(point, row.expected().high())),
                    say("odds.cell", "count", words.count(row.asFarOut()))));
        }
        return rows;
    }

    /** Headings of the same where there is little room: when, where and what in one column. */
    List<String> readingsHead() {
        return style.heads("reading", "measured", "expected-of-ten", "as-far-out");
    }

    /** One row a measured step, likewise. */
    List<List<String>> readings() {
        return measured().stream()
                .map(row -> List.of(
                        style.joined("comma", row.subList(0, 3)),
                        row.get(3),
                        say("expected.cell", "value", row.get(4), "from-to", row.get(5)),
                        row.get(6)))
                .toList();
    }

    /** Rows whose step is worth sharing out: a ring that is none is not, nor what no cause comes near. */
    List<ClaimRow> sharedOut() {
        if (claim.verdict() == ClaimVerdict.NOT_EXPLAINED) {
            return List.of();
        }
        return claim.rows().stream()
                .filter(row -> row.measured().point().isSigned()
                        || row.measured().step().metres() > SMALLEST)
                .toList();
    }

    /** What is to be known about the shares. */
    String sharesNote() {
        return say(claim.verdict() == ClaimVerdict.NOT_EXPLAINED ? "shares.none" : "shares.note");
    }

    /** Headings of the shares. */
    List<String> sharesHead() {
        return style.heads("part-of", "part", "share", "low", "high");
    }

    /** One row a share of a step. */
    List<List<String>> shares(ClaimRow row) {
        ClaimWords words = new ClaimWords(style, claim);
        MeasuringPoint point = row.measured().point();
        double whole = row.measured().step().metres();
        List<List<String>> rows = new ArrayList<>();
        for (ClaimRow.Share share : row.parts()) {
            Band metres = share.metres();
            rows.add(List.of(
                    say("part." + style.keyOf(share.part())),
                    words.cell(point, metres.value()),
                    Math.abs(whole) < SMALLEST ? "–" : percent(metres.value() / whole),
                    metres.isExact() ? "–" : words.cell(point, metres.low()),
                    metres.isExact() ? "–" : words.cell(point, metres.high())));
        }
        return rows;
    }

    /** What goes against the step, or further than it, is no share of it. */
    private String percent(double share) {
        long percent = Math.round(100 * share);
        return percent < 0 || percent > 100 ? "–" : say("share.percent", "percent", Long.toString(percent));
    }

    private String say(String key, String... filling) {
        return style.say("claim." + key, filling);
    }
}
