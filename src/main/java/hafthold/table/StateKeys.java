package hafthold.table;

import hafthold.knife.WorkState;
import hafthold.knife.WorkState.MeasuredMoisture;
import hafthold.knife.WorkState.SettledAir;
import hafthold.quantity.MoistureContent;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.source.Message;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Map;
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
     */
    static WorkState read(TomlSection state, WorkState fallback) {
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
                Message.of(
                        "taken.temperature",
                        Map.of("celsius", plain(fallback.temperature().celsius()))));
        return state.build(() -> {
            if (moisture.isPresent()) {
                return new MeasuredMoisture(moisture.get(), temperature);
            }
            if (humidity.isPresent()) {
                return new SettledAir(humidity.get(), temperature);
            }
            return taken(state, fallback).at(temperature);
        });
    }

    private static WorkState taken(TomlSection state, WorkState fallback) {
        if (fallback instanceof SettledAir air) {
            Message words = Message.of(
                    "taken.settled", Map.of("humidity", plain(air.humidity().percent())));
            return state.or(HUMIDITY, Optional.empty(), fallback, words);
        }
        MoistureContent moisture = ((MeasuredMoisture) fallback).moisture();
        Message words = Message.of("taken.moisture", Map.of("moisture", plain(moisture.percent())));
        return state.or(MOISTURE, Optional.empty(), fallback, words);
    }

    /** A number to four digits, without zeros that tell nothing. */
    private static Message plain(double number) {
        BigDecimal rounded = new BigDecimal(number, new MathContext(4)).stripTrailingZeros();
        return Message.number(number, Math.max(0, rounded.scale()));
    }
}
