package hafthold.simulate;

/**
 * What a doubt does to a course of moisture as a whole: a factor on the isotherm stretches it; air that is damper all year
 * round shifts it by what the isotherm says at the year's mean air, since a constant part of the forcing passes through a
 * slab unchanged; a season drier or damper than the normal one shifts it in the same way by as much as the scale follows
 * the seasons at all, most at its own driest or dampest and in proportion between.
 *
 * @param factor multiplies all moisture
 * @param shift added all year round before that, kg/kg
 * @param drySeason added at the driest, kg/kg at rest
 * @param dampSeason added at the dampest, kg/kg at rest
 * @param seasons from the driest to the dampest season at rest, kg/kg
 */
record CourseChange(double factor, double shift, double drySeason, double dampSeason, double seasons) {
    /** Nothing changes. */
    static final CourseChange NONE = new CourseChange(1, 0, 0, 0, 0);

    private static final double NO_SEASONS = 1e-4;

    /** Only the factor. */
    static CourseChange stretch(double factor) {
        return new CourseChange(factor, 0, 0, 0, 0);
    }

    /** Changes moisture contents in place. */
    void applyTo(double[] course) {
        Swing span = Swing.of(course);
        double least = span.least();
        double swing = span.most() - least;
        double follows = seasons > NO_SEASONS ? Math.min(1, swing / seasons) : 1;
        double always = follows * drySeason + shift;
        double perSwing = swing > 0 ? follows * (dampSeason - drySeason) / swing : 0;
        for (int i = 0; i < course.length; i++) {
            double changed = factor * (course[i] + always + perSwing * (course[i] - least));
            course[i] = changed < 0 ? 0 : changed;
        }
    }

    /** Changes first moments in place. */
    void applyToMoment(double[] moment) {
        for (int i = 0; i < moment.length; i++) {
            moment[i] *= factor;
        }
    }
}
