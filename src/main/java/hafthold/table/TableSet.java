package hafthold.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The built-in tables, and a folder of the user's own laid over them. */
public final class TableSet {
    private static final String BUILT_IN = "/hafthold/tables/";

    private final Optional<Path> overlay;

    private TableSet(Optional<Path> overlay) {
        this.overlay = overlay;
    }

    /** The built-in tables alone. */
    public static TableSet builtIn() {
        return new TableSet(Optional.empty());
    }

    /**
     * The built-in tables with a folder laid over them: rows of the same name are replaced, others added.
     *
     * @throws InvalidTableException when the path is no folder, or holds none of the tables
     */
    public static TableSet with(Path folder) {
        if (!Files.isDirectory(folder)) {
            throw new InvalidTableException(folder.toString(), "is no folder; expected a folder of CSV tables");
        }
        return new TableSet(Optional.of(folder));
    }

    boolean isBuiltIn() {
        return overlay.isEmpty();
    }

    /**
     * Reads one table, built-in rows first.
     *
     * @param name file name, such as {@code places.csv}
     * @param required columns that each file must have
     */
    List<CsvTable> read(String name, List<String> required) {
        List<CsvTable> tables = new ArrayList<>();
        try (InputStream resource = TableSet.class.getResourceAsStream(BUILT_IN + name)) {
            if (resource == null) {
                throw new IllegalStateException("the table " + name + " is missing from the program");
            }
            tables.add(CsvTable.read(name, new InputStreamReader(resource, StandardCharsets.UTF_8), required)
                    .builtIn());
            Optional<Path> own = overlay.map(folder -> folder.resolve(name)).filter(Files::exists);
            if (own.isPresent()) {
                tables.add(readFile(own.get(), required));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return tables;
    }

    private static CsvTable readFile(Path file, List<String> required) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new InvalidTableException(file.toString(), "is a folder; expected a CSV file");
        }
        try (Reader text = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            return CsvTable.read(file.toString(), text, required);
        } catch (java.nio.charset.CharacterCodingException e) {
            throw new InvalidTableException(file.toString(), "is not UTF-8 text");
        }
    }
}
