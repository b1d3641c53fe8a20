package hafthold.cli;

import hafthold.material.Hybrid;
import hafthold.material.Material;
import hafthold.material.Property;
import hafthold.material.ScaleMaterial;
import hafthold.report.Listing;
import hafthold.source.Figure;
import hafthold.table.CautionTable;
import hafthold.table.FinishTable;
import hafthold.table.MaterialLibrary;
import hafthold.table.MaterialRow;
import hafthold.table.TableSet;
import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists materials, or shows the sheet of one. */
@Command(
        name = "materials",
        mixinStandardHelpOptions = true,
        description = {
            "Lists the materials on the rack, or shows the sheet of one with the source of every figure.",
            "Any wood takes any treatment: walnut-black+lumen-resin."
        })
final class MaterialsCommand implements Runnable {
    @Spec
    private CommandSpec spec;

    @Mixin
    private TableOptions tables;

    @Mixin
    private ListingOutput output;

    @Option(names = "--role", paramLabel = "ROLE", defaultValue = "scale", description = "scale, steel, pin or liner")
    private String role;

    @Option(names = "--finishes", description = "list finishes instead")
    private boolean finishes;

    @Parameters(arity = "0..1", paramLabel = "MATERIAL", description = "id of one material")
    private String id;

    @Override
    public void run() {
        TableSet set = tables.open();
        PrintWriter out = spec.commandLine().getOut();
        if (finishes) {
            output.print(out, finishes(FinishTable.read(set)));
            return;
        }
        MaterialLibrary library = MaterialLibrary.read(set);
        if (id == null) {
            output.print(out, list(library));
            return;
        }
        ScaleMaterial material = library.find(id);
        if (output.isText()) {
            heading(out, material, library.rows());
        }
        output.print(out, figures(material));
        if (output.isText()) {
            remarks(out, material, CautionTable.read(set));
        }
    }

    private Listing list(MaterialLibrary library) {
        Listing.Builder listing = Listing.of("materials", "id", "name", "family", "evidence");
        for (MaterialRow row : library.listed(role)) {
            ScaleMaterial material = library.find(row.id());
            listing.row(
                    row.id(),
                    row.name(),
                    row.family().word(),
                    material.evidence().grade());
        }
        return listing.build();
    }

    private static Listing finishes(FinishTable table) {
        Listing.Builder listing = Listing.of("finishes", "id", "name", "coats", "resistance_1e9_m2spa_kg", "evidence");
        table.all()
                .forEach(finish -> listing.row(
                        finish.id(),
                        finish.name(),
                        finish.coats(),
                        finish.resistance().value() / 1e9,
                        finish.resistance().evidence().word()));
        return listing.build();
    }

    private static void heading(PrintWriter out, ScaleMaterial material, List<MaterialRow> rows) {
        out.println(material.name() + " (" + material.id() + "), "
                + material.family().word() + ", " + material.evidence().grade());
        rows.stream().filter(row -> row.id().equals(material.id())).forEach(row -> {
            out.println(row.detail());
            if (!row.note().isEmpty()) {
                out.println("Note: " + row.note());
            }
        });
        out.println();
    }

    private static Listing figures(ScaleMaterial material) {
        Listing.Builder listing = Listing.of(
                "figures", "of", "property", "axis", "low", "value", "high", "unit", "evidence", "source", "locator");
        for (Material part : parts(material)) {
            part.sheet().figures().forEach((entry, figure) -> {
                Property property = entry.property();
                listing.row(
                        part.id(),
                        property.word(),
                        entry.axis().word(),
                        inTableUnit(figure.band().low(), property),
                        inTableUnit(figure.value(), property),
                        inTableUnit(figure.band().high(), property),
                        property.unit(),
                        figure.evidence().word(),
                        figure.sourceKey(),
                        locator(figure));
            });
        }
        return listing.build();
    }

    private static List<Material> parts(ScaleMaterial material) {
        return material instanceof Hybrid hybrid
                ? hybrid.parts().stream().map(Hybrid.Part::material).toList()
                : List.of((Material) material);
    }

    private static String locator(Figure figure) {
        return figure.locator().isEmpty() ? "-" : figure.locator();
    }

    /** Back from SI to the unit of the table, without the dust that the two conversions leave. */
    private static double inTableUnit(double si, Property property) {
        double value = si / property.toSi();
        return Double.parseDouble(String.format(java.util.Locale.ROOT, "%.9g", value));
    }

    private static void remarks(PrintWriter out, ScaleMaterial material, CautionTable cautions) {
        out.println();
        material.findings().forEach(finding -> out.println("Estimated: " + finding.text()));
        cautions.about(material).forEach(caution -> out.println("Caution: " + caution.text()));
    }
}
