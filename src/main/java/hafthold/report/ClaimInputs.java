package hafthold.report;

import hafthold.decide.Claim;
import hafthold.knife.KnifeHistory;
import hafthold.knife.KnifeHistory.BenchRest;
import hafthold.quantity.Band;
import java.util.ArrayList;
import java.util.List;

/** What a claim was judged by, put into words: the knife as a fit has it, what became of it, what was measured. */
final class ClaimInputs {
    private ClaimInputs() {}

    /** Every input, the history first. */
    static List<FitInputs.Input> of(Claim claim, BenchStyle style) {
        ClaimWords words = new ClaimWords(style, claim);
        KnifeHistory history = claim.history();
        List<FitInputs.Input> inputs = new ArrayList<>();
        inputs.add(input(style, "finished", words.day(history.finished())));
        inputs.add(input(style, "delivered", words.day(history.delivered())));
        history.bench().ifPresent(bench -> inputs.add(input(style, "back", bench(bench, words, style))));
        if (!history.suspected().isEmpty()) {
            inputs.add(input(
                    style,
                    "suspected",
                    style.joined(
                            "comma",
                            history.suspected().stream()
                                    .map(id -> style.named("event", id))
                                    .toList())));
        }
        history.measured()
                .forEach(measured -> inputs.add(input(
                        style,
                        "reading",
                        style.say(
                                "claim.input.reading",
                                "day",
                                words.day(measured.on()),
                                "point",
                                words.point(measured.point()),
                                "step",
                                words.step(measured),
                                "error",
                                new BenchLength(Band.exact(measured.error().metres())).hundredths(style)))));
        inputs.addAll(FitInputs.of(claim.knife(), claim.home(), style));
        return inputs;
    }

    private static String bench(BenchRest bench, ClaimWords words, BenchStyle style) {
        return style.say(
                "claim.input.bench",
                "day",
                words.day(bench.since()),
                "temperature",
                style.plain(bench.temperature().celsius()),
                "humidity",
                style.plain(bench.humidity().percent()),
                "checked",
                style.say(bench.checked() ? "claim.input.checked" : "claim.input.unchecked"));
    }

    private static FitInputs.Input input(BenchStyle style, String key, String value) {
        return new FitInputs.Input(style.say("input." + key), value);
    }
}
