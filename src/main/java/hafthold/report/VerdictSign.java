package hafthold.report;

import hafthold.decide.Tally;
import hafthold.decide.Verdict;
import java.util.Arrays;
import java.util.stream.Collectors;

/** Verdicts where there is room for two letters only: those their words begin with. */
final class VerdictSign {
    private static final int LETTERS = 2;

    private VerdictSign() {}

    /** Two letters, such as "st". */
    static String of(Verdict verdict) {
        return verdict.word().substring(0, LETTERS);
    }

    /** Every sign with its word, such as "st stays, ca care". */
    static String key() {
        return Arrays.stream(Verdict.values())
                .map(verdict -> of(verdict) + Paragraph.HOLD + verdict.word())
                .collect(Collectors.joining(", "));
    }

    /** Counts of the verdicts that occur, such as "3 stays, 1 care". */
    static String counts(Tally tally) {
        return Arrays.stream(Verdict.values())
                .filter(verdict -> tally.of(verdict) > 0)
                .map(verdict -> "" + tally.of(verdict) + Paragraph.HOLD + verdict.word())
                .collect(Collectors.joining(", "));
    }
}
