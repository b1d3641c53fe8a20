package hafthold.simulate;

import hafthold.material.HalpinTsaiFilling;

/**
 * One way a block may be filled.
 *
 * @param dryDensity of the plain wood, dry mass per volume, kg/m3
 * @param resinDensity kg/m3
 * @param level share of the lumens filled where there is resin
 * @param reached share of the volume that has resin, counted from the outside; 1 where it is the same all through
 * @param waterBefore moisture content when it went into the resin, kg/kg
 * @param waterAfter moisture content of its wood since
 */
record FillDraw(
        double dryDensity, double resinDensity, double level, double reached, double waterBefore, double waterAfter) {
    private static final double HALF = 0.5;
    private static final double HARDLY = 0.15;
    private static final double ALL_BUT = 0.95;

    /** Share of the volume that is open in the plain wood. */
    double lumenFraction() {
        return HalpinTsaiFilling.lumenFraction(dryDensity);
    }

    /** Share of all lumens that is filled. */
    double filledFraction() {
        return level * reached;
    }

    /** Share of the lumens in the middle that is filled. */
    double coreFilledFraction() {
        return reached < ALL_BUT ? 0 : level;
    }

    /** Density with so much of the lumens filled, kg/m3. */
    double density(double filled) {
        return dryDensity * (1 + waterAfter) + filled * lumenFraction() * resinDensity;
    }

    FillGrade grade() {
        if (filledFraction() < HARDLY) {
            return FillGrade.LIGHT;
        }
        if (reached < ALL_BUT) {
            return FillGrade.CORE_OPEN;
        }
        return level > HALF ? FillGrade.THROUGH : FillGrade.PART;
    }
}
