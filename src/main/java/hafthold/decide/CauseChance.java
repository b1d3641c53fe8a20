package hafthold.decide;

import hafthold.simulate.Cause;

/**
 * A cause and how likely it is, given what was measured and how often such causes are thought to lie behind a return.
 *
 * @param cause the cause
 * @param before chance before anything was measured, a judgement
 * @param after chance afterwards
 * @param fits whether it explains every step by itself
 */
public record CauseChance(Cause cause, double before, double after, boolean fits) {}
