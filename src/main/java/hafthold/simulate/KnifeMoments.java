package hafthold.simulate;

import java.util.List;

/**
 * A knife at a few moments: moisture of its parts and its temperature.
 *
 * @param scales for each side of the knife one course a part, one sample a moment
 * @param liners one course a liner
 * @param celsius temperature at each moment
 */
record KnifeMoments(List<List<LayeredCourse>> scales, List<LayeredCourse> liners, double[] celsius) {}
