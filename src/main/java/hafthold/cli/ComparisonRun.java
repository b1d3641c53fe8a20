package hafthold.cli;

import hafthold.air.EventSchedule;
import hafthold.decide.Comparison;
import hafthold.decide.EventComparison;
import hafthold.decide.Judgement;
import hafthold.decide.PlaceComparison;
import hafthold.decide.PlaceComparison.Candidate;
import hafthold.material.ScaleMaterial;
import hafthold.report.BenchStyle;
import hafthold.report.CautionLines;
import hafthold.report.ComparisonReport;
import hafthold.simulate.Conditions;
import hafthold.simulate.Sampling;
import hafthold.source.Evidence;
import hafthold.source.Finding;
import hafthold.table.CautionTable;
import hafthold.table.LimitTable;
import hafthold.table.TableSet;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One comparison from tables to report.
 *
 * @param tables tables in use
 * @param conditions the order
 * @param candidates materials as they lie
 * @param defaults what was taken for want of a word
 * @param named id of the material that was asked for, if any
 * @param sampling how often a year is run with other figures
 */
record ComparisonRun(
        TableSet tables,
        Conditions conditions,
        List<Candidate> candidates,
        List<Finding> defaults,
        Optional<String> named,
        Sampling sampling) {
    private static final String PAGE = "comparison.html";

    /** Works out the comparison; what it rests on and what to mind are among its findings. */
    Comparison comparison() {
        return comparison(EventSchedule.none()).comparison();
    }

    /** Likewise, with what happens besides the weather. */
    EventComparison comparison(EventSchedule schedule) {
        EventOptions.requireOnePlace(schedule, conditions.destination());
        List<Finding> findings = new ArrayList<>();
        findings.add(conditions.destination().setting().finding());
        findings.addAll(defaults);
        findings.add(SamplingOptions.finding(sampling));
        findings.addAll(EventOptions.findings(schedule));
        CautionTable cautions = CautionTable.read(tables);
        findings.addAll(cautions.with(materials()));
        findings.addAll(cautions.taken(OrderOptions.USUAL_PIN));
        PlaceComparison places = new PlaceComparison(new Judgement(LimitTable.read(tables)), sampling);
        return schedule.isEmpty()
                ? EventComparison.quiet(places.compare(conditions, candidates, findings))
                : places.compare(conditions, schedule, candidates, findings);
    }

    /** Says on the error stream what stands in for what is not known, and what can hurt. */
    void warn(PrintWriter err, BenchStyle style, Comparison comparison) {
        materials().stream()
                .filter(material -> material.evidence() == Evidence.UNKNOWN)
                .flatMap(material -> material.findings().stream())
                .distinct()
                .forEach(finding -> err.println(style.say("note", "text", style.tell(finding.message()))));
        CautionLines.of(style, comparison.findings(), materials()).forEach(err::println);
    }

    private List<ScaleMaterial> materials() {
        Map<String, ScaleMaterial> byId = new LinkedHashMap<>();
        candidates.forEach(candidate -> byId.put(candidate.material().id(), candidate.material()));
        return List.copyOf(byId.values());
    }

    /**
     * Writes page, pictures, text and figures into a folder, whole or not at all.
     *
     * @return the page
     */
    Path write(Path folder, EventComparison comparison, BenchStyle style, String command) {
        OutputOptions.write(
                folder, new ComparisonReport(style, named, LimitTable.read(tables), command).files(comparison));
        return folder.resolve(PAGE);
    }
}
