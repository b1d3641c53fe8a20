package hafthold.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class ForceTest {

    /** NIST Special Publication 811 (2008), appendix B.8: pound-force to newton, 4.448 222 (from memory). */
    @Test
    void aPoundForceIsAsInTheConversionTable() {
        assertEquals(4.448222, Force.parse("1 lbf").newtons(), 0.0000005);
    }

    @Test
    void forcesAreReadWithTheirUnit() {
        assertEquals(500, Force.parse("500 N").newtons(), 0);
        assertEquals(500, Force.parse("0.5 kN").newtons(), 1e-9);
        assertThrows(QuantityFormatException.class, () -> Force.parse("500"));
        assertThrows(IllegalArgumentException.class, () -> new Force(Double.NaN));
    }
}
