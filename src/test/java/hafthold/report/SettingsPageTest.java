package hafthold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.Setting;
import hafthold.source.Message;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The page on settings tells what the program does. */
class SettingsPageTest {
    private static final Path PAGE = Path.of("src/site/markdown/settings.md");

    @Test
    void everySettingHasItsRuleAndItsGroundOnThePage() throws IOException {
        String page = String.join(" ", Files.readAllLines(PAGE));
        for (Setting setting : Setting.all()) {
            assertTrue(page.contains("`" + setting.id() + "`"), setting.id());
            for (Message told : List.of(setting.rule(), setting.basis())) {
                String words = BenchStyle.ENGLISH.tell(told);
                assertTrue(page.contains(words), words);
            }
        }
    }

    @Test
    void theTableOfIndoorYearsIsWhatTheSettingsGive() throws IOException {
        List<String> rows = Files.readAllLines(PAGE).stream()
                .filter(line -> line.startsWith("| ") && line.contains(" / "))
                .filter(line -> !line.contains("min / mean / max"))
                .toList();
        assertEquals(SettingPictures.table(), rows);
    }

    @Test
    void everyPictureOnThePageIsThere() throws IOException {
        Matcher picture = Pattern.compile("\\]\\((\\.\\./images/[^)]+)\\)").matcher(Files.readString(PAGE));
        int count = 0;
        while (picture.find()) {
            assertTrue(Files.exists(PAGE.getParent().resolve(picture.group(1))), picture.group(1));
            count++;
        }
        assertEquals(16, count);
    }
}
