package hafthold.report;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import hafthold.decide.Comparison;
import hafthold.decide.Comparison.Ranked;
import hafthold.quantity.Band;
import hafthold.report.AnswerFigures.BandKey;
import hafthold.report.AnswerFigures.NumberKey;
import hafthold.simulate.HandleYear;
import hafthold.simulate.Settling;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/** A comparison as RFC 4180 rows, one a material: the numbers of {@link ComparisonJson} laid flat. */
public final class ComparisonCsv {
    private ComparisonCsv() {}

    /** Header and rows, lines ending in a line feed as in our other tables. */
    public static String of(Comparison comparison) {
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
            csv.writeRecord(columns());
            comparison.ranked().forEach(answer -> csv.writeRecord(cells(comparison, answer)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static List<String> columns() {
        List<String> columns = new ArrayList<>(List.of(
                "place",
                "setting",
                "made_temperature_c",
                "made_rh_percent",
                "rank",
                "material",
                "name",
                "family",
                "cut"));
        AnswerFigures.MOISTURE.forEach(key -> columns.add(key.key()));
        for (BandKey key : AnswerFigures.MOVEMENTS) {
            columns.addAll(List.of(key.key("low"), key.key("value"), key.key("high")));
        }
        columns.addAll(List.of("shows_days_low", "shows_days_value", "shows_days_high", "do_not_sand_days"));
        columns.addAll(List.of("worst_month", "verdict", "evidence", "bonded", "probability"));
        return columns;
    }

    private static List<String> cells(Comparison comparison, Ranked answer) {
        HandleYear year = answer.year();
        List<String> cells = new ArrayList<>(List.of(
                comparison.placeId(),
                comparison.settingId(),
                number(comparison.madeTemperature().celsius()),
                number(comparison.madeHumidity().percent()),
                Integer.toString(answer.rank()),
                year.scale().id(),
                year.scale().name(),
                year.scale().family().word(),
                year.scale().cut().word()));
        for (NumberKey key : AnswerFigures.MOISTURE) {
            cells.add(number(key.of().applyAsDouble(year)));
        }
        for (BandKey key : AnswerFigures.MOVEMENTS) {
            cells.addAll(AnswerFigures.cells(key.of().apply(year)));
        }
        cells.addAll(answer.settling().map(ComparisonCsv::settling).orElse(List.of("", "", "", "")));
        cells.addAll(List.of(
                Integer.toString(year.worstMonth()),
                answer.verdict().word(),
                year.grounds().evidence().grade(),
                Boolean.toString(EdgeStep.isBonded(year)),
                answer.likelihood().verdictHolds().isPresent()
                        ? number(answer.likelihood().verdictHolds().getAsDouble())
                        : ""));
        return cells;
    }

    private static List<String> settling(Settling settling) {
        Band shows = settling.showsDays();
        return List.of(number(shows.low()), number(shows.value()), number(shows.high()), number(settling.sandDays()));
    }

    private static String number(double number) {
        return Double.toString(AnswerFigures.stable(number));
    }
}
