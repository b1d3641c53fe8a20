package hafthold.table;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import hafthold.source.Message;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * One table as read: RFC 4180 rows under a header row, after comment lines that start with #. A byte order mark, CRLF
 * line ends and a missing last line end are simply read.
 */
final class CsvTable {
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private final String file;
    private final List<String> columns;
    private final List<CsvRow> rows;
    private final boolean builtIn;

    private CsvTable(String file, List<String> columns, List<CsvRow> rows, boolean builtIn) {
        this.file = file;
        this.builtIn = builtIn;
        this.columns = columns;
        this.rows = rows;
    }

    /**
     * Reads a whole table.
     *
     * @param file name shown in messages
     * @param text where it is read from; closed by the caller
     * @param required columns that must be there, in any order
     * @throws InvalidTableException when the table is empty, lacks a column, or a row has the wrong number of cells
     */
    static CsvTable read(String file, Reader text, List<String> required) {
        List<CsvRecord> records = records(file, text);
        if (records.isEmpty()) {
            throw new InvalidTableException(
                    file, "is empty; expected a header row with " + String.join(", ", required));
        }
        List<String> columns = records.get(0).getFields();
        checkHeader(file, records.get(0), required);
        List<CsvRow> rows = new ArrayList<>(records.size() - 1);
        for (CsvRecord cells : records.subList(1, records.size())) {
            if (cells.getFieldCount() != columns.size()) {
                throw new InvalidTableException(
                        file,
                        cells.getStartingLineNumber(),
                        "(all)",
                        String.join(",", cells.getFields()),
                        columns.size() + " cells as in the header, found " + cells.getFieldCount()
                                + "; quote a cell that holds a comma, and write decimals with a point");
            }
            rows.add(new CsvRow(file, cells.getStartingLineNumber(), columns, cells.getFields()));
        }
        return new CsvTable(file, columns, rows, false);
    }

    private static void checkHeader(String file, CsvRecord header, List<String> required) {
        List<String> columns = header.getFields();
        Set<String> seen = new HashSet<>();
        for (String column : columns) {
            if (!seen.add(column)) {
                throw new InvalidTableException(
                        file, header.getStartingLineNumber(), column, column, "each column once");
            }
        }
        for (String column : required) {
            if (!seen.contains(column)) {
                throw new InvalidTableException(
                        file,
                        header.getStartingLineNumber(),
                        column,
                        String.join(",", columns),
                        "a column named " + column + " in the header row");
            }
        }
    }

    private static List<CsvRecord> records(String file, Reader text) {
        List<CsvRecord> records = new ArrayList<>();
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .commentStrategy(CommentStrategy.SKIP)
                .commentCharacter('#')
                .skipEmptyLines(true)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .ofCsvRecord(new StringReader(withoutMark(text)))) {
            reader.forEach(records::add);
        } catch (CsvParseException e) {
            throw new InvalidTableException(file, "is no readable table: " + e.getMessage());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return records;
    }

    private static String withoutMark(Reader text) throws IOException {
        StringBuilder all = new StringBuilder();
        char[] buffer = new char[1 << 14];
        for (int n = text.read(buffer); n >= 0; n = text.read(buffer)) {
            all.append(buffer, 0, n);
        }
        return !all.isEmpty() && all.charAt(0) == BYTE_ORDER_MARK ? all.substring(1) : all.toString();
    }

    /** The same as a table that ships with the program, for whose words a language may have its own. */
    CsvTable builtIn() {
        return new CsvTable(file, columns, rows, true);
    }

    /**
     * Words of this table as a message.
     *
     * @param key what names them among the words of the built-in tables
     */
    Message said(String key, String words) {
        return builtIn ? Message.tabled("table." + key, words) : Message.verbatim(words);
    }

    /** File name shown in messages. */
    String file() {
        return file;
    }

    /** Column names in file order. */
    List<String> columns() {
        return columns;
    }

    /** Rows in file order. */
    List<CsvRow> rows() {
        return rows;
    }
}
