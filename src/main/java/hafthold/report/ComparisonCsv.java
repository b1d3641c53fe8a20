package hafthold.report;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import hafthold.decide.Comparison;
import hafthold.decide.Comparison.Ranked;
import hafthold.decide.EventComparison;
import hafthold.simulate.EventYear;
import hafthold.simulate.Settling;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A comparison as RFC 4180 rows, one a material: the numbers of {@link ComparisonJson} laid flat. With events there is a
 * row a material and event, which says of the material what it says without.
 */
public final class ComparisonCsv {
    private ComparisonCsv() {}

    /** Header and rows, lines ending in a line feed as in our other tables. */
    public static String of(Comparison comparison) {
        return of(EventComparison.quiet(comparison));
    }

    /** Likewise, with what each event does. */
    public static String of(EventComparison answers) {
        Comparison comparison = answers.comparison();
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
            csv.writeRecord(columns(!answers.events().isEmpty()));
            for (Ranked answer : comparison.ranked()) {
                List<String> cells = cells(comparison, answer);
                if (answers.events().isEmpty()) {
                    csv.writeRecord(cells);
                }
                for (EventYear year : answers.events()) {
                    if (year.isOf(answer.year())) {
                        year.answers()
                                .forEach(event -> csv.writeRecord(
                                        Stream.concat(cells.stream(), EventCsv.cells(year, event).stream())
                                                .toList()));
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static List<String> columns(boolean withEvents) {
        List<String> columns = new ArrayList<>(List.of("place", "setting", "made_temperature_c", "made_rh_percent"));
        columns.addAll(CsvFigures.columns());
        columns.addAll(List.of("shows_days_low", "shows_days_value", "shows_days_high", "do_not_sand_days"));
        columns.addAll(CsvFigures.verdictColumns());
        if (withEvents) {
            columns.addAll(EventCsv.columns());
        }
        return columns;
    }

    private static List<String> cells(Comparison comparison, Ranked answer) {
        List<String> cells = new ArrayList<>(List.of(
                comparison.placeId(),
                comparison.settingId(),
                CsvFigures.number(comparison.madeTemperature().celsius()),
                CsvFigures.number(comparison.madeHumidity().percent())));
        cells.addAll(CsvFigures.cells(answer.rank(), answer.year()));
        cells.addAll(answer.settling().map(ComparisonCsv::settling).orElse(List.of("", "", "", "")));
        cells.addAll(CsvFigures.verdict(
                answer.year(), answer.verdict(), answer.likelihood().verdictHolds()));
        return cells;
    }

    private static List<String> settling(Settling settling) {
        List<String> cells = new ArrayList<>(CsvFigures.band(Optional.of(settling.showsDays())));
        cells.add(CsvFigures.number(settling.sandDays()));
        return cells;
    }
}
