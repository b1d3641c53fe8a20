package hafthold.simulate;

import hafthold.material.Axis;
import hafthold.material.Material;
import hafthold.material.Property;
import hafthold.source.Figure;
import java.util.Optional;

/**
 * What a glue line bears at a temperature: its room-temperature strength up to 23 C, half of it at the softening point,
 * a fifth above, on a straight line between (assumed; the sheets state one temperature only).
 *
 * @param shearPascals lap shear strength at 23 C
 * @param peelPascals strength in tension at 23 C, taken as large as in shear where the sheet has none
 * @param softensCelsius softening point
 */
record GlueStrength(double shearPascals, double peelPascals, double softensCelsius) {
    private static final double ROOM_CELSIUS = 23;
    private static final double LEFT_AT_SOFTENING = 0.5;
    private static final double LEFT_ABOVE = 0.2;

    /** Strength of an adhesive; empty where its sheet has none. */
    static Optional<GlueStrength> of(Material adhesive, Doubt doubt) {
        Optional<Figure> shear = adhesive.sheet().figure(Property.SHEAR_STRENGTH);
        double softens = adhesive.sheet()
                .figure(Property.SOFTENING_TEMPERATURE)
                .or(() -> adhesive.sheet().figure(Property.SERVICE_TEMPERATURE))
                .map(figure -> doubt.softening(adhesive, figure))
                .orElse(60.0);
        return shear.map(figure -> new GlueStrength(
                doubt.strength(adhesive, figure),
                adhesive.sheet()
                        .figure(Property.TENSION_STRENGTH, Axis.ANY)
                        .map(tension -> doubt.strength(adhesive, tension))
                        .orElse(doubt.strength(adhesive, figure)),
                softens));
    }

    /** Use of strength by a shear and a pull together (root of the sum of squares; pressure does no harm). */
    double use(double shear, double peel, double celsius) {
        double sheared = shear / shearPascals;
        double pulled = Math.max(0, peel) / peelPascals;
        return Math.sqrt(sheared * sheared + pulled * pulled) / left(celsius);
    }

    private double left(double celsius) {
        if (celsius <= ROOM_CELSIUS) {
            return 1;
        }
        if (celsius > softensCelsius) {
            return LEFT_ABOVE;
        }
        return 1 - (1 - LEFT_AT_SOFTENING) * (celsius - ROOM_CELSIUS) / (softensCelsius - ROOM_CELSIUS);
    }
}
