package hafthold.report;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import hafthold.decide.Atlas;
import hafthold.decide.Atlas.Cell;
import hafthold.decide.Atlas.Line;
import hafthold.decide.Atlas.Site;
import hafthold.report.AnswerFigures.BandKey;
import hafthold.report.AnswerFigures.NumberKey;
import hafthold.simulate.HandleYear;
import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;

/** An atlas as RFC 4180 rows, one a material and place: the columns of {@link ComparisonCsv} and the climate. */
public final class AtlasCsv {
    private AtlasCsv() {}

    /** Writes header and rows, material by material, lines ending in a line feed; the writer stays open. */
    public static void write(Atlas atlas, Writer writer) throws IOException {
        CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(writer);
        csv.writeRecord(columns());
        for (Line line : atlas.lines()) {
            for (int place = 0; place < line.cells().size(); place++) {
                csv.writeRecord(
                        cells(atlas, atlas.sites().get(place), line.cells().get(place)));
            }
        }
        csv.flush();
    }

    private static List<String> columns() {
        List<String> columns = new ArrayList<>(List.of(
                "place",
                "climate",
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
        columns.addAll(List.of("limit_use", "worst_month", "verdict", "evidence", "bonded", "probability"));
        return columns;
    }

    private static List<String> cells(Atlas atlas, Site site, Cell cell) {
        HandleYear year = cell.year();
        List<String> cells = new ArrayList<>(List.of(
                site.id(),
                site.climate().id(),
                atlas.setting(),
                number(atlas.madeTemperature().celsius()),
                number(atlas.madeHumidity().percent()),
                Integer.toString(cell.rank()),
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
        cells.addAll(List.of(
                number(cell.use()),
                Integer.toString(year.worstMonth()),
                cell.verdict().word(),
                year.grounds().evidence().grade(),
                Boolean.toString(EdgeStep.isBonded(year)),
                cell.holds().isPresent() ? number(cell.holds().getAsDouble()) : ""));
        return cells;
    }

    private static String number(double number) {
        return Double.toString(AnswerFigures.stable(number));
    }
}
