package hafthold.table;

import hafthold.knife.KnifeHistory;
import hafthold.knife.KnifeHistory.BenchRest;
import hafthold.knife.MeasuredStep;
import hafthold.knife.MeasuringPoint;
import hafthold.knife.SizeRange;
import hafthold.knife.WorkState;
import hafthold.knife.WorkState.SettledAir;
import hafthold.quantity.Length;
import hafthold.source.Message;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The tables {@code [since]}, {@code [bench]} and {@code [[measured]]}: what became of a knife, and what was measured. */
final class HistoryKeys {
    static final List<String> TABLES = List.of("since", "bench", "measured");
    private static final List<String> POINTS =
            Arrays.stream(MeasuringPoint.values()).map(MeasuringPoint::word).toList();
    private static final Length USUAL_ERROR = Length.ofMillimetres(0.05);
    private static final double LARGEST_STEP = 5e-3;
    private static final String ON = "on";
    private static final String BACK = "back";

    private HistoryKeys() {}

    /**
     * Reads the tables.
     *
     * @param made state at final sanding, whose air stands in for that of the bench
     */
    static KnifeHistory read(TomlSection file, WorkState made) {
        TomlSection since = file.section("since");
        since.allows(List.of("finished", "delivered", "suspected"));
        List<MeasuredStep> measured = measured(file);
        LocalDate first = measured.stream()
                .map(MeasuredStep::on)
                .min(Comparator.naturalOrder())
                .orElseThrow();
        Optional<LocalDate> finished = since.day("finished");
        if (finished.filter(first::isBefore).isPresent()) {
            throw since.fault("finished", "a day before the first measuring, " + first);
        }
        LocalDate usual = first.minusYears(1);
        LocalDate delivered = since.or(
                "delivered",
                since.day("delivered"),
                finished.filter(usual::isBefore).orElse(usual),
                Message.of(
                        finished.filter(usual::isBefore).isPresent()
                                ? "taken.day-finished"
                                : "taken.year-before-measured"));
        if (delivered.isAfter(first)) {
            throw since.fault("delivered", "a day before the first measuring, " + first);
        }
        LocalDate start = since.or("finished", finished, delivered, Message.of("taken.day-delivered"));
        if (ChronoUnit.DAYS.between(start, first) > KnifeHistory.MOST_DAYS) {
            throw since.fault("finished", "a day within 20 years of the first measuring");
        }
        Optional<BenchRest> bench =
                file.has("bench") ? Optional.of(bench(file.section("bench"), made)) : Optional.empty();
        return file.has("bench")
                ? file.section("bench")
                        .build(() -> new KnifeHistory(start, delivered, bench, measured, since.texts("suspected")))
                : since.build(() -> new KnifeHistory(start, delivered, bench, measured, since.texts("suspected")));
    }

    private static BenchRest bench(TomlSection bench, WorkState made) {
        bench.allows(List.of(BACK, "humidity", "temperature", "checked"));
        LocalDate back = bench.required(BACK, bench.day(BACK), "the day the knife came back, such as 2026-08-03");
        SettledAir usual = made instanceof SettledAir air ? air : null;
        return new BenchRest(
                back,
                usual == null
                        ? bench.required(
                                "humidity", bench.quantity("humidity", QuantityForm.HUMIDITY), "the air of the bench")
                        : bench.or(
                                "humidity",
                                bench.quantity("humidity", QuantityForm.HUMIDITY),
                                usual.humidity(),
                                Message.of("taken.as-made")),
                bench.or(
                        "temperature",
                        bench.quantity(
                                "temperature", QuantityForm.TEMPERATURE, WorkState::isWorkable, WorkState.WORKABLE),
                        made.temperature(),
                        Message.of("taken.as-made")),
                bench.or("checked", bench.flag("checked"), false, Message.of("taken.unchecked")));
    }

    private static List<MeasuredStep> measured(TomlSection file) {
        List<MeasuredStep> steps = new ArrayList<>();
        for (TomlSection one : file.oneOrMore("measured")) {
            if (one.has("weight")) {
                throw one.problem(
                        "weight",
                        "a claim is judged by steps; beside the steel, what a scale takes up is too little to weigh."
                                + " Take it out, and measure an edge or the pin heads");
            }
            one.allows(Stream.concat(Stream.of(ON, "error"), POINTS.stream()).toList());
            LocalDate on = one.required(ON, one.day(ON), "the day it was measured, such as 2026-08-10");
            Length error = one.or("error", SizeRange.MEASURING_ERROR, USUAL_ERROR);
            int before = steps.size();
            for (MeasuringPoint point : MeasuringPoint.values()) {
                one.text(point.word())
                        .ifPresent(typed -> steps.add(new MeasuredStep(
                                on,
                                point,
                                StepWords.read(point, typed)
                                        .filter(step -> Math.abs(step.metres()) <= LARGEST_STEP)
                                        .orElseThrow(() -> one.fault(
                                                point.word(), StepWords.expectation(point) + "; 5 mm at most")),
                                error)));
            }
            if (one.has("edges") && (one.has("edge_left") || one.has("edge_right"))) {
                throw one.problem("edges", "it is the mean of both sides; give it, or each side alone");
            }
            if (steps.size() == before) {
                throw one.problem(ON, "nothing was measured on that day; add one of " + String.join(", ", POINTS));
            }
        }
        if (steps.isEmpty()) {
            throw file.problem(
                    "measured",
                    "what was measured, and when? Add a line [[measured]] and below it on = 2026-08-10 and"
                            + " edges = \"0.2 mm shy\". A photo tells no step: have a steel rule laid over tang and"
                            + " scale and sheets of copy paper slid under it, 0.1 mm each, and say"
                            + " error = \"0.05 mm\"");
        }
        return steps;
    }
}
