package hafthold.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import picocli.CommandLine.ParseResult;

/** The command of a run as it can be typed again. */
final class TypedCommand {
    private static final Pattern PLAIN = Pattern.compile("[\\p{L}\\p{N}_./,:=+@%-]+");

    private TypedCommand() {}

    /** The whole command, and below it the small table it was given, so that a page holds all that repeats it. */
    static String of(ParseResult parsed, Optional<Path> table) {
        try {
            return table.isEmpty()
                    ? of(parsed)
                    : of(parsed) + "\n\n# " + table.get().getFileName() + "\n"
                            + Files.readString(table.get()).strip();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The whole command, with what an order file held written out and spaces kept together by quotes. */
    static String of(ParseResult parsed) {
        return parsed.expandedArgs().stream()
                .map(TypedCommand::quoted)
                .collect(Collectors.joining(" ", parsed.commandSpec().qualifiedName() + " ", ""));
    }

    private static String quoted(String word) {
        return PLAIN.matcher(word).matches()
                ? word
                : '"' + word.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }
}
