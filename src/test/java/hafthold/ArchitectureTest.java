package hafthold;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.plantuml.rules.PlantUmlArchCondition.Configuration.consideringOnlyDependenciesInDiagram;
import static com.tngtech.archunit.library.plantuml.rules.PlantUmlArchCondition.adhereToPlantUmlDiagram;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.nio.file.Path;

/** The package drawing in src/site/architecture.puml is the law. */
@AnalyzeClasses(packages = "hafthold", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    @ArchTest
    static final ArchRule packagesUseOnlyWhatTheDrawingAllows = classes()
            .should(adhereToPlantUmlDiagram(
                    Path.of("src", "site", "architecture.puml"), consideringOnlyDependenciesInDiagram()));

    @ArchTest
    static final ArchRule onlyTheCommandLineKnowsPicocli = noClasses()
            .that()
            .resideOutsideOfPackage("hafthold.cli..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("picocli..");

    @ArchTest
    static final ArchRule onlyChartsKnowXchart = noClasses()
            .that()
            .resideOutsideOfPackage("hafthold.report.chart..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.knowm.xchart..", "java.awt..");

    @ArchTest
    static final ArchRule onlyTablesKnowCsvAndToml = noClasses()
            .that()
            .resideOutsideOfPackages("hafthold.table..", "hafthold.report..", "hafthold.cli..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("de.siegmar.fastcsv..", "org.tomlj..");
}
