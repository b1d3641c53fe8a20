package hafthold.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The file that a command is about, and where to start from without one. */
final class FileOptions {
    @Parameters(
            arity = "0..1",
            paramLabel = "FILE",
            description = "what was made and measured, as a TOML file; --example prints one to start from")
    private Path file;

    @Option(names = "--example", description = "prints a commented file that this command accepts")
    private boolean example;

    boolean wantsExample() {
        return example;
    }

    /**
     * The file.
     *
     * @param command who wants it
     * @param what what it is about, in the plural or not: "knife", "blocks"
     */
    Path file(String command, String what) {
        if (file == null) {
            throw new WrongUsageException(
                    "which " + what + "? Name the file; 'hafthold " + command + " --example' prints one to start from");
        }
        return file;
    }

    /** What stands in the file. */
    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
