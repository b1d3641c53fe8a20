package hafthold.cli;

import hafthold.knife.Handle;
import hafthold.quantity.Length;
import picocli.CommandLine.Option;

/** Sizes of the handle; each has a usual value. */
final class HandleOptions {
    /** Outermost pins usually stand this share of the handle's length apart (common practice, no source). */
    private static final double PIN_SPACING_SHARE = 0.64;

    @Option(
            names = "--width",
            paramLabel = "LENGTH",
            defaultValue = "26 mm",
            description = "width of tang and scale, edge to edge (default: ${DEFAULT-VALUE})")
    private Length width;

    @Option(
            names = "--thickness",
            paramLabel = "LENGTH",
            defaultValue = "8 mm",
            description = "thickness of one scale (default: ${DEFAULT-VALUE})")
    private Length thickness;

    @Option(
            names = "--length",
            paramLabel = "LENGTH",
            defaultValue = "110 mm",
            description = "length of the handle (default: ${DEFAULT-VALUE})")
    private Length length;

    @Option(
            names = "--tang",
            paramLabel = "LENGTH",
            defaultValue = "4 mm",
            description = "thickness of the tang that the scales are glued to (default: ${DEFAULT-VALUE})")
    private Length tang;

    @Option(
            names = "--pin",
            paramLabel = "LENGTH",
            defaultValue = "6 mm",
            description = "diameter of the pins (default: ${DEFAULT-VALUE})")
    private Length pin;

    @Option(
            names = "--clearance",
            paramLabel = "LENGTH",
            defaultValue = "0 mm",
            description = "hole minus pin that stays open or holds something soft; filled with hard epoxy it"
                    + " counts as none (default: ${DEFAULT-VALUE})")
    private Length clearance;

    /** Thickness of the whole tang. */
    Length tangThickness() {
        return tang;
    }

    /** The handle that was described. */
    Handle handle() {
        try {
            return new Handle(
                    length, width, thickness, pin, clearance, new Length(length.metres() * PIN_SPACING_SHARE));
        } catch (IllegalArgumentException e) {
            throw new WrongUsageException(e.getMessage());
        }
    }
}
