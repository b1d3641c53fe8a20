package hafthold.cli;

import hafthold.report.ReportFolder;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import picocli.CommandLine.Option;

/** In which form an answer is printed, and where a report of it goes. */
final class OutputOptions {
    @Option(
            names = "--format",
            paramLabel = "FORM",
            defaultValue = "text",
            description = "text, markdown, json or csv, as far as this command has it (default: ${DEFAULT-VALUE})")
    private OutputFormat format;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "also write a report into this folder: page, pictures, text and figures, all or none")
    private Path folder;

    /**
     * The form asked for.
     *
     * @param command who answers
     * @param forms what it can print
     */
    OutputFormat form(String command, OutputFormat... forms) {
        List<OutputFormat> has = Arrays.asList(forms);
        if (!has.contains(format)) {
            throw new WrongUsageException(command + " answers as "
                    + has.stream().map(OutputFormat::toString).collect(Collectors.joining(" or ")) + ", not as "
                    + format);
        }
        return format;
    }

    /** Where a report goes. */
    Optional<Path> folder() {
        return Optional.ofNullable(folder);
    }

    /**
     * Writes the report that was asked for, if one was, and says where its page lies.
     *
     * @param err takes the word of it
     * @param page name of the page among the files
     * @param files by name
     */
    void report(PrintWriter err, String page, Supplier<Map<String, String>> files) {
        folder().ifPresent(into -> {
            write(into, files.get());
            err.println("report: " + into.resolve(page));
        });
    }

    /** Writes files into a folder, all of them or none. */
    static void write(Path folder, Map<String, String> files) {
        try {
            new ReportFolder(folder).write(files);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
