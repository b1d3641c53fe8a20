package hafthold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportFolderTest {
    @TempDir
    Path temp;

    @Test
    void makesTheFolderAndWritesEveryFile() throws IOException {
        Path folder = temp.resolve("reports/new");
        new ReportFolder(folder).write(Map.of("a.txt", "0.1 mm – flush\n", "b.json", "{}\n"));
        assertEquals("0.1 mm – flush\n", Files.readString(folder.resolve("a.txt")));
        assertEquals(List.of("a.txt", "b.json"), names(folder));
    }

    @Test
    void replacesAnOlderReportAndLeavesStrangersAlone() throws IOException {
        Files.writeString(temp.resolve("a.txt"), "old");
        Files.writeString(temp.resolve("notes.txt"), "mine");
        new ReportFolder(temp).write(Map.of("a.txt", "new"));
        assertEquals("new", Files.readString(temp.resolve("a.txt")));
        assertEquals("mine", Files.readString(temp.resolve("notes.txt")));
    }

    @Test
    void leavesTheOlderReportWholeWhenOneFileCannotBeWritten() throws IOException {
        Files.writeString(temp.resolve("a.txt"), "old");
        Files.createDirectory(temp.resolve("b.txt"));
        Map<String, String> files = new LinkedHashMap<>();
        files.put("a.txt", "new");
        files.put("b.txt", "new");
        IOException fault = assertThrows(IOException.class, () -> new ReportFolder(temp).write(files));
        assertTrue(fault.getMessage().contains(temp.toString()));
        assertEquals("old", Files.readString(temp.resolve("a.txt")));
        assertEquals(List.of("a.txt", "b.txt"), names(temp));
    }

    @Test
    void refusesNamesThatLeadOutOfTheFolder() {
        for (String name : List.of("../a.txt", "/a.txt", "a/b.txt", ".hidden", "")) {
            assertThrows(IllegalArgumentException.class, () -> new ReportFolder(temp).write(Map.of(name, "x")), name);
        }
        assertFalse(Files.exists(temp.resolve("../a.txt")));
    }

    @Test
    void takesAWholeComparison() throws IOException {
        Map<String, String> files = new ComparisonReport(
                        BenchStyle.ENGLISH, Optional.of("teak"), InventedComparison.limits(), "hafthold compare")
                .files(InventedComparison.glued());
        new ReportFolder(temp).write(files);
        assertEquals(
                List.of(
                        "comparison.csv",
                        "comparison.html",
                        "comparison.json",
                        "comparison.txt",
                        "edge-year.svg",
                        "humidity-year.svg",
                        "moisture-year.svg",
                        "ranking.svg",
                        "temperature-year.svg"),
                names(temp));
        assertTrue(Files.readString(temp.resolve("comparison.txt")).contains("Mind\n  - dust: sand with extraction"));
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
