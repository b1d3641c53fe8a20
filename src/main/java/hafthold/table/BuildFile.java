package hafthold.table;

import hafthold.knife.KnifeBuild;
import hafthold.knife.Order;
import hafthold.source.Finding;
import hafthold.source.Message;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * One knife as its maker wrote it down in a TOML file.
 *
 * @param build the knife; every value exactly as in the file
 * @param findings one for every default that was taken, subject the key, in the order they were read
 */
public record BuildFile(KnifeBuild build, List<Finding> findings) {
    private static final String FULL_TANG = "full-tang";
    private static final String TANG_STACK = "tang-stack";
    private static final Pattern KEY_OR_TABLE = Pattern.compile("^\\s*(\\[|[\\w\"'.-]+\\s*=)");
    private static final String EXAMPLES = "/hafthold/examples/";

    /** Keeps its own copy. */
    public BuildFile {
        findings = List.copyOf(findings);
    }

    /**
     * Reads a build file. Whether its ids are in the tables is not looked at.
     *
     * @throws InvalidTableException at the first fault, naming file, line, key, value and what would be right
     */
    public static BuildFile read(Path file) {
        Path folder = file.toAbsolutePath().getParent();
        return parse(file.toString(), TomlText.read(file), folder);
    }

    /** Reads the text of a build file whose climate file is sought from a folder. */
    static BuildFile parse(String file, String text, Path folder) {
        requireTables(file, text);
        List<Finding> findings = new ArrayList<>();
        return of(TomlText.parse(file, text, findings), folder, List.of(), findings);
    }

    /** Complains of a text that is no knife file at all. */
    static void requireTables(String file, String text) {
        List<String> lines = text.replace("\uFEFF", "")
                .lines()
                .filter(line -> !line.isBlank() && !line.strip().startsWith("#"))
                .toList();
        if (!lines.isEmpty()
                && lines.stream().noneMatch(line -> KEY_OR_TABLE.matcher(line).find())) {
            throw new InvalidTableException(file, "this is no knife file; hafthold fit --example prints one");
        }
    }

    /**
     * Reads the outermost table of a file that holds a build, and perhaps more.
     *
     * @param besides tables that may stand there and are read elsewhere
     * @param findings takes up every default that is used
     */
    static BuildFile of(TomlSection build, Path folder, List<String> besides, List<Finding> findings) {
        TomlSection knife = build.section(OrderKeys.TABLE);
        String kind = knife.or(
                OrderKeys.BUILD,
                knife.word(OrderKeys.BUILD, List.of(FULL_TANG, TANG_STACK), word -> word),
                FULL_TANG,
                Message.verbatim(FULL_TANG));
        boolean stack = kind.equals(TANG_STACK);
        List<String> own = stack ? StackKeys.TABLES : FullTangKeys.TABLES;
        String other = stack ? FULL_TANG : TANG_STACK;
        for (String key : stack ? FullTangKeys.TABLES : StackKeys.TABLES) {
            if (build.has(key) && !own.contains(key)) {
                throw build.unknown(key, "none of another build; " + key + " goes with build = \"" + other + "\"");
            }
        }
        build.allows(Stream.concat(own.stream(), besides.stream()).toList());
        Order order = OrderKeys.read(knife, folder);
        KnifeBuild read = stack ? StackKeys.read(build, order) : FullTangKeys.read(build, order);
        return new BuildFile(read, findings);
    }

    /** A commented example of a full-tang build, invented. */
    public static String example() {
        return resource("full-tang.toml");
    }

    /** A commented example of a stack of parts on a through tang, invented. */
    public static String stackExample() {
        return resource("tang-stack.toml");
    }

    /** A commented example that ships with the program. */
    static String resource(String name) {
        try (InputStream in = BuildFile.class.getResourceAsStream(EXAMPLES + name)) {
            if (in == null) {
                throw new IllegalStateException("the example " + name + " is missing from the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
