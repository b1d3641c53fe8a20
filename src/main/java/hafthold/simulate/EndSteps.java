package hafthold.simulate;

import hafthold.quantity.Band;

/**
 * The length of the scale against that of the steel over the year; metres, zero or more.
 *
 * @param lengthMismatch unglued scale longer or shorter than the steel over the handle's length, either way
 * @param shortBy scale short of the steel at bolster and butt, each end, at mid-thickness of the bonded scale
 * @param longBy scale beyond the steel at bolster and butt, each end, likewise
 */
public record EndSteps(Band lengthMismatch, Band shortBy, Band longBy) {

    /** The worse of a year and its events. */
    EndSteps worse(EndSteps event) {
        return new EndSteps(
                EventReading.worse(lengthMismatch, event.lengthMismatch),
                EventReading.worse(shortBy, event.shortBy),
                EventReading.worse(longBy, event.longBy));
    }
}
