package hafthold.knife;

import hafthold.quantity.Length;

/**
 * A full-tang handle with one scale a side, as far as free movement needs it.
 *
 * @param length from bolster to butt
 * @param tangWidth across the tang, edge to edge: the width of the scale when flush
 * @param scaleThickness from tang to outer face
 * @param pinDiameter diameter of the pins
 * @param openClearance hole minus pin diameter that stays open or is filled with something soft; clearance filled with
 *     hard epoxy counts as none
 * @param pinSpacing between the outermost pins
 */
public record Handle(
        Length length,
        Length tangWidth,
        Length scaleThickness,
        Length pinDiameter,
        Length openClearance,
        Length pinSpacing) {

    private static final Length LONGEST = Length.ofMillimetres(600);
    private static final Length WIDEST = Length.ofMillimetres(120);
    private static final Length THICKEST = Length.ofMillimetres(40);

    /** Rejects sizes that no handle has. */
    public Handle {
        requireSize("length", length, LONGEST);
        requireSize("tang width", tangWidth, WIDEST);
        requireSize("scale thickness", scaleThickness, THICKEST);
        requireSize("pin diameter", pinDiameter, WIDEST);
        requireSize("pin spacing", pinSpacing, LONGEST);
        if (openClearance.metres() < 0) {
            throw new IllegalArgumentException(
                    "clearance must be zero or more, got " + openClearance.millimetres() + " mm");
        }
        if (pinDiameter.metres() >= tangWidth.metres()) {
            throw new IllegalArgumentException("a pin of " + pinDiameter.millimetres() + " mm does not fit a tang of "
                    + tangWidth.millimetres() + " mm");
        }
        if (pinSpacing.metres() >= length.metres()) {
            throw new IllegalArgumentException("pins " + pinSpacing.millimetres() + " mm apart do not fit a handle of "
                    + length.millimetres() + " mm");
        }
    }

    private static void requireSize(String what, Length length, Length most) {
        if (!(length.metres() > 0) || length.metres() > most.metres()) {
            throw new IllegalArgumentException(what + " must be more than 0 and at most " + most.millimetres()
                    + " mm, got " + length.millimetres() + " mm; is the unit right?");
        }
    }
}
