package hafthold.report.chart;

/**
 * What zero means in a picture of movement, and either side of it.
 *
 * @param at word at zero
 * @param below word for what lies below or to the left
 * @param above word for what lies above or to the right
 */
public record ZeroLine(String at, String below, String above) {}
