package hafthold.table;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.material.Axis;
import hafthold.material.Cut;
import hafthold.material.Family;
import hafthold.material.Finish;
import hafthold.material.Property;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Everything that the rack is meant to hold is there and can be computed with. */
class CoverListTest {
    private static final TableSet TABLES = TableSet.builtIn();
    private static final MaterialLibrary LIBRARY = MaterialLibrary.read(TABLES);
    private static final Set<String> FINISHES =
            FinishTable.read(TABLES).all().stream().map(Finish::id).collect(Collectors.toSet());
    private static final Set<String> ROWS =
            LIBRARY.rows().stream().map(MaterialRow::id).collect(Collectors.toSet());
    private static final int LEAST_WOODS = 60;

    @Test
    void everyItemOfTheListIsThere() throws IOException {
        List<CsvRow> items = items();
        assertTrue(items.size() > 40, "items " + items.size());
        assertAll(items.stream()
                .flatMap(item -> Stream.of(item.required("ids").split(" "))
                        .map(id -> () ->
                                assertTrue(isThere(item.required("kind"), id), item.required("item") + ": " + id))));
    }

    @Test
    void sixtyWoodsAndMoreHaveShrinkageOfTheirOwn() {
        var sheets = SheetTable.read(TABLES);
        long woods = LIBRARY.listed("scale").stream()
                .filter(row -> row.family() == Family.WOOD && row.usualCut() != Cut.BURL)
                .filter(row -> sheets.containsKey(row.id())
                        && sheets.get(row.id()).keySet().stream()
                                .anyMatch(
                                        entry -> entry.property() == Property.SHRINKAGE && entry.axis() == Axis.ACROSS))
                .count();
        assertTrue(woods >= LEAST_WOODS, "woods " + woods);
    }

    /** A glue's strength in the warm follows from its strength at room temperature and where it softens. */
    @Test
    void everyAdhesiveSaysHowStrongItIsAndWhereItSoftens() {
        assertAll(LIBRARY.listed("adhesive").stream()
                .map(row -> LIBRARY.plain(row.id()).sheet())
                .map(sheet ->
                        () -> assertTrue(sheet.figure(Property.SHEAR_STRENGTH).isPresent()
                                && sheet.figure(Property.SOFTENING_TEMPERATURE).isPresent())));
    }

    private static boolean isThere(String kind, String id) {
        return switch (kind) {
            case "material" ->
                (ROWS.contains(id) || id.contains("+"))
                        && !LIBRARY.find(id).name().isBlank();
            case "name" -> !ROWS.contains(id) && !LIBRARY.find(id).name().isBlank();
            case "treatment" -> LIBRARY.treatments().containsKey(id);
            case "finish" -> FINISHES.contains(id);
            case "cut" -> Cut.ofWord(id).isPresent();
            default -> throw new IllegalArgumentException(kind);
        };
    }

    private static List<CsvRow> items() throws IOException {
        try (var list = CoverListTest.class.getResourceAsStream("/hafthold/table/cover-list.csv")) {
            return CsvTable.read(
                            "cover-list.csv",
                            new InputStreamReader(list, StandardCharsets.UTF_8),
                            List.of("item", "kind", "ids"))
                    .rows();
        }
    }
}
