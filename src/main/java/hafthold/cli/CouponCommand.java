package hafthold.cli;

import hafthold.decide.CouponAnswer;
import hafthold.decide.CouponJudge;
import hafthold.decide.CouponRows;
import hafthold.decide.CouponStudy;
import hafthold.decide.OutcomeTally;
import hafthold.knife.Coupon;
import hafthold.knife.CouponReading;
import hafthold.report.BenchStyle;
import hafthold.report.CautionLines;
import hafthold.report.CouponCsv;
import hafthold.report.CouponJson;
import hafthold.report.CouponReport;
import hafthold.report.CouponText;
import hafthold.simulate.Sampling;
import hafthold.source.Finding;
import hafthold.source.Message;
import hafthold.table.CautionTable;
import hafthold.table.CouponFile;
import hafthold.table.CouponStock;
import hafthold.table.MaterialLibrary;
import hafthold.table.OwnTables;
import hafthold.table.TableSet;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Weighs the tables by what the shop measured itself. */
@Command(
        name = "coupon",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Takes strips of your own stock, measured with caliper and scale in more than one air, and tells your own"
                    + " figures of that material, how much surer they are than the book, and what to measure next.",
            "--out DIR also writes tables of your own there, which every other command takes with --tables DIR."
        })
final class CouponCommand implements Callable<Integer> {
    private static final int USUAL_SAMPLES = 4000;
    private static final int FEWEST_SAMPLES = 500;

    @Spec
    private CommandSpec spec;

    @Mixin
    private FileOptions files;

    @Mixin
    private SamplingOptions sampling;

    @Mixin
    private TableOptions tables;

    @Mixin
    private StyleOptions styles;

    @Mixin
    private OutputOptions output;

    @Option(
            names = "--check",
            description = "exit with 4 where readings and book do not go together, or steps fell outside their bands"
                    + " too often")
    private boolean check;

    @Override
    public Integer call() {
        if (files.wantsExample()) {
            spec.commandLine().getOut().print(CouponFile.example());
            return ExitCode.DONE;
        }
        Path file = files.file("coupon", "coupons");
        OutputFormat form = output.form("coupon", OutputFormat.TEXT, OutputFormat.JSON, OutputFormat.CSV);
        BenchStyle style = styles.style();
        TableSet set = tables.open();
        Sampling draws = sampling.sampling(USUAL_SAMPLES);
        if (draws.samples() < FEWEST_SAMPLES) {
            throw new WrongUsageException(
                    "--samples: coupons are weighed by draws; give " + FEWEST_SAMPLES + " to 10000, or leave it out");
        }
        CouponFile told = CouponFile.read(file);
        List<CouponStock> stocks = CouponStock.of(told.coupons(), MaterialLibrary.read(set), file.toString());
        CouponAnswer answer = answer(told, stocks, draws);
        spec.commandLine()
                .getOut()
                .print(
                        switch (form) {
                            case JSON -> CouponJson.of(answer);
                            case CSV -> CouponCsv.of(answer);
                            case TEXT, MARKDOWN -> new CouponText(style).of(answer);
                        });
        List<Finding> cautions = cautions(set, stocks);
        output.report(spec.commandLine().getErr(), CouponReport.PAGE, () -> report(answer, file, style, cautions));
        CautionLines.of(
                        style,
                        cautions,
                        stocks.stream().map(CouponStock::material).toList())
                .forEach(spec.commandLine().getErr()::println);
        return check && isAdverse(answer) ? ExitCode.ADVERSE_VERDICT : ExitCode.DONE;
    }

    private CouponAnswer answer(CouponFile told, List<CouponStock> stocks, Sampling draws) {
        CouponJudge judge = new CouponJudge(draws);
        List<Finding> findings = new ArrayList<>(told.findings());
        List<CouponStudy> studies = new ArrayList<>();
        for (CouponStock stock : stocks) {
            findings.addAll(stock.findings());
            studies.add(judge.judge(stock.material(), stock.own(), stock.coupons(), stock.findings()));
        }
        if (!studies.isEmpty()) {
            double fewest = studies.stream()
                    .mapToDouble(CouponStudy::effectiveSamples)
                    .min()
                    .orElseThrow();
            findings.add(new Finding(
                    Finding.Kind.ESTIMATE,
                    "ranges",
                    Message.of(
                            "note.coupon-draws",
                            Map.of(
                                    "samples", Message.number(draws.samples(), 0),
                                    "seed", Message.verbatim(Long.toString(draws.seed())),
                                    "count", Message.number(fewest, 0)))));
            for (String note : List.of("note.coupon-errors", "note.coupon-loop", "note.coupon-piece")) {
                findings.add(new Finding(Finding.Kind.ESTIMATE, "all", Message.of(note)));
            }
        }
        Optional<OutcomeTally> tally =
                told.outcomes().isEmpty() ? Optional.empty() : Optional.of(OutcomeTally.of(told.outcomes()));
        return new CouponAnswer(studies, tally, findings);
    }

    /** What can hurt with the materials, and in an oven. */
    private static List<Finding> cautions(TableSet set, List<CouponStock> stocks) {
        List<Finding> cautions = new ArrayList<>();
        if (!stocks.isEmpty()) {
            cautions.add(new Finding(Finding.Kind.CAUTION, "all", Message.of("note.coupon-oven")));
        }
        cautions.addAll(CautionTable.read(set)
                .with(stocks.stream().map(CouponStock::material).toList()));
        return cautions;
    }

    private static boolean isAdverse(CouponAnswer answer) {
        return answer.studies().stream().anyMatch(CouponStudy::isAdverse)
                || answer.outcomes()
                        .filter(tally -> tally.says() && tally.insideShare().high() < OutcomeTally.PROMISED)
                        .isPresent();
    }

    private Map<String, String> report(CouponAnswer answer, Path file, BenchStyle style, List<Finding> cautions) {
        Map<String, String> written = new LinkedHashMap<>(new CouponReport(
                        style,
                        cautions,
                        FileOptions.text(file),
                        TypedCommand.of(spec.commandLine().getParseResult(), Optional.empty()))
                .files(answer));
        written.putAll(ownTables(answer, file));
        return written;
    }

    /** Tables of the shop's own; none where nothing was told, or where it does not go together. */
    private static Map<String, String> ownTables(CouponAnswer answer, Path file) {
        OwnTables own = new OwnTables();
        boolean hasAny = false;
        for (CouponStudy study : answer.studies()) {
            if (!study.isAdverse() && !CouponRows.of(study).isEmpty()) {
                own.add(study.material(), study.own(), CouponRows.of(study), locator(study.coupons()));
                hasAny = true;
            }
        }
        String year = days(answer.studies().stream()
                        .flatMap(study -> study.coupons().stream())
                        .toList())
                .stream()
                .max(LocalDate::compareTo)
                .map(day -> Integer.toString(day.getYear()))
                .orElse("");
        return hasAny ? own.files(file.getFileName().toString(), year) : Map.of();
    }

    private static String locator(List<Coupon> coupons) {
        List<LocalDate> days = days(coupons).stream().sorted().toList();
        return "coupon " + String.join(", ", coupons.stream().map(Coupon::name).toList())
                + (days.isEmpty() ? "" : ", " + days.get(0) + " to " + days.get(days.size() - 1));
    }

    private static List<LocalDate> days(Collection<Coupon> coupons) {
        return coupons.stream()
                .flatMap(coupon -> coupon.readings().stream())
                .map(CouponReading::on)
                .flatMap(Optional::stream)
                .toList();
    }
}
