package hafthold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hafthold.decide.Likelihood;
import hafthold.decide.Verdict;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A verdict that most samples do not bear out says so. */
class DriverWordsTest {
    private static final DriverWords WORDS = new DriverWords(BenchStyle.ENGLISH);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0.83 | CARE | holds in 83 of 100 samples",
                "0.50 | CARE | holds in 50 of 100 samples",
                "0.41 | CARE | holds in 41 of 100 samples; less likely than not: at the book figures care, in most"
                        + " samples change or worse",
                "0.30 | REFUSE | holds in 30 of 100 samples; less likely than not: at the book figures refuse, in most"
                        + " samples change or better"
            })
    void saysWhatMostSamplesSay(double share, Verdict verdict, String expected) {
        Likelihood likelihood = new Likelihood(100, OptionalDouble.of(share), List.of());
        assertEquals(Optional.of(expected), WORDS.holds(likelihood, verdict));
    }

    @Test
    void nothingIsSaidOfWhatCouldNotBeJudged() {
        Likelihood likelihood = new Likelihood(100, OptionalDouble.of(0.3), List.of());
        assertEquals(Optional.empty(), WORDS.holds(likelihood, Verdict.UNKNOWN));
        assertEquals(Optional.empty(), WORDS.holds(Likelihood.NONE, Verdict.CARE));
    }
}
