package hafthold.cli;

import hafthold.air.Event;
import hafthold.air.EventPhase;
import hafthold.air.StayChain;
import hafthold.decide.Claim;
import hafthold.decide.ClaimJudge;
import hafthold.decide.ClaimVerdict;
import hafthold.knife.FullTangKnife;
import hafthold.knife.KnifeHistory;
import hafthold.knife.UnfitBuildException;
import hafthold.report.BenchStyle;
import hafthold.report.CautionLines;
import hafthold.report.ClaimCsv;
import hafthold.report.ClaimJson;
import hafthold.report.ClaimMarkdown;
import hafthold.report.ClaimReport;
import hafthold.report.ClaimText;
import hafthold.simulate.Destination;
import hafthold.simulate.Sampling;
import hafthold.source.Finding;
import hafthold.table.CautionTable;
import hafthold.table.ClaimFile;
import hafthold.table.EventTable;
import hafthold.table.KnifeFile;
import hafthold.table.LimitTable;
import hafthold.table.MaterialLibrary;
import hafthold.table.TableSet;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Judges a returned knife. */
@Command(
        name = "claim",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description =
                "Judges a returned knife with a full tang, described in a file with what was measured on it: the maker, the customer,"
                        + " or the weather; what comes back by itself, and when to true it up.")
final class ClaimCommand implements Callable<Integer> {
    private static final int USUAL_SAMPLES = 400;

    @Spec
    private CommandSpec spec;

    @Mixin
    private FileOptions files;

    @Mixin
    private WhereOptions where;

    @Mixin
    private SamplingOptions sampling;

    @Mixin
    private TableOptions tables;

    @Mixin
    private StyleOptions styles;

    @Mixin
    private OutputOptions output;

    @Option(
            names = "--event",
            paramLabel = "ID",
            split = ",",
            description = "what may have happened to it, in place of what the file suspects; the day is not asked for."
                    + " 'hafthold materials --events' lists ids")
    private List<String> suspected = List.of();

    @Option(names = "--check", description = "exit with 4 unless the weather explains what was measured")
    private boolean check;

    @Override
    public Integer call() {
        if (files.wantsExample()) {
            spec.commandLine().getOut().print(ClaimFile.example());
            return ExitCode.DONE;
        }
        Path file = files.file("claim", "knife");
        OutputFormat form =
                output.form("claim", OutputFormat.TEXT, OutputFormat.MARKDOWN, OutputFormat.JSON, OutputFormat.CSV);
        BenchStyle style = styles.style();
        TableSet set = tables.open();
        ClaimFile told = ClaimFile.read(file);
        KnifeFile read = KnifeFile.of(told.build(), file, set, MaterialLibrary.read(set), where.reading());
        if (!(read.knife() instanceof FullTangKnife knife)) {
            throw new WrongUsageException(
                    "claims are judged for full-tang knives so far; for a stack see what its parts"
                            + " do with 'hafthold fit'");
        }
        Claim claim = judge(told, read, knife, set);
        spec.commandLine()
                .getOut()
                .print(
                        switch (form) {
                            case JSON -> ClaimJson.of(claim);
                            case CSV -> ClaimCsv.of(claim);
                            case MARKDOWN -> ClaimMarkdown.of(claim, style);
                            case TEXT -> new ClaimText(style).of(claim);
                        });
        List<Finding> cautions = CautionTable.read(set).with(FitFindings.materials(knife));
        output.report(
                spec.commandLine().getErr(),
                ClaimReport.PAGE,
                () -> new ClaimReport(
                                style,
                                LimitTable.read(set),
                                cautions,
                                FileOptions.text(file),
                                TypedCommand.of(spec.commandLine().getParseResult(), where.stays()))
                        .files(claim));
        CautionLines.of(style, cautions, FitFindings.materials(knife))
                .forEach(spec.commandLine().getErr()::println);
        return check && claim.verdict() != ClaimVerdict.WEATHER ? ExitCode.ADVERSE_VERDICT : ExitCode.DONE;
    }

    private Claim judge(ClaimFile told, KnifeFile read, FullTangKnife knife, TableSet set) {
        List<Finding> findings = new ArrayList<>(read.findings());
        Destination destination = FitCommand.destination(where, read, set, findings);
        findings.addAll(FitFindings.of(knife, destination, false));
        Sampling draws = sampling.sampling(USUAL_SAMPLES);
        if (draws.samples() == 1) {
            throw new WrongUsageException("--samples: a claim is judged by draws; give 30 to 10000, or leave it out");
        }
        KnifeHistory asked =
                suspected.isEmpty() ? told.history() : told.history().suspecting(suspected);
        List<Event> events = events(asked, set);
        KnifeHistory history = destination
                .stays()
                .map(chain -> through(chain, asked, findings))
                .orElse(asked);
        return new ClaimJudge(LimitTable.read(set), events, draws).judge(knife, destination, history, findings);
    }

    /** A table of stays says itself when the knife was finished and came where it lives. */
    private static KnifeHistory through(StayChain chain, KnifeHistory told, List<Finding> findings) {
        LocalDate first = chain.stays().get(0).from();
        if (told.firstMeasured().isBefore(first)) {
            throw new WrongUsageException("--stays begin on " + first + ", after the first measuring on "
                    + told.firstMeasured() + "; the first stay is that of final sanding");
        }
        findings.removeIf(finding -> finding.subject().startsWith("since."));
        try {
            return told.on(first, chain.last().from());
        } catch (UnfitBuildException e) {
            throw new WrongUsageException("--stays do not go with the bench of the file: " + e.key() + " is "
                    + e.value() + ", expected " + e.expectation());
        }
    }

    /** The suspected events; of all others those that may happen to a knife in use, which parcels are not. */
    private static List<Event> events(KnifeHistory history, TableSet set) {
        EventTable table = EventTable.read(set);
        if (!history.suspected().isEmpty()) {
            return history.suspected().stream().distinct().map(table::find).toList();
        }
        return table.all().stream()
                .filter(event ->
                        event.phases().stream().noneMatch(phase -> phase.around() instanceof EventPhase.ClosedBag))
                .toList();
    }
}
