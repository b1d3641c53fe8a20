package hafthold.simulate;

import java.util.List;

/**
 * The worst differences between the parts of a scale over a year, as if each were free.
 *
 * @param thicknessStrain largest difference of strain away from the tang: times thickness, the ridge on the face
 * @param lineStrain largest difference of strain along the line of the joint, lengthwise or through the thickness
 */
record JointExtremes(double thicknessStrain, double lineStrain) {

    /**
     * Follows the parts; both differences are 0 for a single part.
     *
     * @param warmth temperature above that at finish, K, by sample
     */
    static JointExtremes of(List<PartMotion> parts, double[] warmth) {
        double through = 0;
        double along = 0;
        for (int sample = 0; parts.size() > 1 && sample < warmth.length; sample++) {
            double warmer = warmth[sample];
            double thickest = Double.NEGATIVE_INFINITY;
            double thinnest = Double.POSITIVE_INFINITY;
            double longest = Double.NEGATIVE_INFINITY;
            double shortest = Double.POSITIVE_INFINITY;
            for (PartMotion part : parts) {
                double wetter = part.moistureChange(sample);
                double thickness = part.thickness().strain(wetter, warmer);
                double length = part.length().strain(wetter, warmer);
                thickest = Math.max(thickest, thickness);
                thinnest = Math.min(thinnest, thickness);
                longest = Math.max(longest, length);
                shortest = Math.min(shortest, length);
            }
            through = Math.max(through, thickest - thinnest);
            along = Math.max(along, longest - shortest);
        }
        return new JointExtremes(through, Math.max(through, along));
    }
}
