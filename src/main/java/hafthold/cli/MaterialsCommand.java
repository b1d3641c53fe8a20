package hafthold.cli;

import hafthold.material.Axis;
import hafthold.material.Hybrid;
import hafthold.material.Material;
import hafthold.material.Property;
import hafthold.material.PropertySheet.Entry;
import hafthold.material.ScaleMaterial;
import hafthold.report.BenchStyle;
import hafthold.report.Listing;
import hafthold.report.WorthMeasuring;
import hafthold.simulate.BurlGrain;
import hafthold.source.Figure;
import hafthold.table.AlternativeTable;
import hafthold.table.AlternativeTable.Alternative;
import hafthold.table.CautionTable;
import hafthold.table.EventTable;
import hafthold.table.FinishTable;
import hafthold.table.MaterialLibrary;
import hafthold.table.MaterialRow;
import hafthold.table.TableSet;
import hafthold.table.Treatment;
import hafthold.table.UnknownIdException;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
            "Any wood takes any treatment: walnut-black+lumen-resin. A wood that no table has is shown under its"
                    + " nearest class, or under the one you name: tropical-dense:bloodwood."
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

    @Option(names = "--events", description = "list what --event knows instead, each with its rule")
    private boolean events;

    @Parameters(
            arity = "0..1",
            paramLabel = "MATERIAL",
            description = "id of one material, or a part of ids, such as oak")
    private String id;

    @Override
    public void run() {
        TableSet set = tables.open();
        PrintWriter out = spec.commandLine().getOut();
        if (finishes) {
            output.print(out, finishes(FinishTable.read(set)));
            return;
        }
        if (events) {
            output.print(out, events(EventTable.read(set)));
            return;
        }
        MaterialLibrary library = MaterialLibrary.read(set);
        if (id == null) {
            output.print(out, list(library, library.listed(role)));
            return;
        }
        if (!idsLike(library).isEmpty() && library.row(id).isEmpty() && !isFound(library)) {
            output.print(out, list(library, idsLike(library)));
            return;
        }
        ScaleMaterial material = library.find(id);
        if (output.isText()) {
            heading(out, material, library.rows());
        }
        List<Alternative> notChosen = notChosen(AlternativeTable.read(set), material);
        output.print(out, figures(material, library.treatmentOf(material.id()), notChosen));
        if (output.isText()) {
            remarks(out, material, notChosen, CautionTable.read(set));
        }
    }

    /** Rows whose id holds what was typed, such as all oaks. */
    private List<MaterialRow> idsLike(MaterialLibrary library) {
        String typed = id.strip().toLowerCase(Locale.ROOT).replace(' ', '-');
        return typed.isEmpty()
                ? List.of()
                : library.rows().stream()
                        .filter(row -> row.id().contains(typed))
                        .toList();
    }

    private boolean isFound(MaterialLibrary library) {
        try {
            library.find(id);
            return true;
        } catch (UnknownIdException e) {
            return false;
        }
    }

    private static Listing list(MaterialLibrary library, List<MaterialRow> rows) {
        Listing.Builder listing = Listing.of("materials", "id", "name", "family", "evidence");
        for (MaterialRow row : rows) {
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

    private static Listing events(EventTable table) {
        Listing.Builder listing = Listing.of("events", "id", "name", "hours", "rule");
        table.all()
                .forEach(event -> listing.row(
                        event.id(),
                        BenchStyle.ENGLISH.tell(event.name()),
                        Math.round(10 * event.seconds() / 3600) / 10.0,
                        BenchStyle.ENGLISH.tell(event.finding().message())));
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

    private static Listing figures(ScaleMaterial material, Optional<Treatment> treatment, List<Alternative> notChosen) {
        Listing.Builder listing = Listing.of(
                "figures",
                "of",
                "property",
                "axis",
                "low",
                "value",
                "high",
                "unit",
                "evidence",
                "source",
                "locator",
                "chosen");
        for (Material part : parts(material)) {
            part.sheet().figures().forEach((entry, figure) -> row(listing, part.id(), entry, figure, "yes"));
        }
        treatment.ifPresent(made -> made.figures()
                .forEach((property, figure) -> listing.row(
                        made.id(),
                        property.word(),
                        Axis.ANY.word(),
                        inTableUnit(figure.band().low(), property.toSi()),
                        inTableUnit(figure.value(), property.toSi()),
                        inTableUnit(figure.band().high(), property.toSi()),
                        property.unit(),
                        figure.evidence().word(),
                        figure.sourceKey(),
                        locator(figure),
                        "yes")));
        notChosen.forEach(other -> row(listing, other.material(), other.entry(), other.figure(), "no"));
        return listing.build();
    }

    private static void row(Listing.Builder listing, String of, Entry entry, Figure figure, String chosen) {
        Property property = entry.property();
        listing.row(
                of,
                property.word(),
                entry.axis().word(),
                inTableUnit(figure.band().low(), property.toSi()),
                inTableUnit(figure.value(), property.toSi()),
                inTableUnit(figure.band().high(), property.toSi()),
                property.unit(),
                figure.evidence().word(),
                figure.sourceKey(),
                locator(figure),
                chosen);
    }

    /** What other sources say of the same figures: of a material's own, and of a class where it was borrowed from. */
    private static List<Alternative> notChosen(List<Alternative> all, ScaleMaterial material) {
        return all.stream()
                .filter(other -> parts(material).stream().anyMatch(part -> concerns(other, part)))
                .toList();
    }

    private static boolean concerns(Alternative other, Material material) {
        String plain = material.id().replaceAll("\\+.*", "");
        return other.material().equals(plain)
                || material.sheet()
                        .figure(other.entry().property(), other.entry().axis())
                        .filter(figure -> (figure.locator() + ":").startsWith("as " + other.material() + ":"))
                        .isPresent();
    }

    private static List<Material> parts(ScaleMaterial material) {
        return material instanceof Hybrid hybrid
                ? hybrid.parts().stream().map(Hybrid.Part::material).toList()
                : List.of((Material) material);
    }

    private static String locator(Figure figure) {
        return figure.locator().isEmpty() ? "-" : figure.locator();
    }

    /** Back from SI to the unit of the table, to more digits than any figure is known to. */
    private static double inTableUnit(double si, double toSi) {
        return Double.parseDouble(String.format(Locale.ROOT, "%.5g", si / toSi));
    }

    private static void remarks(
            PrintWriter out, ScaleMaterial material, List<Alternative> notChosen, CautionTable cautions) {
        out.println();
        notChosen.forEach(other -> out.println("Not chosen: " + other.material() + " "
                + other.entry().property().word() + " " + other.entry().axis().word() + " "
                + BigDecimal.valueOf(inTableUnit(
                                other.figure().value(), other.entry().property().toSi()))
                        .stripTrailingZeros()
                        .toPlainString()
                + " "
                + other.entry().property().unit() + " (" + other.figure().sourceKey() + "): " + other.whyNot() + "."));
        material.findings().forEach(finding -> out.println("Estimated: " + BenchStyle.ENGLISH.tell(finding.message())));
        for (Material part : parts(material)) {
            BurlGrain.finding(part, part.usualCut())
                    .ifPresent(finding -> out.println("Estimated: " + BenchStyle.ENGLISH.tell(finding.message())));
            WorthMeasuring.of(part).forEach(line -> out.println("To do better, " + part.name() + ": " + line + "."));
        }
        cautions.about(material)
                .forEach(caution -> out.println("Caution: " + BenchStyle.ENGLISH.tell(caution.message())));
    }
}
