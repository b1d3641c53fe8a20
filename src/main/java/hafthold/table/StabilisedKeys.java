package hafthold.table;

import hafthold.knife.FillTrial;
import hafthold.knife.FillTrial.Soak;
import hafthold.quantity.Mass;
import hafthold.quantity.TimeSpan;
import java.util.List;
import java.util.Optional;

/** The table {@code [block.stabilised]}: what was tried on stock with resin in it. */
final class StabilisedKeys {
    private static final double LONGEST_DAYS = 30;
    private static final String SOAKED = "soaked";
    private static final String SOAK_BEFORE = "soak_before";
    private static final String SOAK_AFTER = "soak_after";
    private static final List<String> FLOATS = List.of("floats", "sinks");

    private StabilisedKeys() {}

    static FillTrial read(TomlSection tests) {
        tests.allows(List.of("before", "after", "block", "middle", SOAKED, SOAK_BEFORE, SOAK_AFTER));
        Optional<Mass> before = BlockKeys.weight(tests, "before");
        Optional<Mass> after = BlockKeys.weight(tests, "after");
        FillTrial read = tests.build(
                () -> new FillTrial(before, after, floats(tests, "block"), floats(tests, "middle"), soak(tests)));
        if (before.isPresent() && after.isEmpty()) {
            throw tests.problem("before", "the weight before says nothing without the one after: add after = \"...\"");
        }
        if (read.isEmpty()) {
            throw tests.problem(
                    "after",
                    "nothing was tried; add before and after (weights), block = \"sinks\", middle = \"floats\","
                            + " or a soak");
        }
        return read;
    }

    private static Optional<Boolean> floats(TomlSection tests, String key) {
        return tests.word(key, FLOATS, word -> word).map(FLOATS.get(0)::equals);
    }

    private static Optional<Soak> soak(TomlSection tests) {
        if (!tests.has(SOAKED) && !tests.has(SOAK_BEFORE) && !tests.has(SOAK_AFTER)) {
            return Optional.empty();
        }
        TimeSpan time = tests.required(
                SOAKED,
                tests.quantity(
                        SOAKED,
                        QuantityForm.SPAN,
                        span -> span.days() > 0 && span.days() <= LONGEST_DAYS,
                        "a time of more than 0 and at most 30 d"),
                "how long it lay under water, such as \"24 h\"");
        Mass dry = tests.required(SOAK_BEFORE, BlockKeys.weight(tests, SOAK_BEFORE), "its weight before the soak");
        Mass wet = tests.required(SOAK_AFTER, BlockKeys.weight(tests, SOAK_AFTER), "its weight after the soak");
        return Optional.of(new Soak(dry, wet, time.seconds()));
    }
}
