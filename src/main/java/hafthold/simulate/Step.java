package hafthold.simulate;

import hafthold.quantity.Band;

/**
 * Edge of the scale against the tang line, a side, the year's worst of either sign; metres, zero or more.
 *
 * @param shy steel proud of the scale
 * @param proud scale proud of the steel
 */
public record Step(Band shy, Band proud) {

    /** Always flush. */
    public static final Step FLUSH = new Step(Band.exact(0), Band.exact(0));

    /** The larger of both, by its value. */
    public Band larger() {
        return isRatherProud() ? proud : shy;
    }

    /** True where the scale stands proud by more than it falls shy. */
    public boolean isRatherProud() {
        return proud.value() > shy.value();
    }

    /** The worse of a year and its events. */
    Step worse(Step event) {
        return new Step(EventReading.worse(shy, event.shy), EventReading.worse(proud, event.proud));
    }
}
