package hafthold.report;

import hafthold.decide.Tally;
import hafthold.decide.Verdict;
import java.util.Arrays;

/**
 * Verdicts where there is room for two letters only.
 *
 * @param style language and units
 */
record VerdictSign(BenchStyle style) {

    /** Two letters, such as "st". */
    String of(Verdict verdict) {
        return style.say("sign." + verdict.word());
    }

    /** Every sign with its word, such as "st stays, ca care". */
    String key() {
        return style.joined(
                "comma",
                Arrays.stream(Verdict.values())
                        .map(verdict -> of(verdict) + Paragraph.HOLD + style.verdict(verdict))
                        .toList());
    }

    /** Counts of the verdicts that occur, such as "3 stays, 1 care". */
    String counts(Tally tally) {
        return style.joined(
                "comma",
                Arrays.stream(Verdict.values())
                        .filter(verdict -> tally.of(verdict) > 0)
                        .map(verdict -> "" + tally.of(verdict) + Paragraph.HOLD + style.verdict(verdict))
                        .toList());
    }
}
