package hafthold.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * A folder that reports are written to. All files of a report are first written in full beside their places, under
 * names of their own, and only then moved there: a run that fails leaves the report before it as it was.
 *
 * @param path the folder; made where it does not exist
 */
public record ReportFolder(Path path) {
    private static final Pattern FILE_NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]*");

    /**
     * Writes a report.
     *
     * @param files text by file name, written as UTF-8 and moved into place in this order
     * @throws IllegalArgumentException when a name is more than a plain file name
     * @throws IOException when a file cannot be written; the message names the folder
     */
    public void write(Map<String, String> files) throws IOException {
        for (String name : files.keySet()) {
            if (!FILE_NAME.matcher(name).matches()) {
                throw new IllegalArgumentException(
                        "'" + name + "' is no file name for a report; use letters, digits, points, dashes");
            }
        }
        Map<Path, Path> moves = new LinkedHashMap<>();
        try {
            Files.createDirectories(path);
            for (Map.Entry<String, String> file : files.entrySet()) {
                Path target = path.resolve(file.getKey());
                Path draft = path.resolve(
                        "." + file.getKey() + "." + ProcessHandle.current().pid() + ".part");
                moves.put(draft, target);
                Files.writeString(draft, file.getValue(), StandardCharsets.UTF_8);
                if (Files.isDirectory(target)) {
                    throw new IOException(target + " is a folder, not a file");
                }
            }
            for (Map.Entry<Path, Path> move : moves.entrySet()) {
                Files.move(
                        move.getKey(),
                        move.getValue(),
                        StandardCopyOption.ATOMIC_MOVE,
                        StandardCopyOption.REPLACE_EXISTING);
            }
        } catch (IOException e) {
            throw new IOException("the report could not be written to " + path + ": " + e.getMessage(), e);
        } finally {
            for (Path draft : moves.keySet()) {
                Files.deleteIfExists(draft);
            }
        }
    }
}
