package hafthold.knife;

import hafthold.quantity.Length;

/**
 * How far a handle may move before it no longer belongs in a class of work; a workshop's judgement, editable.
 *
 * @param name class of work, such as good-new
 * @param shy steel proud of the scale, a side
 * @param proud scale proud of the steel, a side
 * @param pinHead pin head above the face
 * @param gap open gap beside a pin or at a joint
 */
public record FitLimits(String name, Length shy, Length proud, Length pinHead, Length gap) {}
