package hafthold.cli;

import hafthold.table.TableSet;
import java.nio.file.Path;
import picocli.CommandLine.Option;

/** Where the tables come from. */
final class TableOptions {
    @Option(
            names = "--tables",
            paramLabel = "DIR",
            description = "folder of your own tables, laid over the built-in ones; same file names and columns")
    private Path folder;

    /** The tables to use. */
    TableSet open() {
        return folder == null ? TableSet.builtIn() : TableSet.with(folder);
    }
}
