package hafthold.report;

import hafthold.decide.StockAnswer;
import hafthold.decide.StockMoisture;
import hafthold.quantity.Band;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Judged blocks as CSV: one row a block; days beyond the forecast are left empty. */
public final class StockCsv {
    private static final double PERCENT = 100;

    private StockCsv() {}

    /** Header and rows. */
    public static String of(List<StockAnswer> answers) {
        StringBuilder text = new StringBuilder(String.join(
                        ",",
                        "name",
                        "material",
                        "on",
                        "verdict",
                        "mc_mean_low_percent",
                        "mc_mean_percent",
                        "mc_mean_high_percent",
                        "mc_core_low_percent",
                        "mc_core_percent",
                        "mc_core_high_percent",
                        "mc_goal_percent",
                        "box_rh_percent",
                        "ready_low_days",
                        "ready_days",
                        "ready_high_days",
                        "ready_below_g_in_7_days",
                        "weigh_together",
                        "fill",
                        "lumens_filled_percent"))
                .append('\n');
        answers.forEach(answer -> text.append(String.join(",", cells(answer))).append('\n'));
        return text.toString();
    }

    private static List<String> cells(StockAnswer answer) {
        List<String> cells = new ArrayList<>(List.of(
                quoted(answer.block().name()),
                answer.block().material().id(),
                answer.block().isRead() ? answer.block().today().toString() : "",
                answer.verdict().word()));
        Optional<StockMoisture> moisture = answer.moisture();
        cells.addAll(band(moisture.map(StockMoisture::meanNow)));
        cells.addAll(band(moisture.map(StockMoisture::coreNow)));
        cells.add(number(moisture, known -> PERCENT * known.goal().value()));
        cells.add(CsvFigures.number(PERCENT * answer.target().aim().humidityFraction()));
        cells.add(number(moisture, known -> known.boxDays().low()));
        cells.add(number(moisture, known -> known.boxDays().middle()));
        cells.add(number(moisture, known -> known.boxDays().high()));
        cells.add(number(moisture, known -> 1000 * known.telltaleKilograms()));
        cells.add(moisture.map(known -> Long.toString(known.weighTogether())).orElse(""));
        cells.add(answer.fill()
                .map(fill -> answer.isFillSure() ? fill.likeliest().word() : "open")
                .orElse(""));
        cells.add(answer.fill()
                .map(fill -> CsvFigures.number(PERCENT * fill.filledFraction().value()))
                .orElse(""));
        return cells;
    }

    private static List<String> band(Optional<Band> fraction) {
        return CsvFigures.band(fraction.map(band -> band.times(PERCENT)));
    }

    private static String number(Optional<StockMoisture> moisture, Function<StockMoisture, Double> of) {
        return moisture.map(of).filter(Double::isFinite).map(CsvFigures::number).orElse("");
    }

    private static String quoted(String name) {
        return '"' + name.replace("\"", "\"\"") + '"';
    }
}
