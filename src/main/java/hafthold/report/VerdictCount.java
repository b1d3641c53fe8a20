package hafthold.report;

import hafthold.decide.Comparison;
import hafthold.decide.Verdict;
import java.util.ArrayList;
import java.util.List;

/** How many materials got which verdict, in one sentence. */
final class VerdictCount {
    private VerdictCount() {}

    static String sentence(Comparison comparison) {
        List<String> parts = new ArrayList<>();
        for (Verdict verdict : Verdict.values()) {
            long count = comparison.ranked().stream()
                    .filter(answer -> answer.verdict() == verdict)
                    .count();
            if (count > 0) {
                parts.add(count + " " + words(verdict, count == 1));
            }
        }
        int last = parts.size() - 1;
        String list = last > 0
                ? String.join(", ", parts.subList(0, last)) + " and " + parts.get(last)
                : String.join("", parts);
        int all = comparison.ranked().size();
        return "Of " + all + (all == 1 ? " material " : " materials ") + list + ".";
    }

    private static String words(Verdict verdict, boolean isOne) {
        return switch (verdict) {
            case STAYS -> isOne ? "stays put" : "stay put";
            case CARE -> isOne ? "needs care" : "need care";
            case CHANGE -> isOne ? "needs a changed build" : "need a changed build";
            case REFUSE -> isOne ? "does not belong here" : "do not belong here";
            case UNKNOWN -> "cannot be judged";
        };
    }
}
