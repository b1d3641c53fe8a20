package hafthold.cli;

import hafthold.air.HeatedHome;
import hafthold.decide.StockAnswer;
import hafthold.decide.StockJudge;
import hafthold.decide.StockVerdict;
import hafthold.knife.StockBlock;
import hafthold.material.Material;
import hafthold.report.BenchStyle;
import hafthold.report.CautionLines;
import hafthold.report.StockCsv;
import hafthold.report.StockJson;
import hafthold.report.StockReport;
import hafthold.report.StockText;
import hafthold.simulate.Destination;
import hafthold.simulate.Sampling;
import hafthold.simulate.StockAir;
import hafthold.simulate.StockStore;
import hafthold.source.Finding;
import hafthold.table.CautionTable;
import hafthold.table.FillTable;
import hafthold.table.FinishTable;
import hafthold.table.LimitTable;
import hafthold.table.MaterialLibrary;
import hafthold.table.PlaceTable;
import hafthold.table.SaltTable;
import hafthold.table.StockFile;
import hafthold.table.TableSet;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Judges blocks on the shelf. */
@Command(
        name = "stock",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description =
                "Judges blocks on the shelf, described in a file with what was weighed and measured on them: are"
                        + " they dry, when will they be, what should their box sit at; is stabilised stock filled right through.")
final class StockCommand implements Callable<Integer> {
    private static final int USUAL_SAMPLES = 2000;
    private static final String USUAL_WORK = "good-new";
    private static final String SEAL = "wax-dipped";

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

    @Option(names = "--check", description = "exit with 4 unless every block may be worked")
    private boolean check;

    @Override
    public Integer call() {
        if (files.wantsExample()) {
            spec.commandLine().getOut().print(StockFile.example());
            return ExitCode.DONE;
        }
        Path file = files.file("stock", "blocks");
        OutputFormat form = output.form("stock", OutputFormat.TEXT, OutputFormat.JSON, OutputFormat.CSV);
        BenchStyle style = styles.style();
        TableSet set = tables.open();
        StockFile told = StockFile.read(file, set, MaterialLibrary.read(set));
        List<StockAnswer> answers = answers(told, set);
        spec.commandLine()
                .getOut()
                .print(
                        switch (form) {
                            case JSON -> StockJson.of(answers);
                            case CSV -> StockCsv.of(answers);
                            case TEXT, MARKDOWN -> new StockText(style).of(answers);
                        });
        List<Material> materials = answers.stream()
                .map(answer -> answer.block().material())
                .distinct()
                .toList();
        List<Finding> cautions = CautionTable.read(set).with(materials);
        output.report(
                spec.commandLine().getErr(),
                StockReport.PAGE,
                () -> new StockReport(
                                style,
                                cautions,
                                FileOptions.text(file),
                                TypedCommand.of(spec.commandLine().getParseResult(), where.stays()))
                        .files(answers));
        CautionLines.of(style, cautions, materials).forEach(spec.commandLine().getErr()::println);
        boolean isReady = answers.stream().allMatch(answer -> answer.verdict() == StockVerdict.READY);
        return check && !isReady ? ExitCode.ADVERSE_VERDICT : ExitCode.DONE;
    }

    private List<StockAnswer> answers(StockFile told, TableSet set) {
        Sampling draws = sampling.sampling(USUAL_SAMPLES);
        if (draws.samples() == 1) {
            throw new WrongUsageException("--samples: a block is judged by draws; give 30 to 10000, or leave it out");
        }
        List<Finding> common = new ArrayList<>(told.findings());
        Optional<Destination> goesTo = goesTo(told, set, common);
        StockJudge judge = new StockJudge(
                store(told.storage(), set),
                told.storage().air(),
                goesTo,
                LimitTable.read(set).stream()
                        .filter(limits -> limits.name().equals(USUAL_WORK))
                        .findFirst()
                        .orElseGet(() -> LimitTable.read(set).get(0)),
                told.within().fraction(),
                SaltTable.read(set),
                FillTable.read(MaterialLibrary.read(set)),
                draws);
        List<StockAnswer> answers = new ArrayList<>();
        for (Map.Entry<StockBlock, List<Finding>> one : told.blocks().entrySet()) {
            List<Finding> findings = new ArrayList<>(common);
            findings.addAll(one.getValue());
            findings.addAll(StockFindings.before(one.getKey(), goesTo.isPresent(), draws));
            StockAnswer answer = judge.judge(one.getKey(), findings);
            findings.addAll(StockFindings.after(answer));
            answers.add(answer.resting(findings));
        }
        return answers;
    }

    private static StockStore store(StockFile.Storage storage, TableSet set) {
        return new StockStore(
                storage.place()
                        .map(place -> StockAir.of(Destination.of(place.place(), place.setting())))
                        .orElseGet(() -> StockAir.held(storage.air())),
                storage.isChecked(),
                storage.balance(),
                FinishTable.read(set).find(SEAL));
    }

    /** Where the knives go: as the options say, else as the file does. */
    private Optional<Destination> goesTo(StockFile told, TableSet set, List<Finding> findings) {
        Optional<Destination> named = where.destination(
                PlaceTable.read(set),
                () -> told.goesTo().map(goal -> goal.setting()).orElseGet(HeatedHome::usual),
                told.goesTo().isPresent());
        findings.addAll(where.findings());
        Optional<Destination> goesTo =
                named.or(() -> told.goesTo().map(goal -> Destination.of(goal.place(), where.lives(goal::setting))));
        goesTo.ifPresent(destination -> findings.add(destination.setting().finding()));
        return goesTo;
    }
}
