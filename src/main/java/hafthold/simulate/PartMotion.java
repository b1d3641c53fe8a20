package hafthold.simulate;

import hafthold.material.Axis;
import hafthold.material.Cut;
import hafthold.material.Material;

/**
 * How one part of a scale strains in the directions of the handle: so much per moisture content, so much per kelvin.
 *
 * @param share fraction of the width and length that the part takes
 * @param length strain along the handle
 * @param width strain across the tang
 * @param thickness strain away from the tang
 * @param crackPerStrain use of strength per squeeze strain on a pin, 0 where it is not known
 * @param course moisture content hour by hour
 * @param finishFraction moisture content at finish, kg/kg, no more than {@code stillAboveFraction}
 * @param stillAboveFraction moisture content above which nothing moves, kg/kg
 */
record PartMotion(
        double share,
        Rate length,
        Rate width,
        Rate thickness,
        double crackPerStrain,
        MoistureCourse course,
        double finishFraction,
        double stillAboveFraction) {

    /**
     * A strain in proportion to moisture and temperature.
     *
     * @param perMoisture strain per kg/kg
     * @param perKelvin strain per kelvin
     */
    record Rate(double perMoisture, double perKelvin) {
        double strain(double moistureChange, double temperatureChange) {
            return perMoisture * moistureChange + perKelvin * temperatureChange;
        }

        /** Rate in a direction that takes these shares of the principal ones. */
        static Rate of(Cut.Shares shares, Rate along, Rate across, Rate through) {
            return new Rate(
                    shares.mean(along.perMoisture, across.perMoisture, through.perMoisture),
                    shares.mean(along.perKelvin, across.perKelvin, through.perKelvin));
        }

        /** This rate with a share of it taken from another. */
        Rate mixed(double share, Rate other) {
            return new Rate(
                    (1 - share) * perMoisture + share * other.perMoisture,
                    (1 - share) * perKelvin + share * other.perKelvin);
        }
    }

    /** Moisture content above that at finish, as far as it moves the material, kg/kg. */
    double moistureChange(int hour) {
        double fraction = course.fraction(hour);
        return (fraction < stillAboveFraction ? fraction : stillAboveFraction) - finishFraction;
    }

    /** As {@link #moistureChange(int)} at every sample of the half of the scale at the tang or of that at the air, kg/kg. */
    double[] halfMoistureChanges(boolean atTheAir) {
        double[] changes = course.halfFractions(atTheAir);
        for (int i = 0; i < changes.length; i++) {
            changes[i] = (changes[i] < stillAboveFraction ? changes[i] : stillAboveFraction) - finishFraction;
        }
        return changes;
    }

    /**
     * The motion of a material in a cut.
     *
     * @param lie how it lies
     * @param share fraction of the width and length that it takes
     * @param finishFraction moisture content at finish, kg/kg
     * @param course moisture content hour by hour
     * @param crackPerStrain use of strength per squeeze strain on a pin
     */
    static PartMotion of(
            GrainLie lie,
            double share,
            double finishFraction,
            MoistureCourse course,
            double crackPerStrain,
            Doubt doubt) {
        Material material = lie.material();
        Cut cut = lie.cut();
        double cap = material.water().isPresent()
                ? material.water().get().swelling().stillAboveFraction()
                : Double.POSITIVE_INFINITY;
        double from = Math.min(finishFraction, cap);
        GrainLie.Directions directions = lie.under(doubt);
        Rate along = rate(material, Axis.ALONG, from, doubt);
        Rate across = rate(material, Axis.ACROSS, from, doubt);
        Rate through = rate(material, Axis.THROUGH, from, doubt);
        Rate length = Rate.of(directions.length(), along, across, through);
        Rate width = Rate.of(directions.width(), along, across, through);
        Rate thickness = Rate.of(directions.thickness(), along, across, through);
        double out = doubt.runOutShare(material, cut);
        boolean endOn = cut == Cut.CROSS;
        Rate grain = endOn ? thickness : length;
        Rate one = endOn ? length : width;
        Rate other = endOn ? width : thickness;
        Rate grainRun = grain.mixed(2 * out, one.mixed(0.5, other));
        Rate oneRun = one.mixed(out, grain);
        Rate otherRun = other.mixed(out, grain);
        return new PartMotion(
                share,
                endOn ? oneRun : grainRun,
                endOn ? otherRun : oneRun,
                endOn ? grainRun : otherRun,
                crackPerStrain * doubt.crackFactor(material),
                course,
                from,
                cap);
    }

    private static Rate rate(Material material, Axis axis, double from, Doubt doubt) {
        return new Rate(doubt.perMoisture(material, axis, from), doubt.perKelvin(material, axis));
    }
}
