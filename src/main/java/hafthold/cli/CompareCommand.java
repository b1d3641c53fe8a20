package hafthold.cli;

import hafthold.decide.EventComparison;
import hafthold.decide.PlaceComparison.Candidate;
import hafthold.report.BenchStyle;
import hafthold.report.ComparisonCsv;
import hafthold.report.ComparisonJson;
import hafthold.report.ComparisonMarkdown;
import hafthold.report.ComparisonText;
import hafthold.simulate.Conditions;
import hafthold.table.MaterialLibrary;
import hafthold.table.TableSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Ranks materials for one place. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Ranks handle materials by how far they will move in one place.")
final class CompareCommand implements Runnable {
    @Spec
    private CommandSpec spec;

    @Mixin
    private OrderOptions order;

    @Mixin
    private RackOptions rack;

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

    @Override
    public void run() {
        OutputFormat form = output.form("compare", OutputFormat.values());
        BenchStyle style = styles.style();
        TableSet set = tables.open();
        MaterialLibrary library = MaterialLibrary.read(set);
        Optional<String> named = rack.firstNamed(library);
        // The order is read while a whole rack is put together, which is more work and is shared once that is done.
        ForkJoinTask<Conditions> conditions = ForkJoinPool.commonPool().submit(() -> order.conditions(set, library));
        List<Candidate> candidates = rack.candidates(library);
        ComparisonRun run =
                new ComparisonRun(set, conditions.join(), candidates, order.defaults(), named, sampling.sampling());
        EventComparison answer =
                run.comparison(events.schedule(set, run.conditions().destination()));
        spec.commandLine()
                .getOut()
                .print(
                        switch (form) {
                            case TEXT -> new ComparisonText(style, named).of(answer);
                            case MARKDOWN -> ComparisonMarkdown.of(answer, style, named);
                            case JSON -> ComparisonJson.of(answer);
                            case CSV -> ComparisonCsv.of(answer);
                        });
        String command = TypedCommand.of(
                spec.commandLine().getParseResult(), order.where().stays());
        output.folder()
                .ifPresent(folder ->
                        spec.commandLine().getErr().println("report: " + run.write(folder, answer, style, command)));
        run.warn(spec.commandLine().getErr(), style, answer.comparison());
    }
}
