package hafthold.report;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import hafthold.decide.Atlas;
import hafthold.decide.Atlas.Cell;
import hafthold.decide.Atlas.Line;
import hafthold.decide.Atlas.Site;
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
        List<String> columns =
                new ArrayList<>(List.of("place", "climate", "setting", "made_temperature_c", "made_rh_percent"));
        columns.addAll(CsvFigures.columns());
        columns.add("limit_use");
        columns.addAll(CsvFigures.verdictColumns());
        return columns;
    }

    private static List<String> cells(Atlas atlas, Site site, Cell cell) {
        List<String> cells = new ArrayList<>(List.of(
                site.id(),
                site.climate().id(),
                atlas.setting(),
                CsvFigures.number(atlas.madeTemperature().celsius()),
                CsvFigures.number(atlas.madeHumidity().percent())));
        cells.addAll(CsvFigures.cells(cell.rank(), cell.year()));
        cells.add(CsvFigures.number(cell.use()));
        cells.addAll(CsvFigures.verdict(cell.year(), cell.verdict(), cell.holds()));
        return cells;
    }
}
