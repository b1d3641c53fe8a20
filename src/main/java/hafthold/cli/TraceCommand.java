package hafthold.cli;

import hafthold.decide.PlaceComparison.Candidate;
import hafthold.report.TraceCsv;
import hafthold.simulate.HandleEngine;
import hafthold.simulate.ScaleTrace;
import hafthold.table.MaterialLibrary;
import hafthold.table.TableSet;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Hour by hour: air, moisture and movement of one scale. */
@Command(
        name = "trace",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Prints the year of one scale hour by hour as CSV: air, moisture, movement.")
final class TraceCommand implements Runnable {
    @Spec
    private CommandSpec spec;

    @Mixin
    private OrderOptions order;

    @Mixin
    private RackOptions rack;

    @Mixin
    private TableOptions tables;

    @Option(names = "--format", paramLabel = "FORM", defaultValue = "csv", description = "csv")
    private OutputFormat format;

    @Override
    public void run() {
        if (format != OutputFormat.CSV) {
            throw new WrongUsageException("trace prints csv only; 'hafthold compare' has text and json");
        }
        TableSet set = tables.open();
        MaterialLibrary library = MaterialLibrary.read(set);
        List<Candidate> candidates = rack.candidates(library);
        if (candidates.size() != 1) {
            throw new WrongUsageException("trace follows one scale: name one --material and at most one --cut");
        }
        Candidate scale = candidates.get(0);
        ScaleTrace trace = new HandleEngine(order.conditions(set, library)).trace(scale.material(), scale.cut());
        spec.commandLine().getOut().print(TraceCsv.of(trace));
        order.notes().forEach(note -> spec.commandLine().getErr().println("note: " + note.text()));
        spec.commandLine()
                .getErr()
                .println(
                        trace.isGlued()
                                ? "edge_offset_mm: glued, half way up the thickness; free_offset_mm: if unglued"
                                : "unglued: edge_offset_mm equals free_offset_mm");
    }
}
