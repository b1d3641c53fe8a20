package hafthold.report;

import hafthold.decide.Comparison;
import hafthold.decide.Verdict;
import java.util.ArrayList;
import java.util.List;

/** How many materials got which verdict, in one sentence. */
final class VerdictCount {
    private VerdictCount() {}

    static String sentence(BenchStyle style, Comparison comparison) {
        List<String> parts = new ArrayList<>();
        for (Verdict verdict : Verdict.values()) {
            long count = comparison.ranked().stream()
                    .filter(answer -> answer.verdict() == verdict)
                    .count();
            if (count > 0) {
                parts.add(style.counted("count." + verdict.word(), count));
            }
        }
        int all = comparison.ranked().size();
        return style.say(
                all == 1 ? "count.one" : "count.many", "count", Integer.toString(all), "list", list(style, parts));
    }

    private static String list(BenchStyle style, List<String> parts) {
        int last = parts.size() - 1;
        return last > 0
                ? style.say(
                        "count.list", "first", style.joined("comma", parts.subList(0, last)), "last", parts.get(last))
                : String.join("", parts);
    }
}
