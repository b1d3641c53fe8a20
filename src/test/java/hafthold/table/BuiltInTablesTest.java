package hafthold.table;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.Place;
import hafthold.material.Hybrid;
import hafthold.material.Material;
import hafthold.material.ScaleMaterial;
import hafthold.report.BenchStyle;
import hafthold.source.Source;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The shipped tables are whole: every row can be computed with, every figure names a source. */
class BuiltInTablesTest {
    private static final TableSet TABLES = TableSet.builtIn();
    private static final MaterialLibrary LIBRARY = MaterialLibrary.read(TABLES);
    private static final Map<String, Source> SOURCES = SourceTable.read(TABLES);

    @Test
    void everyListedMaterialCanBeComposed() {
        assertAll(LIBRARY.rows().stream()
                .filter(row -> !row.role().equals("adhesive"))
                .map(row -> () -> assertFalse(LIBRARY.find(row.id()).name().isBlank(), row.id())));
    }

    @Test
    void everyFigureNamesAKnownSource() {
        assertAll(LIBRARY.rows().stream()
                .filter(row -> !row.role().equals("adhesive"))
                .flatMap(row -> parts(LIBRARY.find(row.id())).stream())
                .flatMap(material -> material.sheet().figures().values().stream())
                .distinct()
                .map(figure -> () -> assertTrue(SOURCES.containsKey(figure.sourceKey()), figure.sourceKey())));
    }

    @Test
    void allHundredAndSeventyPlacesAreReadWithKnownSources() {
        List<Place> places = PlaceTable.read(TABLES).all();
        assertEquals(170, places.size());
        assertAll(places.stream()
                .map(place -> () -> assertTrue(
                        SOURCES.containsKey(place.temperatureSourceKey())
                                && SOURCES.containsKey(place.humiditySourceKey()),
                        place.id())));
    }

    @Test
    void fourClassesOfWorkAreListedStrictestFirst() {
        assertEquals(
                List.of("show-piece", "good-new", "seasonal", "retouch"),
                LimitTable.read(TABLES).stream().map(limits -> limits.name()).toList());
    }

    @Test
    void cautionsSpeakOfKnownFamiliesOrMaterials() {
        assertFalse(CautionTable.read(TABLES).with(List.of()).isEmpty());
        assertFalse(CautionTable.read(TABLES).about(LIBRARY.find("bone-bovine")).isEmpty());
    }

    /** Free-cutting brass holds 2.5 to 3.5 % lead (common practice, from memory of its standard); cartridge brass none. */
    @Test
    void leadAndNickelAreSaidOfWhatHoldsThem() {
        assertTrue(minded("brass-free-cutting").contains("lead"));
        assertFalse(minded("brass-cartridge").contains("lead"));
        for (String metal : List.of("nickel-silver", "stainless-pin-304", "meteorite-iron")) {
            assertTrue(minded(metal).contains("nickel"), metal);
        }
        for (String metal : List.of("brass-free-cutting", "steel-carbon", "titanium-pure", "aluminium")) {
            assertFalse(minded(metal).contains("nickel"), metal);
            assertFalse(minded(metal).contains("beryllium"), metal);
        }
    }

    private static String minded(String id) {
        return CautionTable.read(TABLES).about(LIBRARY.find(id)).stream()
                .map(finding -> BenchStyle.ENGLISH.tell(finding.message()))
                .collect(Collectors.joining(" "));
    }

    @Test
    void anySpeciesTakesAnyTreatment() {
        ScaleMaterial treated = LIBRARY.find("teak+lumen-resin");
        assertEquals("teak+lumen-resin", treated.id());
        assertEquals("treated-wood", treated.family().word());
    }

    private static List<Material> parts(ScaleMaterial material) {
        return material instanceof Hybrid hybrid
                ? hybrid.parts().stream().map(Hybrid.Part::material).toList()
                : List.of((Material) material);
    }
}
