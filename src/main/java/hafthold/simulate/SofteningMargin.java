package hafthold.simulate;

import hafthold.quantity.Band;

/**
 * How near the heat comes to what softens first.
 *
 * @param kelvin lowest service or softening temperature less the hottest air or face, K; below zero where it is passed
 * @param material name of what sets it
 */
public record SofteningMargin(Band kelvin, String material) {}
