package hafthold.knife;

import hafthold.quantity.MoistureContent;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;

/** What the stock is like at one moment of the work: settled to the air around it, or measured. */
public sealed interface WorkState {

    /** Temperature of the stock and the steel. */
    Temperature temperature();

    /** The same state at another temperature. */
    WorkState at(Temperature other);

    /**
     * Stock that has come to rest in the air of the workshop.
     *
     * @param humidity relative humidity of that air, 3 to 99 %
     * @param temperature temperature of that air, -30 to 60 C
     */
    record SettledAir(RelativeHumidity humidity, Temperature temperature) implements WorkState {
        private static final double DRIEST = 0.03;
        private static final double DAMPEST = 0.99;

        /** Rejects air that no workshop has. */
        public SettledAir {
            if (!(humidity.fraction() >= DRIEST && humidity.fraction() <= DAMPEST)) {
                throw new UnfitBuildException("humidity", humidity.percent() + " %", "a humidity from 3 % to 99 %");
            }
            requireWorkable(temperature);
        }

        @Override
        public WorkState at(Temperature other) {
            return new SettledAir(humidity, other);
        }
    }

    /**
     * Stock whose moisture was measured, by weighing and drying or with a meter.
     *
     * @param moisture moisture content of the scale or of every part that takes up water, 0 to 40 %
     * @param temperature temperature of the stock, -30 to 60 C
     */
    record MeasuredMoisture(MoistureContent moisture, Temperature temperature) implements WorkState {
        private static final double WETTEST = 0.40;

        /** Rejects wood too wet to work. */
        public MeasuredMoisture {
            if (!(moisture.fraction() <= WETTEST)) {
                throw new UnfitBuildException(
                        "moisture", moisture.percent() + " %", "a moisture content from 0 % to 40 % of the dry mass");
            }
            requireWorkable(temperature);
        }

        @Override
        public WorkState at(Temperature other) {
            return new MeasuredMoisture(moisture, other);
        }
    }

    /** The temperatures that {@link #isWorkable} allows, for people. */
    String WORKABLE = "a temperature from -30 C to 60 C";

    /** True for a temperature at which someone may hold the stock: -30 to 60 C. */
    static boolean isWorkable(Temperature temperature) {
        return temperature.celsius() >= -30 && temperature.celsius() <= 60;
    }

    private static void requireWorkable(Temperature temperature) {
        if (!isWorkable(temperature)) {
            throw new UnfitBuildException("temperature", temperature.celsius() + " C", WORKABLE);
        }
    }
}
