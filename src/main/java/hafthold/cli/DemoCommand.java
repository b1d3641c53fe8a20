package hafthold.cli;

import hafthold.air.Setting;
import hafthold.decide.Comparison;
import hafthold.decide.EventComparison;
import hafthold.decide.PlaceComparison.Candidate;
import hafthold.knife.Handle;
import hafthold.knife.Workshop;
import hafthold.material.Axis;
import hafthold.material.Cut;
import hafthold.quantity.Length;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.report.BenchStyle;
import hafthold.report.CardOrder;
import hafthold.report.ComparisonText;
import hafthold.report.CustomerCard;
import hafthold.report.LengthUnits;
import hafthold.report.Wording;
import hafthold.simulate.Conditions;
import hafthold.simulate.Destination;
import hafthold.simulate.Sampling;
import hafthold.source.Finding;
import hafthold.source.Message;
import hafthold.table.FinishTable;
import hafthold.table.LimitTable;
import hafthold.table.MaterialLibrary;
import hafthold.table.PlaceTable;
import hafthold.table.TableSet;
import hafthold.table.UsualBuild;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The worked example: an invented order for the tropics. */
@Command(
        name = "demo",
        mixinStandardHelpOptions = true,
        description = "Works through an invented order for the tropics and writes its report.")
final class DemoCommand implements Runnable {
    private static final List<String> WOODS = List.of("walnut-black", "maple-sugar", "beech-european", "teak");
    private static final List<String> OTHERS = List.of(
            "walnut-black+lumen-resin",
            "maple-burl+lumen-resin",
            "hybrid-maple-burl-epoxy",
            "glass-epoxy-g10",
            "linen-phenolic-le",
            "carbon-epoxy-woven",
            "acrylic-cast",
            "antler-reindeer");

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            defaultValue = "reports/demo",
            description = "folder of the report (default: ${DEFAULT-VALUE})")
    private Path folder;

    @Override
    public void run() {
        TableSet tables = TableSet.builtIn();
        MaterialLibrary library = MaterialLibrary.read(tables);
        ComparisonRun run = new ComparisonRun(
                tables,
                order(tables, library),
                candidates(library),
                List.of(invented()),
                Optional.of(WOODS.get(0)),
                Sampling.USUAL);
        Comparison comparison = run.comparison();
        PrintWriter out = spec.commandLine().getOut();
        out.println(
                "An invented order: plain walnut is asked for, the knife goes to a home without cooling in Singapore.");
        out.println();
        out.print(new ComparisonText(BenchStyle.ENGLISH, run.named()).of(comparison));
        Path page = run.write(folder, EventComparison.quiet(comparison), BenchStyle.ENGLISH, "hafthold demo");
        spec.commandLine().getErr().println("report: " + page);
        Candidate asked = run.candidates().get(0);
        spec.commandLine()
                .getErr()
                .println("card: "
                        + CardCommand.write(card(run, library, List.of(asked)), folder, "card")
                        + ", "
                        + CardCommand.write(card(run, library, CardCommand.beside(asked, library)), folder, "quote"));
        run.warn(spec.commandLine().getErr(), BenchStyle.ENGLISH, comparison);
    }

    private static CustomerCard card(ComparisonRun run, MaterialLibrary library, List<Candidate> handles) {
        CardOrder order = new CardOrder(
                Optional.of("Ms Example (invented)"),
                Optional.empty(),
                Optional.of("kitchen knife"),
                Optional.empty(),
                Workshop.UNNAMED,
                LimitTable.read(run.tables()),
                LengthUnits.MM,
                Wording.english());
        return CardCommand.of(order, run.tables(), library, run.conditions(), handles);
    }

    private static Conditions order(TableSet tables, MaterialLibrary library) {
        return new Conditions(
                new Handle(
                        Length.ofMillimetres(110),
                        Length.ofMillimetres(26),
                        Length.ofMillimetres(8),
                        Length.ofMillimetres(6),
                        Length.ofMillimetres(0),
                        Length.ofMillimetres(70)),
                new Temperature(20),
                new RelativeHumidity(0.5),
                FinishTable.read(tables).find("bare"),
                Destination.of(
                        PlaceTable.read(tables).find("singapore"),
                        Setting.find("uncooled-home").orElseThrow()),
                library.plain(OrderOptions.USUAL_STEEL)
                        .thermalExpansionPerKelvin()
                        .get(Axis.ALONG),
                library.plain(OrderOptions.USUAL_PIN)
                        .thermalExpansionPerKelvin()
                        .get(Axis.ALONG),
                Optional.of(UsualBuild.bond(library)));
    }

    private static List<Candidate> candidates(MaterialLibrary library) {
        List<Candidate> candidates = new ArrayList<>();
        for (String wood : WOODS) {
            candidates.add(new Candidate(library.find(wood), Cut.FLAT));
            candidates.add(new Candidate(library.find(wood), Cut.QUARTER));
        }
        OTHERS.forEach(id ->
                candidates.add(new Candidate(library.find(id), library.find(id).usualCut())));
        return candidates;
    }

    private static Finding invented() {
        return new Finding(Finding.Kind.DEFAULT, "order", Message.of("note.invented"));
    }
}
