package hafthold.cli;

import hafthold.report.BenchStyle;
import hafthold.report.LengthUnits;
import hafthold.report.Wording;
import hafthold.table.UnknownIdException;
import java.util.List;
import picocli.CommandLine.Option;

/** In which language and units an answer is written. */
final class StyleOptions {
    @Option(
            names = "--units",
            paramLabel = "UNITS",
            defaultValue = "mm",
            description = "mm, thou or both; json and csv stay with mm (default: ${DEFAULT-VALUE})")
    private LengthUnits units;

    @Option(
            names = "--language",
            paramLabel = "CODE",
            defaultValue = "en",
            description = "language of texts and pages, with its decimal mark; json and csv stay with the point"
                    + " (default: ${DEFAULT-VALUE}, the only one so far)")
    private String language;

    /** Both. */
    BenchStyle style() {
        return new BenchStyle(
                units,
                Wording.of(language)
                        .orElseThrow(() -> new UnknownIdException(
                                "language", language, List.of("en"), "a language is a file messages_CODE.properties")));
    }
}
