package hafthold.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.Setting;
import hafthold.knife.FitLimits;
import hafthold.knife.KnifeBuild;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the defaults and the examples name must be in the shipped tables, or the first try of a user fails. */
class BuildFileIdsTest {
    private final TableSet tables = TableSet.builtIn();
    private final MaterialLibrary library = MaterialLibrary.read(tables);

    @Test
    void everyIdOfTheExamplesIsInTheTables() {
        for (String text : List.of(BuildFile.example(), BuildFile.stackExample())) {
            KnifeBuild build =
                    BuildFile.parse("example.toml", text, Path.of(".")).build();
            build.materialIds().forEach(id -> assertEquals(id, library.find(id).id()));
            String place = build.order().placeId().orElseThrow();
            assertEquals(place, PlaceTable.read(tables).find(place).id());
            assertTrue(Setting.find(build.order().settingId().orElseThrow()).isPresent());
            assertFinishAndClass(build.finishId(), build.order().workClass());
        }
    }

    @Test
    void everyIdTakenByDefaultIsInTheTables() {
        assertEquals(4, UsualBuild.materialIds().size());
        UsualBuild.materialIds().forEach(id -> assertEquals(id, library.find(id).id()));
        assertFinishAndClass(UsualBuild.finishId(), UsualBuild.workClass());
    }

    private void assertFinishAndClass(String finish, String workClass) {
        assertEquals(finish, FinishTable.read(tables).find(finish).id());
        assertTrue(LimitTable.read(tables).stream().map(FitLimits::name).anyMatch(workClass::equals), workClass);
    }
}
