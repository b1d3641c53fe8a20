package hafthold.air;

import hafthold.source.PublishedModel;

/**
 * Vapour that people, cooking and washing add to a room, as internal humidity classes give it: constant in frost, falling
 * linearly to an end value at 20 C outdoors, constant above.
 *
 * <p>The classes are upper limits for design; typical homes run at about half of class 2. Class values second-hand. The
 * value at 20 C is ours: the standard's lines are not agreed on there in the places we could read.
 *
 * @param frostPascals excess at 0 C outdoors and below, pascals, 0 to 3000
 * @param summerPascals excess at 20 C outdoors and above, pascals, 0 to {@code frostPascals}
 */
@PublishedModel(
        source = "en-iso-13788",
        locator = "annex A, internal humidity classes",
        validity = "dwellings ventilated to the outdoors; daily means")
public record IndoorMoistureExcess(double frostPascals, double summerPascals) {
    /** Class 2 at 0 C, pascals: dwellings with few people and good airing. */
    public static final double CLASS_2_FROST_PASCALS = 540;
    /** Class 3 at 0 C, pascals: dwellings whose use is not known. */
    public static final double CLASS_3_FROST_PASCALS = 810;
    /** Class 4 at 0 C, pascals: sports halls, kitchens, canteens. */
    public static final double CLASS_4_FROST_PASCALS = 1080;
    /** End value that we take at 20 C, pascals. */
    public static final double DEFAULT_SUMMER_PASCALS = 100;

    private static final double SUMMER_CELSIUS = 20;

    /** Rejects figures out of range. */
    public IndoorMoistureExcess {
        if (!(summerPascals >= 0 && summerPascals <= frostPascals && frostPascals <= 3000)) {
            throw new IllegalArgumentException("needs 0 <= excess in summer <= excess in frost <= 3000 Pa, got "
                    + summerPascals + " and " + frostPascals + " Pa");
        }
    }

    /** Half of class 2: a typical home. */
    public static IndoorMoistureExcess typicalHome() {
        return new IndoorMoistureExcess(CLASS_2_FROST_PASCALS, DEFAULT_SUMMER_PASCALS).times(0.5);
    }

    /** The same line multiplied by a factor. */
    public IndoorMoistureExcess times(double factor) {
        return new IndoorMoistureExcess(factor * frostPascals, factor * summerPascals);
    }

    /** Excess in pascals at an outdoor temperature averaged over the day, degrees Celsius. */
    public double pascals(double outdoorMeanCelsius) {
        double share = Math.min(1, Math.max(0, outdoorMeanCelsius / SUMMER_CELSIUS));
        return frostPascals + share * (summerPascals - frostPascals);
    }
}
