package hafthold.table;

import hafthold.source.Finding;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tomlj.Toml;
import org.tomlj.TomlParseError;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlVersion;

/** Reads a TOML file that people type; a byte order mark and CRLF line ends are simply read. */
final class TomlText {
    private static final long MOST_BYTES = 1 << 20;
    private static final char BYTE_ORDER_MARK = '\uFEFF';
    private static final Pattern UNQUOTED = Pattern.compile("[^=\"']*=\\s*[^\"'\\[{\\s].*");
    private static final Pattern CURLY_QUOTES = Pattern.compile(".*[\u201C\u201D\u201E\u2018\u2019].*");

    private static final Pattern HEADER = Pattern.compile("\\s*\\[{1,2}\\s*([A-Za-z0-9_.-]+)\\s*]{1,2}\\s*(?:#.*)?");

    private TomlText() {}

    /**
     * Text of a file.
     *
     * @throws InvalidTableException when there is no such file, it is a folder, too large, or not UTF-8
     */
    static String read(Path file) {
        String name = file.toString();
        if (Files.isDirectory(file)) {
            throw new InvalidTableException(name, "is a folder; expected a TOML file");
        }
        if (!Files.exists(file)) {
            throw new InvalidTableException(name, "is not there; expected a TOML file");
        }
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw new InvalidTableException(name, "is larger than 1 MB; expected a short TOML file");
            }
            return decode(name, Files.readAllBytes(file));
        } catch (IOException e) {
            throw new UncheckedIOException(name + " cannot be read: " + e.getMessage(), e);
        }
    }

    private static String decode(String file, byte[] bytes) {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        boolean malformed = decoder.decode(in, out, true).isError();
        out.flip();
        String text = out.toString();
        if (malformed) {
            long line = 1 + text.chars().filter(c -> c == '\n').count();
            throw new InvalidTableException(
                    file,
                    line,
                    "(text)",
                    String.format("byte 0x%02X", bytes[in.position()]),
                    "UTF-8 text; save the file as UTF-8");
        }
        return text;
    }

    /**
     * The outermost table.
     *
     * @param findings takes up every default that is used while reading
     * @throws InvalidTableException when the text is empty or no TOML
     */
    static TomlSection parse(String file, String text, List<Finding> findings) {
        String plain = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
        TomlParseResult result = Toml.parse(plain, TomlVersion.V1_0_0);
        if (result.hasErrors()) {
            throw syntax(file, plain, result.errors().get(0));
        }
        if (result.isEmpty()) {
            throw new InvalidTableException(file, "is empty; the command's --example prints a file to start from");
        }
        return new TomlSection(file, "", result, 1, findings);
    }

    private static InvalidTableException syntax(String file, String text, TomlParseError error) {
        int line = error.position().line();
        String found = text.lines().skip(line - 1L).findFirst().orElse("").strip();
        String hint = "";
        if (CURLY_QUOTES.matcher(found).matches()) {
            hint = "; write straight quotes \"";
        } else if (UNQUOTED.matcher(found).matches()) {
            hint = "; words and values with a unit stand in quotes, such as width = \"26 mm\"";
        }
        int equals = found.indexOf('=');
        String key =
                equals > 0 ? tableAbove(text, line) + found.substring(0, equals).strip() : "(text)";
        return InvalidTableException.atKey(file, line, key, found, "TOML, but: " + error.getMessage() + hint);
    }

    /** Name of the table that a line stands in, with a dot behind it. */
    private static String tableAbove(String text, int line) {
        return text.lines()
                .limit(line - 1L)
                .map(HEADER::matcher)
                .filter(Matcher::matches)
                .map(header -> header.group(1) + ".")
                .reduce("", (before, next) -> next);
    }
}
