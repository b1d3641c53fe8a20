package hafthold.table;

import java.nio.file.Files;
import java.nio.file.Path;

/** Says the same of every file that cannot be had. */
final class FileAtHand {
    private FileAtHand() {}

    /**
     * Requires a file that can be read.
     *
     * @param expected what it should be, such as "a table of stays"
     * @throws InvalidTableException when there is none, or it cannot be read
     */
    static void require(Path path, String expected) {
        if (!Files.exists(path)) {
            throw new InvalidTableException(path.toString(), "is not there; expected " + expected);
        }
        if (!Files.isReadable(path)) {
            throw new InvalidTableException(path.toString(), "cannot be read; expected " + expected);
        }
    }
}
