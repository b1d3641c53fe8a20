package hafthold.simulate;

/**
 * An input and its part in the doubt about an answer.
 *
 * @param input word
 * @param share of the variance of the answer that would be gone on average if the input were known, 0 to 1; shares of
 *     inputs that go together overlap
 * @param rankCorrelation Spearman's, of input and answer: above 0 where the answer grows with the input
 */
public record Driver(String input, double share, double rankCorrelation) {}
