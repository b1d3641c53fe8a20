package hafthold.table;

import hafthold.knife.WorkState;
import hafthold.knife.WorkState.MeasuredMoisture;
import hafthold.knife.WorkState.SettledAir;
import hafthold.quantity.MoistureContent;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The tables {@code [made]} and {@code [glue_up]}: the stock at one moment of the work. */
final class StateKeys {
    private static final String HUMIDITY = "humidity";
    private static final String MOISTURE = "moisture";
    private static final String TEMPERATURE = "temperature";

    private StateKeys() {}

    /**
     * Reads one of the tables.
     *
     * @param fallback what is taken where the file says nothing
     * @param moment the moment, for people
     */
    static WorkState read(TomlSection state, WorkState fallback, String moment) {
        state.allows(List.of(HUMIDITY, TEMPERATURE, MOISTURE));
        Optional<RelativeHumidity> humidity = state.quantity(HUMIDITY, QuantityForm.HUMIDITY);
        Optional<MoistureContent> moisture = state.quantity(MOISTURE, QuantityForm.MOISTURE);
        if (humidity.isPresent() && moisture.isPresent()) {
            throw state.fault(
                    MOISTURE, "either humidity (of air it has settled in) or moisture (as measured), not both");
        }
        Temperature temperature = state.or(
                TEMPERATURE,
                state.quantity(TEMPERATURE, QuantityForm.TEMPERATURE, WorkState::isWorkable, WorkState.WORKABLE),
                fallback.temperature(),
                "the temperature at " + moment,
                plain(fallback.temperature().celsius()) + " C");
        return state.build(() -> {
            if (moisture.isPresent()) {
                return new MeasuredMoisture(moisture.get(), temperature);
            }
            if (humidity.isPresent()) {
                return new SettledAir(humidity.get(), temperature);
            }
            return taken(state, fallback, moment).at(temperature);
        });
    }

    private static WorkState taken(TomlSection state, WorkState fallback, String moment) {
        if (fallback instanceof SettledAir air) {
            String words = "stock settled at " + plain(air.humidity().percent()) + " % RH";
            return state.or(HUMIDITY, Optional.empty(), fallback, "the humidity at " + moment, words);
        }
        MoistureContent moisture = ((MeasuredMoisture) fallback).moisture();
        String words = plain(moisture.percent()) + " % MC";
        return state.or(MOISTURE, Optional.empty(), fallback, "the moisture at " + moment, words);
    }

    private static String plain(double number) {
        return String.format(Locale.ROOT, "%.4g", number).replaceAll("\\.?0+$", "");
    }
}
