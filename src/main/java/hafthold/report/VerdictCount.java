package hafthold.report;

import hafthold.decide.Comparison;
import hafthold.decide.Verdict;
import java.util.ArrayList;
import java.util.List;

/** How many materials got which verdict, in one sentence. */
final class VerdictCount {
    private static final Wording WORDS = Wording.english();

    private VerdictCount() {}

    static String sentence(Comparison comparison) {
        List<String> parts = new ArrayList<>();
        for (Verdict verdict : Verdict.values()) {
            long count = comparison.ranked().stream()
                    .filter(answer -> answer.verdict() == verdict)
                    .count();
            if (count > 0) {
                parts.add(WORDS.say(
                        "bench.count." + verdict.word() + (count == 1 ? ".one" : ".many"),
                        "count",
                        Long.toString(count)));
            }
        }
        int all = comparison.ranked().size();
        return WORDS.say(
                all == 1 ? "bench.count.one" : "bench.count.many", "count", Integer.toString(all), "list", list(parts));
    }

    private static String list(List<String> parts) {
        int last = parts.size() - 1;
        return last > 0
                ? WORDS.say(
                        "bench.count.list", "first", String.join(", ", parts.subList(0, last)), "last", parts.get(last))
                : String.join("", parts);
    }
}
