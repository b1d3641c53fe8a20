package hafthold.cli;

import hafthold.air.EventSchedule;
import hafthold.air.HeatedHome;
import hafthold.air.Setting;
import hafthold.decide.EventFit;
import hafthold.decide.KnifeFit;
import hafthold.decide.KnifeJudge;
import hafthold.decide.Offer;
import hafthold.decide.Verdict;
import hafthold.knife.FullTangKnife;
import hafthold.knife.Knife;
import hafthold.knife.TangStackKnife;
import hafthold.material.Family;
import hafthold.material.Material;
import hafthold.material.ScaleMaterial;
import hafthold.report.BenchStyle;
import hafthold.report.CautionLines;
import hafthold.report.FitJson;
import hafthold.report.FitMarkdown;
import hafthold.report.FitReport;
import hafthold.report.FitText;
import hafthold.simulate.Destination;
import hafthold.source.Finding;
import hafthold.source.Message;
import hafthold.table.BuildFile;
import hafthold.table.CautionTable;
import hafthold.table.HourlyFile;
import hafthold.table.KnifeFile;
import hafthold.table.LimitTable;
import hafthold.table.MaterialLibrary;
import hafthold.table.PlaceTable;
import hafthold.table.TableSet;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Checks one knife in one place. */
@Command(
        name = "fit",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description =
                "Checks one knife, described in a file, in the place it goes to: edges, pins, glue, ends, and what"
                        + " to change.")
final class FitCommand implements Callable<Integer> {
    private static final List<String> TREATMENTS = List.of("lumen-resin", "cell-wall-resin");
    private static final List<String> STEADY = List.of("glass-epoxy-g10", "linen-phenolic-le");
    private static final List<String> ADHESIVES = List.of("epoxy-toughened", "polyurethane-glue");

    @Spec
    private CommandSpec spec;

    @Parameters(
            arity = "0..1",
            paramLabel = "FILE",
            description = "the knife, as a TOML file; --example prints one to start from")
    private Path file;

    @Option(
            names = "--example",
            arity = "0..1",
            paramLabel = "BUILD",
            fallbackValue = "full-tang",
            description = "prints a commented file that this command accepts: full-tang (usual) or stack")
    private String example;

    @Mixin
    private WhereOptions where;

    @Mixin
    private SamplingOptions sampling;

    @Mixin
    private EventOptions events;

    @Mixin
    private TableOptions tables;

    @Mixin
    private StyleOptions styles;

    @Mixin
    private OutputOptions output;

    @Option(names = "--check", description = "exit with 4 when the verdict is change or refuse")
    private boolean check;

    @Override
    public Integer call() {
        if (example != null) {
            spec.commandLine().getOut().print(exampleText());
            return ExitCode.DONE;
        }
        if (file == null) {
            throw new WrongUsageException(
                    "which knife? Name its file; 'hafthold fit --example' prints one to start from");
        }
        OutputFormat form = output.form("fit", OutputFormat.TEXT, OutputFormat.MARKDOWN, OutputFormat.JSON);
        BenchStyle style = styles.style();
        TableSet set = tables.open();
        // The library is the longer read; a fault of the knife's own file is told first all the same.
        CompletableFuture<MaterialLibrary> shelf = CompletableFuture.supplyAsync(() -> MaterialLibrary.read(set));
        BuildFile build = BuildFile.read(file);
        MaterialLibrary library = of(shelf);
        KnifeFile read = KnifeFile.of(build, file, set, library, where.reading());
        List<Finding> findings = new ArrayList<>(read.findings());
        Destination destination = destination(where, read, set, findings);
        findings.addAll(FitFindings.of(
                read.knife(), destination, !events.schedule(set, destination).isEmpty()));
        findings.add(SamplingOptions.finding(sampling.sampling()));
        EventFit answer = answer(read.knife(), destination, set, library, findings);
        KnifeFit fit = answer.fit();
        spec.commandLine()
                .getOut()
                .print(
                        switch (form) {
                            case MARKDOWN -> FitMarkdown.of(answer, style);
                            case JSON -> FitJson.of(answer);
                            case TEXT, CSV -> new FitText(style).of(answer);
                        });
        List<Finding> cautions = CautionTable.read(set).with(FitFindings.materials(read.knife()));
        output.report(
                spec.commandLine().getErr(),
                FitReport.PAGE,
                () -> new FitReport(
                                style,
                                LimitTable.read(set),
                                cautions,
                                FileOptions.text(file),
                                TypedCommand.of(spec.commandLine().getParseResult(), where.stays()))
                        .files(answer));
        List<Finding> minded = new ArrayList<>(EventOptions.cautions(events.schedule(set, destination)));
        minded.addAll(cautions);
        CautionLines.of(style, minded, FitFindings.materials(read.knife()))
                .forEach(spec.commandLine().getErr()::println);
        boolean adverse = fit.verdict() == Verdict.CHANGE || fit.verdict() == Verdict.REFUSE;
        return check && adverse ? ExitCode.ADVERSE_VERDICT : ExitCode.DONE;
    }

    private EventFit answer(
            Knife knife, Destination destination, TableSet set, MaterialLibrary library, List<Finding> findings) {
        EventSchedule schedule = events.schedule(set, destination);
        EventOptions.requireOnePlace(schedule, destination);
        KnifeJudge judge = new KnifeJudge(LimitTable.read(set), offer(knife, library), sampling.sampling());
        if (schedule.isEmpty()) {
            return EventFit.quiet(judge.fit(knife, destination, findings));
        }
        if (knife instanceof FullTangKnife full) {
            findings.addAll(EventOptions.findings(schedule));
            return judge.fit(full, destination, schedule, findings);
        }
        throw new WrongUsageException("events are worked out for full-tang knives; for the parts of a stack ask"
                + " 'hafthold compare --place PLACE --material PART,PART --event ...'");
    }

    private static MaterialLibrary of(CompletableFuture<MaterialLibrary> shelf) {
        try {
            return shelf.join();
        } catch (CompletionException e) {
            throw e.getCause() instanceof RuntimeException fault ? fault : e;
        }
    }

    private String exampleText() {
        return switch (example) {
            case "full-tang" -> BuildFile.example();
            case "stack", "tang-stack" -> BuildFile.stackExample();
            default -> throw new WrongUsageException("no example '" + example + "'; there are full-tang and stack");
        };
    }

    /** Where a knife lives: as the options say, else as its file does. */
    static Destination destination(WhereOptions where, KnifeFile read, TableSet set, List<Finding> findings) {
        Supplier<Setting> usual = () -> settingOf(read, findings);
        Optional<Destination> named =
                where.destination(PlaceTable.read(set), usual, read.setting().isPresent());
        findings.addAll(where.findings());
        if (named.isPresent()) {
            return named.get();
        }
        if (read.place().isPresent()) {
            return Destination.of(read.place().get(), where.lives(usual));
        }
        HourlyFile recorded = read.climate()
                .orElseThrow(
                        () -> new WrongUsageException("where does the knife go? The file names no place: add place ="
                                + " \"...\" under [knife], or give --place or --climate"));
        findings.addAll(recorded.findings());
        return WhereOptions.recorded(recorded, where.lives(usual));
    }

    private static Setting settingOf(KnifeFile read, List<Finding> findings) {
        return read.setting().orElseGet(() -> {
            findings.add(new Finding(
                    Finding.Kind.DEFAULT,
                    "knife.setting",
                    Message.of(
                            "note.silent",
                            Map.of(
                                    "what", Message.of("build-file.knife.setting"),
                                    "taken", Message.verbatim(WhereOptions.USUAL_SETTING)))));
            return HeatedHome.usual();
        });
    }

    /** What the shop could use instead: the same wood treated, sheet that stands still, glues that give. */
    private static Offer offer(Knife knife, MaterialLibrary library) {
        List<ScaleMaterial> scales = new ArrayList<>();
        List<ScaleMaterial> woods =
                knife instanceof FullTangKnife full ? List.of(full.scale()) : ((TangStackKnife) knife).parts();
        woods.stream()
                .filter(wood -> wood.family() == Family.WOOD)
                .map(ScaleMaterial::id)
                .distinct()
                .flatMap(id -> TREATMENTS.stream().map(treatment -> library.find(id + "+" + treatment)))
                .forEach(scales::add);
        STEADY.forEach(id -> scales.add(library.find(id)));
        List<Material> adhesives = ADHESIVES.stream().map(library::plain).toList();
        return new Offer(scales, adhesives);
    }
}
