package hafthold.cli;

import hafthold.report.Listing;
import java.io.PrintWriter;
import picocli.CommandLine.Option;

/** Prints a listing in the form asked for. */
final class ListingOutput {
    @Option(
            names = "--format",
            paramLabel = "FORM",
            defaultValue = "text",
            description = "${COMPLETION-CANDIDATES} (default: ${DEFAULT-VALUE})")
    private OutputFormat format;

    /** True where people read the result. */
    boolean isText() {
        return format == OutputFormat.TEXT;
    }

    void print(PrintWriter out, Listing listing) {
        out.print(
                switch (format) {
                    case TEXT -> listing.text();
                    case MARKDOWN -> listing.markdown();
                    case JSON -> listing.json();
                    case CSV -> listing.csv();
                });
    }
}
