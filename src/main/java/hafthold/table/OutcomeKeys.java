package hafthold.table;

import hafthold.knife.MeasuringPoint;
import hafthold.knife.StepOutcome;
import hafthold.quantity.Band;
import hafthold.quantity.Length;
import java.util.List;

/** A table {@code [[outcome]]}: what was foretold of a knife, and what was measured. */
final class OutcomeKeys {
    private OutcomeKeys() {}

    static StepOutcome read(TomlSection one) {
        one.allows(List.of("name", "low", "predicted", "high", "measured"));
        double low = step(one, "low");
        double predicted = step(one, "predicted");
        double high = step(one, "high");
        if (!(Math.min(low, high) <= predicted && predicted <= Math.max(low, high))) {
            throw one.fault("predicted", "a step between low and high");
        }
        if (low == high) {
            throw one.fault("high", "another step than low: the band that was told, such as 0.10 to 0.16 mm proud");
        }
        return new StepOutcome(
                one.text("name").orElse(""),
                new Band(Math.min(low, high), predicted, Math.max(low, high)),
                step(one, "measured"));
    }

    private static double step(TomlSection one, String key) {
        String typed = one.required(key, one.text(key), StepWords.expectation(MeasuringPoint.EDGES));
        return StepWords.read(MeasuringPoint.EDGES, typed)
                .map(Length::metres)
                .orElseThrow(() -> one.fault(key, StepWords.expectation(MeasuringPoint.EDGES)));
    }
}
