package hafthold.cli;

import hafthold.decide.PlaceComparison.Candidate;
import hafthold.decide.Season;
import hafthold.decide.SeasonPlanner;
import hafthold.decide.ShopAir;
import hafthold.knife.BenchStock;
import hafthold.knife.FitLimits;
import hafthold.material.ScaleMaterial;
import hafthold.report.BenchStyle;
import hafthold.report.CautionLines;
import hafthold.report.SeasonCsv;
import hafthold.report.SeasonJson;
import hafthold.report.SeasonReport;
import hafthold.report.SeasonText;
import hafthold.simulate.Conditions;
import hafthold.simulate.Sampling;
import hafthold.source.Finding;
import hafthold.source.Message;
import hafthold.table.CautionTable;
import hafthold.table.LimitTable;
import hafthold.table.MaterialLibrary;
import hafthold.table.PlaceTable;
import hafthold.table.SeasonTable;
import hafthold.table.TableSet;
import hafthold.table.UnknownIdException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Plans glue-up and finishing through the workshop's own year. */
@Command(
        name = "season",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Says whether to glue up and to sand flush today, and the best weeks of your workshop's year for it, for one"
                    + " customer's place; how far to leave the edges proud where it cannot wait; and the cuts of a wood"
                    + " side by side.",
            "Your workshop's air is two readings of a hygrometer, a place, or a logger's file:"
                    + " hafthold season --place duluth --material maple-sugar --shop-rh-january \"35 %%\""
                    + " --shop-rh-july \"72 %%\""
        })
final class SeasonCommand implements Callable<Integer> {
    private static final String USUAL_WORK = "good-new";

    @Spec
    private CommandSpec spec;

    @Mixin
    private SeasonOrder order;

    @Mixin
    private RackOptions rack;

    @Mixin
    private ShopOptions shop;

    @Mixin
    private BlankOptions blank;

    @Option(
            names = "--today",
            paramLabel = "DATE",
            description = "the day you ask about, such as 2026-07-15 (default: the day of your computer's clock)")
    private LocalDate today;

    @Option(
            names = "--work",
            paramLabel = "CLASS",
            defaultValue = USUAL_WORK,
            description = "what the work is judged as, a class of limits.csv (default: ${DEFAULT-VALUE}); the class"
                    + " after it must hold through the customer's year")
    private String work;

    @Mixin
    private SamplingOptions sampling;

    @Mixin
    private TableOptions tables;

    @Mixin
    private StyleOptions styles;

    @Mixin
    private OutputOptions output;

    @Option(names = "--check", description = "exit with 4 unless it may be glued up and sanded flush today")
    private boolean check;

    @Override
    public Integer call() {
        OutputFormat form = output.form("season", OutputFormat.TEXT, OutputFormat.JSON, OutputFormat.CSV);
        BenchStyle style = styles.style();
        TableSet set = tables.open();
        MaterialLibrary library = MaterialLibrary.read(set);
        if (rack.firstNamed(library).isEmpty()) {
            throw new WrongUsageException(
                    "which wood, or what else, is waiting? Name one --material or a few; 'hafthold"
                            + " materials' lists them");
        }
        List<FitLimits> classes = LimitTable.read(set);
        requireClass(classes);
        List<Candidate> candidates = rack.candidates(library);
        blank.requireReadable(candidates.stream().map(Candidate::material).toList());
        Season season = plan(set, library, classes, candidates);
        List<ScaleMaterial> materials =
                candidates.stream().map(Candidate::material).distinct().toList();
        spec.commandLine()
                .getOut()
                .print(
                        switch (form) {
                            case JSON -> SeasonJson.of(season);
                            case CSV -> SeasonCsv.of(season);
                            case TEXT, MARKDOWN -> new SeasonText(style).of(season);
                        });
        CautionTable table = CautionTable.read(set);
        List<Finding> cautions = new ArrayList<>(table.with(materials));
        cautions.addAll(table.taken(OrderOptions.USUAL_PIN));
        output.report(
                spec.commandLine().getErr(),
                SeasonReport.PAGE,
                () -> new SeasonReport(
                                style,
                                classes,
                                work,
                                cautions,
                                TypedCommand.of(spec.commandLine().getParseResult()))
                        .files(season));
        CautionLines.of(style, cautions, materials).forEach(spec.commandLine().getErr()::println);
        return check && !season.isGo() ? ExitCode.ADVERSE_VERDICT : ExitCode.DONE;
    }

    private void requireClass(List<FitLimits> classes) {
        List<String> names = classes.stream().map(FitLimits::name).toList();
        if (!names.contains(work)) {
            throw new UnknownIdException("class of work", work, names, "limits.csv holds them");
        }
    }

    private Season plan(TableSet set, MaterialLibrary library, List<FitLimits> classes, List<Candidate> candidates) {
        Conditions conditions = order.conditions(set, library);
        ShopAir air = shop.air(PlaceTable.read(set), order.where());
        Sampling draws = sampling.sampling();
        List<Finding> findings = new ArrayList<>();
        findings.add(conditions.destination().setting().finding());
        BenchStock stock = blank.stock();
        findings.addAll(order.defaults(blank.taken(), stock.gluedDays()));
        findings.add(SamplingOptions.finding(draws));
        findings.add(new Finding(
                Finding.Kind.ESTIMATE,
                "workshop",
                Message.of("note.shop.doubt", Map.of("points", Message.number(100 * air.humidityDoubtFraction(), 0)))));
        String followed = stock.reading().isPresent() ? "note.shop.read" : "note.shop.blank";
        findings.add(new Finding(Finding.Kind.ESTIMATE, "workshop", Message.of(followed)));
        findings.add(new Finding(Finding.Kind.ESTIMATE, "workshop", glueUp(stock.gluedDays())));
        if (stock.reading().isPresent() && stock.gluedDays() > 0) {
            findings.add(new Finding(Finding.Kind.ESTIMATE, "workshop", Message.of("note.shop.glued-read")));
        }
        findings.add(new Finding(Finding.Kind.ESTIMATE, "workshop", Message.of("note.shop.settling")));
        findings.add(new Finding(Finding.Kind.ESTIMATE, "workshop", Message.of("note.shop.limits")));
        return new SeasonPlanner(classes, work, SeasonTable.read(set), draws)
                .plan(
                        conditions,
                        air,
                        stock,
                        today == null ? LocalDate.now(ZoneId.systemDefault()) : today,
                        candidates,
                        findings);
    }

    private static Message glueUp(int days) {
        return days == 0
                ? Message.of("note.shop.same-week")
                : Message.of("note.shop.glued-days", Map.of("days", Message.number(days, 0)));
    }
}
