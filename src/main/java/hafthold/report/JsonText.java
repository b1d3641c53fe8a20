package hafthold.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;

/** JSON as a text that people can read too: two blanks of indent, line feeds, equal input gives equal bytes. */
final class JsonText {
    private JsonText() {}

    /** Writes into a generator; unlike a {@code Consumer} it may fail. */
    interface Body {
        void write(JsonGenerator json) throws IOException;
    }

    /** The text that a body writes, ending in a line feed. */
    static String of(Body body) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
            DefaultPrettyPrinter printer = new DefaultPrettyPrinter(
                    Separators.createDefaultInstance().withObjectFieldValueSpacing(Separators.Spacing.AFTER));
            printer.indentObjectsWith(indenter);
            printer.indentArraysWith(indenter);
            json.setPrettyPrinter(printer);
            body.write(json);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.append('\n').toString();
    }
}
