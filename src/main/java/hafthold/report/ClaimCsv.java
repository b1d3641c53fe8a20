package hafthold.report;

import hafthold.decide.Claim;
import hafthold.decide.ClaimRow;
import hafthold.knife.MeasuredStep;
import hafthold.quantity.Band;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A judged claim as CSV: one row a measured step, steps in millimetres, signed, positive proud. */
public final class ClaimCsv {
    private static final double MILLI = 1e3;

    private ClaimCsv() {}

    /** Header and rows. */
    public static String of(Claim claim) {
        List<String> head = new ArrayList<>(List.of(
                "on",
                "at",
                "point",
                "step_mm",
                "error_mm",
                "expected_low_mm",
                "expected_mm",
                "expected_high_mm",
                "as_far_out",
                "consistent"));
        for (ClaimRow.Part part : ClaimRow.Part.values()) {
            head.add(part.name().toLowerCase(Locale.ROOT) + "_mm");
        }
        head.addAll(List.of("settled_low_mm", "settled_mm", "settled_high_mm", "verdict", "sure"));
        StringBuilder text = new StringBuilder(String.join(",", head)).append('\n');
        claim.rows()
                .forEach(row -> text.append(String.join(",", cells(claim, row))).append('\n'));
        return text.toString();
    }

    private static List<String> cells(Claim claim, ClaimRow row) {
        MeasuredStep measured = row.measured();
        List<String> cells = new ArrayList<>(List.of(
                measured.on().toString(),
                claim.history().isAtBench(measured) ? "bench" : "home",
                measured.point().word(),
                CsvFigures.number(MILLI * measured.step().metres()),
                CsvFigures.number(MILLI * measured.error().metres()),
                CsvFigures.number(MILLI * row.expected().low()),
                CsvFigures.number(MILLI * row.expected().value()),
                CsvFigures.number(MILLI * row.expected().high()),
                CsvFigures.number(row.asFarOut()),
                Boolean.toString(row.consistent())));
        for (ClaimRow.Part part : ClaimRow.Part.values()) {
            cells.add(CsvFigures.number(MILLI * row.of(part).value()));
        }
        Optional<Band> settled = row.settled();
        cells.add(settled.map(band -> CsvFigures.number(MILLI * band.low())).orElse(""));
        cells.add(settled.map(band -> CsvFigures.number(MILLI * band.value())).orElse(""));
        cells.add(settled.map(band -> CsvFigures.number(MILLI * band.high())).orElse(""));
        cells.add(claim.verdict().word());
        cells.add(claim.namesACause() ? CsvFigures.number(claim.sure()) : "");
        return cells;
    }
}
