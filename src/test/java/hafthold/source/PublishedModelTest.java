package hafthold.source;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import hafthold.table.SourceTable;
import hafthold.table.SourceUse;
import hafthold.table.TableSet;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Every class that computes a published equation names a source that the table of sources knows. */
class PublishedModelTest {
    private static final JavaClasses CODE = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("hafthold");

    @Test
    void everyCitedSourceIsInTheTable() {
        Map<String, Source> sources = SourceTable.read(TableSet.builtIn());
        assertAll(CODE.stream()
                .filter(type -> type.isAnnotatedWith(PublishedModel.class))
                .map(type -> () -> assertTrue(
                        sources.containsKey(citation(type).source()),
                        type.getName() + " cites unknown source "
                                + citation(type).source())));
    }

    @Test
    void everySourceInTheTableIsUsedByAFigureOrAModel() {
        TableSet tables = TableSet.builtIn();
        Set<String> used = new HashSet<>(SourceUse.read(tables).keySet());
        CODE.stream()
                .filter(type -> type.isAnnotatedWith(PublishedModel.class))
                .forEach(type -> used.add(citation(type).source()));
        assertAll(SourceTable.read(tables).keySet().stream()
                .map(key -> () -> assertTrue(used.contains(key), key + " is used by nothing")));
    }

    @Test
    void everyCitationSaysWhereInTheSourceAndHowFarItHolds() {
        assertFalse(CODE.stream().noneMatch(type -> type.isAnnotatedWith(PublishedModel.class)));
        assertAll(CODE.stream()
                .filter(type -> type.isAnnotatedWith(PublishedModel.class))
                .map(type -> () -> assertFalse(
                        citation(type).locator().isBlank()
                                || citation(type).validity().isBlank(),
                        type.getName())));
    }

    private static PublishedModel citation(JavaClass type) {
        return type.getAnnotationOfType(PublishedModel.class);
    }
}
