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
import hafthold.report.CautionLines;
import hafthold.simulate.Sampling;
import hafthold.source.Finding;
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

    @Option(
            names = "--samples",
            paramLabel = "N",
            defaultValue = "1",
            description =
                    "how often each year is run with figures drawn from their ranges: 1 for values without a band,"
                            + " which is quick, else 30 to 10000 (default: ${DEFAULT-VALUE})")
    private int samples;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description = "number the draws start from; the same one gives the same answer (default: ${DEFAULT-VALUE})")
    private long seed;

    @Option(
            names = "--threads",
            paramLabel = "N",
            description = "places worked out at once; the answer does not depend on it (default: one a processor)")
    private int threads = Runtime.getRuntime().availableProcessors();

    @Option(
            names = "--format",
            paramLabel = "FORM",
            defaultValue = "text",
            description = "text, json or csv, which has one row a material and place (default: ${DEFAULT-VALUE})")
    private OutputFormat format;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "also write a report into this folder: page, pictures, text and figures, all or none")
    private Path folder;

    @Override
    public void run() {
        if (format == OutputFormat.MARKDOWN) {
            throw new WrongUsageException("atlas answers as text, json or csv, not as markdown");
        }
        if (threads < 1) {
            throw new WrongUsageException("--threads: 1 or more, got " + threads);
        }
        TableSet set = tables.open();
        MaterialLibrary library = MaterialLibrary.read(set);
        Tour tour = order.tour(set, library);
        List<Candidate> candidates = rack.candidates(library);
        Sampling sampling = sampling();
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
        print(atlas, named);
        if (folder != null) {
            err.println("report: " + write(atlas, named, limits));
        }
        CautionLines.of(cautions, materials).forEach(err::println);
    }

    private Sampling sampling() {
        try {
            return new Sampling(samples, seed);
        } catch (IllegalArgumentException e) {
            throw new WrongUsageException("--samples: " + e.getMessage());
        }
    }

    private List<Finding> findings(Tour tour, Sampling sampling, List<Finding> cautions) {
        List<Finding> findings = new ArrayList<>();
        findings.add(tour.order().destination().setting().finding());
        if (sampling.samples() == 1) {
            findings.add(
                    new Finding(
                            Finding.Kind.DEFAULT,
                            "--samples",
                            "Figures stand without a band; --samples 100 gives one, as 'hafthold compare' does. A material of which nothing is known has its band in any case."));
        }
        findings.addAll(order.defaults());
        findings.addAll(cautions);
        return findings;
    }

    private void print(Atlas atlas, boolean named) {
        PrintWriter out = spec.commandLine().getOut();
        try {
            switch (format) {
                case TEXT -> out.print(new AtlasText(named).of(atlas));
                case JSON -> AtlasJson.write(atlas, out);
                case CSV -> AtlasCsv.write(atlas, out);
                case MARKDOWN -> throw new IllegalStateException("refused before");
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        out.flush();
    }

    private Path write(Atlas atlas, boolean named, List<FitLimits> limits) {
        String command = "hafthold "
                + String.join(" ", spec.commandLine().getParseResult().originalArgs());
        try {
            return new AtlasReport(named, limits, command).write(atlas, folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
