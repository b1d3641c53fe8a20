package hafthold.cli;

import hafthold.decide.Comparison;
import hafthold.decide.EventComparison;
import hafthold.report.ComparisonCsv;
import hafthold.report.ComparisonJson;
import hafthold.report.ComparisonMarkdown;
import hafthold.report.ComparisonText;
import hafthold.report.LengthUnits;
import hafthold.table.MaterialLibrary;
import hafthold.table.TableSet;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
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

    @Option(
            names = "--format",
            paramLabel = "FORM",
            defaultValue = "text",
            description = "${COMPLETION-CANDIDATES} (default: ${DEFAULT-VALUE})")
    private OutputFormat format;

    @Option(
            names = "--units",
            paramLabel = "UNITS",
            defaultValue = "mm",
            description = "mm, or inch for mm and thou (default: ${DEFAULT-VALUE})")
    private LengthUnits units;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "also write a report into this folder: page, pictures, text and figures")
    private Path folder;

    @Override
    public void run() {
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
        EventComparison answer = run.comparison(events.schedule(set));
        Comparison comparison = answer.comparison();
        spec.commandLine()
                .getOut()
                .print(
                        switch (format) {
                            case TEXT -> new ComparisonText(units, named).of(answer);
                            case MARKDOWN -> ComparisonMarkdown.of(comparison, units, named);
                            case JSON -> ComparisonJson.of(answer);
                            case CSV -> ComparisonCsv.of(comparison);
                        });
        if (folder != null) {
            String command = TypedCommand.of(spec.commandLine().getParseResult());
            spec.commandLine().getErr().println("report: " + run.write(folder, answer, units, command));
        }
        run.warn(spec.commandLine().getErr(), comparison);
    }
}
