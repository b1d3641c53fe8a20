package hafthold.simulate;

/**
 * The air that a block is to be at rest in before it is worked.
 *
 * @param humidityFraction relative humidity, 0 to 1
 * @param celsius temperature of the box, degrees Celsius
 * @param withinFraction how near to rest mean and core are to be, kg/kg, positive
 */
public record StockAim(double humidityFraction, double celsius, double withinFraction) {}
