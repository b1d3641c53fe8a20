package hafthold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.decide.FullTangFit;
import hafthold.decide.Reason;
import hafthold.quantity.Band;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
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
        assertTrue(
                fresh.startsWith(
                        "Walnut for the north for Somewhere cold, as built: change; with stock at 30 %: care\n"),
                fresh);
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

    @Test
    void whatIsNotEnoughStandsApart() {
        String text = flat(new FitText(BenchStyle.ENGLISH).of(InventedFit.walnut()));
        int apart = text.indexOf("Tried, not enough");
        assertTrue(text.indexOf("Let the stock settle at 30 %") < apart, text);
        assertTrue(text.indexOf("Use 4 mm pins") > apart, text);
        String markdown = FitMarkdown.of(InventedFit.walnut(), BenchStyle.ENGLISH);
        assertTrue(markdown.contains("## Tried, not enough"), markdown);
        assertTrue(FitJson.of(InventedFit.walnut()).contains("\"enough\": false"));
    }

    /** However many things move further, glue beyond its strength and heat beyond softening are among what is said. */
    @Test
    void whateverGivesWayIsSaidAmongTheReasons() {
        Reason moves = InventedFit.walnut().reasons().get(1);
        String text = flat(new FitText(BenchStyle.ENGLISH)
                .of(InventedFit.walnut(List.of(
                        moves,
                        moves,
                        moves,
                        new Reason(Reason.Kind.GLUE_LINE, Band.exact(1.46), moves.heldTo(), true),
                        new Reason(Reason.Kind.SCALE_SPLIT, Band.exact(0.8), moves.heldTo(), true),
                        new Reason(Reason.Kind.SOFTENING, Band.exact(-10), moves.heldTo(), true)))));
        String verdict = text.substring(0, text.indexOf("Lives"));
        assertTrue(verdict.contains("146 %"), verdict);
        assertTrue(verdict.contains("10 K beyond"), verdict);
        assertFalse(verdict.contains("80 %"), verdict);
    }

    @Test
    void whereNothingStatesWhenItSoftensThatIsSaid() {
        FullTangFit fit = InventedFit.walnut(Optional.empty());
        String text = flat(new FitText(BenchStyle.ENGLISH).of(fit));
        assertTrue(text.contains("nothing in it states a softening temperature"), text);
        assertTrue(FitJson.of(fit).contains("\"softening_margin_k\": null"));
    }

    private static String flat(String text) {
        return text.replaceAll("[\\s\u00a0]+", " ");
    }
}
