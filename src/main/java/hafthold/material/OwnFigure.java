package hafthold.material;

import hafthold.quantity.Band;

/**
 * A figure that the shop measured itself.
 *
 * @param property what it is
 * @param axis for which direction
 * @param band in SI, its ends the 5 and 95 % points
 */
public record OwnFigure(Property property, Axis axis, Band band) {}
