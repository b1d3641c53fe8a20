package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.knife.Handle;
import hafthold.material.Finish;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.source.Figure;

/**
 * Everything about an order but the material: the handle, the state it is finished in, the air it goes to.
 *
 * @param handle sizes
 * @param madeTemperature temperature of the workshop at final sanding
 * @param madeHumidity humidity the scale has settled to at final sanding
 * @param finish finish on the outer face
 * @param air the customer's year where the knife lives, hourly, closed
 * @param airHumidityDoubt how far its humidity may be off all year round, fraction of relative humidity
 * @param tangExpansion linear thermal expansion of the tang, 1/K
 * @param pinExpansion linear thermal expansion of the pins, 1/K
 */
public record Conditions(
        Handle handle,
        Temperature madeTemperature,
        RelativeHumidity madeHumidity,
        Finish finish,
        AirSeries air,
        double airHumidityDoubt,
        Figure tangExpansion,
        Figure pinExpansion) {}
