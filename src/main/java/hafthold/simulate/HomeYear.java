package hafthold.simulate;

/**
 * The year that repeats where a knife lives, day by day from 1 January.
 *
 * @param edge edge of the scales since final sanding, mean of both sides, m, positive proud
 * @param moistureFraction mean moisture content of the leading part of the scale, kg/kg
 */
public record HomeYear(double[] edge, double[] moistureFraction) {}
