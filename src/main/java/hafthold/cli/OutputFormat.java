package hafthold.cli;

import java.util.Locale;

/** Forms of a result on standard output. */
enum OutputFormat {
    TEXT,
    MARKDOWN,
    JSON,
    CSV;

    /** The word on the command line. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
