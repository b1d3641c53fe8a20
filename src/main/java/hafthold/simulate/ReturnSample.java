package hafthold.simulate;

/**
 * One way that a returned knife may have gone, every figure drawn from its range.
 *
 * @param cause what lies behind it
 * @param number number of the draw
 * @param steps what would then have been measured, m, one a measured step, in its order
 * @param byUse part of it that an event made, likewise
 */
public record ReturnSample(Cause cause, int number, double[] steps, double[] byUse) {}
