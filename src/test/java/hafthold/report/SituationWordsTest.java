package hafthold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.HeatedHome;
import hafthold.decide.Comparison;
import hafthold.simulate.Destination;
import hafthold.table.PlaceTable;
import hafthold.table.TableSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Where a knife lives is told by its air first, by the rule after. */
class SituationWordsTest {
    private static final SituationWords WORDS = new SituationWords(BenchStyle.ENGLISH);

    @Test
    void theAirComesBeforeTheRule() {
        Comparison comparison = InventedComparison.glued();
        String lives = WORDS.lives(comparison);
        Matcher air = Pattern.compile(
                        "heated home, (\\d+ to \\d+|\\d+) \u00b0C, (\\d+) to (\\d+) % humidity through the year\\. .+")
                .matcher(Paragraph.plain(lives));
        assertTrue(air.matches(), lives);
        MonthlyMeans humidity = MonthlyMeans.of(comparison.dailyIndoors().stream()
                .map(day -> 100 * day.relativeHumidityFraction())
                .toList());
        assertEquals(humidity.of(humidity.lowestMonth()), Double.parseDouble(air.group(2)), 0.5);
        assertEquals(humidity.of(humidity.highestMonth()), Double.parseDouble(air.group(3)), 0.5);
        assertTrue(lives.endsWith(BenchStyle.ENGLISH.tell(comparison.settingRule())), lives);
    }

    @Test
    void aKnifeTellsItLikewise() {
        Destination oslo = Destination.of(PlaceTable.read(TableSet.builtIn()).find("oslo"), HeatedHome.usual());
        String lives = WORDS.lives(oslo);
        assertTrue(lives.contains("% humidity through the year. "), lives);
        assertTrue(lives.endsWith(BenchStyle.ENGLISH.tell(oslo.lives())), lives);
    }
}
