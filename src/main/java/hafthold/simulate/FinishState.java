package hafthold.simulate;

import hafthold.knife.WorkState;
import hafthold.material.Hybrid;
import hafthold.quantity.Temperature;
import java.util.Optional;

/** What the stock is like when it is sanded flush: the zero of every step. */
public interface FinishState {

    /** Temperature of stock and steel. */
    Temperature temperature();

    /** Moisture content of a part of the scale under a doubt, kg/kg; zero for what takes up no water. */
    double stockFraction(Hybrid.Part part, Doubt doubt);

    /** The state it was glued in, the zero of every stress; empty where it is glued as it is sanded. */
    default Optional<FinishState> gluedIn() {
        return Optional.empty();
    }

    /** Stock that has settled, or was measured. */
    static FinishState settled(WorkState state) {
        return new FinishState() {
            @Override
            public Temperature temperature() {
                return state.temperature();
            }

            @Override
            public double stockFraction(Hybrid.Part part, Doubt doubt) {
                return doubt.stockFraction(part.material(), state);
            }
        };
    }
}
