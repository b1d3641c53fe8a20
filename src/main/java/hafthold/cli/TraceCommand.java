package hafthold.cli;

import hafthold.air.EventSchedule;
import hafthold.decide.PlaceComparison.Candidate;
import hafthold.report.BenchStyle;
import hafthold.report.TraceCsv;
import hafthold.simulate.Conditions;
import hafthold.simulate.EventEngine;
import hafthold.simulate.EventTrace;
import hafthold.simulate.HandleEngine;
import hafthold.simulate.Sampling;
import hafthold.simulate.ScaleTrace;
import hafthold.source.Finding;
import hafthold.table.MaterialLibrary;
import hafthold.table.StaysFile;
import hafthold.table.TableSet;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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
    private static final int MINUTES_AN_HOUR = 60;
    private static final double SHORTEST_STEP = 10;
    private static final double LONGEST_STEP = 3600;

    @Spec
    private CommandSpec spec;

    @Mixin
    private OrderOptions order;

    @Mixin
    private RackOptions rack;

    @Mixin
    private EventOptions events;

    @Option(
            names = "--step",
            paramLabel = "TIME",
            defaultValue = "5 min",
            description = "time between rows about an event, such as \"1 min\" or \"30 s\" (default: ${DEFAULT-VALUE});"
                    + " in phases of half a day and more no finer than half an hour")
    private String step;

    @Mixin
    private TableOptions tables;

    @Option(names = "--format", paramLabel = "FORM", defaultValue = "csv", description = "csv")
    private OutputFormat format;

    @Option(
            names = "--every",
            paramLabel = "MINUTES",
            defaultValue = "60",
            description = "minutes from row to row, a divisor of 60 (default: ${DEFAULT-VALUE})")
    private int minutes;

    @Option(names = "--stays-example", description = "prints a commented table for --stays")
    private boolean staysExample;

    @Override
    public void run() {
        if (staysExample) {
            spec.commandLine().getOut().print(StaysFile.example());
            return;
        }
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
        Conditions conditions = order.conditions(set, library);
        EventSchedule schedule = events.schedule(set, conditions.destination());
        EventOptions.requireOnePlace(schedule, conditions.destination());
        boolean glued;
        if (schedule.isEmpty()) {
            ScaleTrace trace = new HandleEngine(
                            conditions.at(conditions.destination().finer(samplesAnHour())), Sampling.VALUE_ONLY)
                    .trace(scale.material(), scale.cut());
            glued = trace.isGlued();
            spec.commandLine().getOut().print(TraceCsv.of(trace));
        } else {
            EventTrace trace =
                    new EventEngine(conditions, schedule, stepSeconds()).trace(scale.material(), scale.cut());
            glued = trace.isGlued();
            spec.commandLine().getOut().print(TraceCsv.of(trace));
        }
        EventOptions.findings(schedule)
                .forEach(finding -> spec.commandLine()
                        .getErr()
                        .println((finding.kind() == Finding.Kind.CAUTION ? "mind: " : "note: ")
                                + BenchStyle.ENGLISH.tell(finding.message())));
        conditions
                .destination()
                .stays()
                .ifPresent(chain -> spec.commandLine()
                        .getErr()
                        .println("note: hours count from " + chain.date(0) + "; from hour "
                                + 24 * chain.daysBeforeRepeat() + " on it is the year that repeats in "
                                + chain.last().name()));
        order.notes()
                .forEach(note ->
                        spec.commandLine().getErr().println("note: " + BenchStyle.ENGLISH.tell(note.message())));
        spec.commandLine()
                .getErr()
                .println(
                        glued
                                ? "edge_offset_mm: glued, half way up the thickness; free_offset_mm: if unglued"
                                : "unglued: edge_offset_mm equals free_offset_mm");
    }

    private int samplesAnHour() {
        if (minutes < 1 || MINUTES_AN_HOUR % minutes != 0) {
            throw new WrongUsageException("--every needs minutes that divide an hour, such as 10 or 30");
        }
        return MINUTES_AN_HOUR / minutes;
    }

    private double stepSeconds() {
        Matcher words = Pattern.compile("\\s*(\\d{1,6})\\s*(s|min|h)\\s*").matcher(step);
        double seconds = words.matches()
                ? Integer.parseInt(words.group(1))
                        * ("s".equals(words.group(2)) ? 1.0 : "min".equals(words.group(2)) ? 60 : 3600)
                : 0;
        if (!(seconds >= SHORTEST_STEP && seconds <= LONGEST_STEP)) {
            throw new WrongUsageException(
                    "--step '" + step + "' is no step about an event; write 10 s to 1 h, such as \"1 min\"");
        }
        return seconds;
    }
}
