package hafthold.cli;

import hafthold.decide.Atlas;
import hafthold.decide.AtlasSurvey;
import hafthold.decide.Judgement;
import hafthold.decide.PlaceComparison.Candidate;
import hafthold.knife.FitLimits;
import hafthold.material.ScaleMaterial;
import hafthold.report.AtlasCsv;
import hafthold.report.AtlasJson;
import hafthold.report.AtlasReport;
import hafthold.report.AtlasText;
import hafthold.report.BenchStyle;
import hafthold.report.CautionLines;
import hafthold.simulate.Sampling;
import hafthold.source.Finding;
import hafthold.source.Message;
import hafthold.table.CautionTable;
import hafthold.table.LimitTable;
import hafthold.table.MaterialLibrary;
import hafthold.table.TableSet;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** All materials in all places. */
@Command(
        name = "atlas",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Holds every material against every place in one setting: where each stays, where it needs care,"
                + " where it does not belong. Several ids after --place, separated by commas, take those places only.")
final class AtlasCommand implements Runnable {
    @Spec
    private CommandSpec spec;

    @Mixin
    private OrderOptions order;

    @Mixin
    private RackOptions rack;

    @Mixin
    private TableOptions tables;

    @Mixin
    private SamplingOptions samplings;

    @Mixin
    private StyleOptions styles;

    @Mixin
    private OutputOptions output;

    @Option(
            names = "--threads",
            paramLabel = "N",
            description = "places worked out at once; the answer does not depend on it (default: one a processor)")
    private int threads = Runtime.getRuntime().availableProcessors();

    @Override
    public void run() {
        OutputFormat form = output.form("atlas", OutputFormat.TEXT, OutputFormat.JSON, OutputFormat.CSV);
        BenchStyle style = styles.style();
        if (threads < 1) {
            throw new WrongUsageException("--threads: 1 or more, got " + threads);
        }
        TableSet set = tables.open();
        MaterialLibrary library = MaterialLibrary.read(set);
        Tour tour = order.tour(set, library);
        List<Candidate> candidates = rack.candidates(library);
        Sampling sampling = samplings.sampling(1);
        List<ScaleMaterial> materials =
                candidates.stream().map(Candidate::material).distinct().toList();
        List<Finding> cautions = CautionTable.read(set).with(materials);
        List<FitLimits> limits = LimitTable.read(set);
        PrintWriter err = spec.commandLine().getErr();
        Atlas atlas = new AtlasSurvey(new Judgement(limits), sampling, threads)
                .atlas(
                        tour.sites(),
                        tour.order(),
                        tour::destination,
                        candidates,
                        findings(tour, sampling, cautions),
                        new ProgressLine(err, tour.sites().size()));
        boolean named = rack.firstNamed(library).isPresent();
        print(atlas, form, style, named);
        output.folder().ifPresent(folder -> err.println("report: " + write(atlas, folder, style, named, limits)));
        CautionLines.of(style, cautions, materials).forEach(err::println);
    }

    private List<Finding> findings(Tour tour, Sampling sampling, List<Finding> cautions) {
        List<Finding> findings = new ArrayList<>();
        findings.add(tour.order().destination().setting().finding());
        if (sampling.samples() == 1) {
            findings.add(new Finding(Finding.Kind.DEFAULT, "--samples", Message.of("note.no-band")));
        }
        findings.addAll(order.defaults());
        findings.addAll(cautions);
        return findings;
    }

    private void print(Atlas atlas, OutputFormat form, BenchStyle style, boolean named) {
        PrintWriter out = spec.commandLine().getOut();
        try {
            switch (form) {
                case TEXT -> out.print(new AtlasText(style, named).of(atlas));
                case JSON -> AtlasJson.write(atlas, out);
                case CSV -> AtlasCsv.write(atlas, out);
                case MARKDOWN -> throw new IllegalStateException("refused before");
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        out.flush();
    }

    private Path write(Atlas atlas, Path folder, BenchStyle style, boolean named, List<FitLimits> limits) {
        String command = TypedCommand.of(spec.commandLine().getParseResult());
        try {
            return new AtlasReport(style, named, limits, command).write(atlas, folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
