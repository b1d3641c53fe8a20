package hafthold.simulate;

/**
 * Steps along the edge of the tang over the year.
 *
 * @param bonded at mid-thickness of the bonded scale
 * @param free likewise, the scale unglued
 * @param tangLine of the bonded scale over the 2 mm next to the tang
 */
public record EdgeSteps(Step bonded, Step free, Step tangLine) {

    /** No edge to speak of, as of a stack. */
    static final EdgeSteps NONE = new EdgeSteps(Step.FLUSH, Step.FLUSH, Step.FLUSH);

    /** The worse of a year and its events. */
    EdgeSteps worse(EdgeSteps event) {
        return new EdgeSteps(bonded.worse(event.bonded), free.worse(event.free), tangLine.worse(event.tangLine));
    }
}
