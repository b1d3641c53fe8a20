package hafthold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.junit.jupiter.api.Test;

class FitTextTest {
    @Test
    void readsAsItDidBefore() throws IOException {
        String fresh = new FitText(BenchStyle.ENGLISH).of(InventedFit.walnut());
        assertEquals(Golden.text("fit.txt", fresh), fresh);
    }

    @Test
    void jsonIsAsItWasBefore() throws IOException {
        String fresh = FitJson.of(InventedFit.walnut());
        assertEquals(Golden.text("fit.json", fresh), fresh);
    }

    @Test
    void theVerdictComesFirst() {
        String fresh = new FitText(BenchStyle.ENGLISH).of(InventedFit.walnut());
        assertTrue(fresh.startsWith("Walnut for the north for Somewhere cold: change\n"), fresh);
        assertTrue(fresh.indexOf("What decides") < fresh.indexOf("Edges"), fresh);
        assertTrue(fresh.indexOf("Edges") < fresh.indexOf("Pin 1"), fresh);
        assertTrue(fresh.indexOf("What to do") < fresh.indexOf("What this rests on"), fresh);
    }

    @Test
    void thouStandBesideMillimetresWhereAsked() {
        assertTrue(new FitText(new BenchStyle(LengthUnits.BOTH, Wording.english()))
                .of(InventedFit.walnut())
                .contains("(6 thou)"));
    }
}
