package hafthold.simulate;

import hafthold.knife.Bond;
import hafthold.knife.Handle;
import hafthold.material.Finish;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.source.Figure;
import java.util.Arrays;
import java.util.Optional;

/**
 * Everything about an order but the material: the handle, the state it is finished in, the air it goes to.
 *
 * @param handle sizes
 * @param madeTemperature temperature of the workshop at final sanding
 * @param madeHumidity humidity the scale has settled to at final sanding
 * @param finish finish on the outer face
 * @param destination the customer's year where the knife lives
 * @param tangExpansion linear thermal expansion of the tang, 1/K
 * @param pinExpansion linear thermal expansion of the pins, 1/K
 * @param bond what the scale is glued to, and with what; empty for one that is only pinned
 */
public record Conditions(
        Handle handle,
        Temperature madeTemperature,
        RelativeHumidity madeHumidity,
        Finish finish,
        Destination destination,
        Figure tangExpansion,
        Figure pinExpansion,
        Optional<Bond> bond) {

    /** The same at another destination. */
    public Conditions at(Destination other) {
        return new Conditions(handle, madeTemperature, madeHumidity, finish, other, tangExpansion, pinExpansion, bond);
    }

    /** The same sanded at another temperature. */
    Conditions madeAt(Temperature other) {
        return new Conditions(handle, other, madeHumidity, finish, destination, tangExpansion, pinExpansion, bond);
    }

    /** Temperature above that at final sanding, K, at each sample of the air. */
    double[] warmer() {
        double[] warmer = new double[destination.air().size()];
        Arrays.setAll(warmer, sample -> destination.air().temperatureCelsius(sample) - madeTemperature.celsius());
        return warmer;
    }
}
