package hafthold.report;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.regex.Pattern;

/**
 * A folder that reports are written to. All files of a report are first written in full beside their places, under
 * names of their own, and only then moved there: a run that fails leaves the report before it as it was.
 *
 * @param path the folder; made where it does not exist
 */
public record ReportFolder(Path path) {
    private static final Pattern FILE_NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]*");

    /** Text that is written as it comes, for what is too long to hold. */
    interface Body {
        /** Writes all of it. */
        void writeTo(Writer writer) throws IOException;
    }

    /**
     * Writes a report.
     *
     * @param files text by file name, written as UTF-8 and moved into place in this order
     * @throws IllegalArgumentException when a name is more than a plain file name
     * @throws IOException when a file cannot be written; the message names the folder
     */
    public void write(Map<String, String> files) throws IOException {
        Map<String, Body> bodies = new LinkedHashMap<>();
        files.forEach((name, text) -> bodies.put(name, writer -> writer.write(text)));
        writeAll(bodies);
    }

    /**
     * Likewise, text as it comes. A user who stops the program meanwhile waits until every file is in its place: of a
     * report there is all or nothing.
     */
    void writeAll(Map<String, Body> files) throws IOException {
        for (String name : files.keySet()) {
            if (!FILE_NAME.matcher(name).matches()) {
                throw new IllegalArgumentException(
                        "'" + name + "' is no file name for a report; use letters, digits, points, dashes");
            }
        }
        CountDownLatch done = new CountDownLatch(1);
        Thread stop = new Thread(() -> awaited(done), "hafthold-report");
        try {
            Runtime.getRuntime().addShutdownHook(stop);
        } catch (IllegalStateException e) {
            throw new IOException("the report was not written to " + path + ": the program was being stopped", e);
        }
        try {
            writeBesideAndMove(files);
        } finally {
            done.countDown();
            removed(stop);
        }
    }

    private void writeBesideAndMove(Map<String, Body> files) throws IOException {
        Map<Path, Path> moves = new LinkedHashMap<>();
        try {
            Files.createDirectories(path);
            for (Map.Entry<String, Body> file : files.entrySet()) {
                Path target = path.resolve(file.getKey());
                Path draft = path.resolve(
                        "." + file.getKey() + "." + ProcessHandle.current().pid() + ".part");
                moves.put(draft, target);
                try (Writer writer = Files.newBufferedWriter(draft, StandardCharsets.UTF_8)) {
                    file.getValue().writeTo(writer);
                }
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

    private static void awaited(CountDownLatch done) {
        try {
            done.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static void removed(Thread stop) {
        try {
            Runtime.getRuntime().removeShutdownHook(stop);
        } catch (IllegalStateException e) {
            // The program is being stopped already; the hook has seen that the report is done.
            return;
        }
    }
}
