package hafthold.cli;

import hafthold.decide.EventComparison;
import hafthold.report.BenchStyle;
import hafthold.report.ComparisonCsv;
import hafthold.report.ComparisonJson;
import hafthold.report.ComparisonMarkdown;
import hafthold.report.ComparisonText;
import hafthold.table.MaterialLibrary;
import hafthold.table.TableSet;
import java.util.Optional;
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
        ComparisonRun run = new ComparisonRun(
                set,
                order.conditions(set, library),
                rack.candidates(library),
                order.defaults(),
                named,
                sampling.sampling());
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
