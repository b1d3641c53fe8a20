package hafthold.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MoistureContentTest {

    @Test
    void moistureIsReadInPercentOfTheDryMass() {
        assertEquals(0.1, MoistureContent.parse("10 %").fraction(), 0);
        assertEquals(10, MoistureContent.parse("10 %").percent(), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(strings = {"-1 %", "301 %", "10", "wet"})
    void whatNoMaterialHoldsIsRefused(String typed) {
        assertThrows(QuantityFormatException.class, () -> MoistureContent.parse(typed));
    }

    @Test
    void aMoistureThatIsNoNumberIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new MoistureContent(Double.NaN));
    }
}
