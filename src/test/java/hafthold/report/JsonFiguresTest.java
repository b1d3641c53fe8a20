package hafthold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import hafthold.source.Finding;
import hafthold.source.Finding.Kind;
import hafthold.source.Message;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

class JsonFiguresTest {

    @Test
    void tellsAnEqualSentenceOnceForAllItIsAbout() {
        String json = JsonText.of(generator -> {
            generator.writeStartObject();
            JsonFigures.findings(
                    generator,
                    List.of(
                            new Finding(Kind.CAUTION, "teak", Message.verbatim("Dust.")),
                            new Finding(Kind.ESTIMATE, "teak", Message.verbatim("Dust.")),
                            new Finding(Kind.CAUTION, "wenge", Message.verbatim("Dust.")),
                            new Finding(Kind.CAUTION, "teak", Message.verbatim("Dust."))));
            generator.writeEndObject();
        });
        assertEquals(
                "{\"findings\":[{\"kind\":\"caution\",\"subjects\":[\"teak\",\"wenge\"],\"text\":\"Dust.\"},"
                        + "{\"kind\":\"estimate\",\"subjects\":[\"teak\"],\"text\":\"Dust.\"}]}",
                json.replaceAll("\\s", ""));
    }

    @Test
    void noObjectOfAFitHasAKeyTwice() throws IOException {
        try (JsonParser parser = new JsonFactory()
                .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
                .createParser(FitJson.of(InventedFit.walnut()))) {
            while (parser.nextToken() != null) {
                assertFalse(parser.isClosed());
            }
        }
    }
}
