package hafthold.simulate;

/** What the pins find in the year: the worst over all hours and all parts of a scale, as any part may hold a pin. */
final class PartExtremes {
    private final Conditions conditions;
    private double opening = Double.NEGATIVE_INFINITY;
    private double closing = Double.NEGATIVE_INFINITY;
    private double headProud;
    private double headSunk;
    private double crackUse;

    PartExtremes(Conditions conditions) {
        this.conditions = conditions;
    }

    /**
     * Leads one part through the year and adds its share to the strains of the whole scale.
     *
     * @param warmth temperature above that at finish, K, by sample
     */
    void follow(PartMotion part, double[] warmth, double[] widthStrain, double[] lengthStrain) {
        double pin = conditions.pinExpansion().value();
        double most = Double.NEGATIVE_INFINITY;
        double least = Double.POSITIVE_INFINITY;
        double thickest = 0;
        double thinnest = 0;
        for (int i = 0; i < widthStrain.length; i++) {
            double warmer = warmth[i];
            double wetter = part.moistureChange(i);
            double across = part.width().strain(wetter, warmer);
            double along = part.length().strain(wetter, warmer);
            double through = part.thickness().strain(wetter, warmer) - pin * warmer;
            widthStrain[i] += part.share() * across;
            lengthStrain[i] += part.share() * along;
            // Plain comparisons: Math.max and Math.min are calls until the slow compiler has come by.
            double opens = (across > along ? across : along) - pin * warmer;
            double closes = (across < along ? across : along) - pin * warmer;
            most = opens > most ? opens : most;
            least = closes < least ? closes : least;
            thickest = through > thickest ? through : thickest;
            thinnest = through < thinnest ? through : thinnest;
        }
        double thickness = conditions.handle().scaleThickness().metres();
        headSunk = Math.max(headSunk, thickness * thickest);
        headProud = Math.max(headProud, -thickness * thinnest);
        opening = Math.max(opening, most);
        closing = Math.max(closing, -least);
        crackUse = Math.max(crackUse, part.crackPerStrain() * squeeze(-least) / diameter());
    }

    /** Widest opening beside a pin, metres. */
    double pinGap() {
        return Math.max(0, diameter() * opening + clearance());
    }

    /** Largest overlap of pin and hole, metres. */
    double pinSqueeze() {
        return squeeze(closing);
    }

    /** Tension across the grain over the strength. */
    double crackUse() {
        return crackUse;
    }

    /** Pin head above the face, metres. */
    double headProud() {
        return headProud;
    }

    /** Pin head below the face, metres. */
    double headSunk() {
        return headSunk;
    }

    private double squeeze(double closingStrain) {
        return Math.max(0, diameter() * closingStrain - clearance());
    }

    private double diameter() {
        return conditions.handle().pinDiameter().metres();
    }

    private double clearance() {
        return conditions.handle().openClearance().metres();
    }
}
