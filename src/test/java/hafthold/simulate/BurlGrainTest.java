package hafthold.simulate;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.material.Axis;
import hafthold.material.Cut;
import hafthold.material.Material;
import hafthold.material.Swelling;
import hafthold.table.MaterialLibrary;
import hafthold.table.TableSet;
import org.junit.jupiter.api.Test;

class BurlGrainTest {
    private static final MaterialLibrary LIBRARY = MaterialLibrary.read(TableSet.builtIn());

    /** Every burl on the rack: what holds and what lets go lie far apart, and plain wood lies further out than either. */
    @Test
    void burlIsNeverSureWithinAThirdAndMovesLessThanFlatSawnWood() {
        assertAll(LIBRARY.listed("scale").stream()
                .filter(row -> row.usualCut() == Cut.BURL && !row.id().contains("+"))
                .filter(row -> !row.id().startsWith("amboyna") && !row.id().startsWith("thuya"))
                .map(row -> () -> {
                    Material burl = LIBRARY.plain(row.id());
                    double value = swelling(burl, 0);
                    double low = swelling(burl, -1) / value;
                    double high = swelling(burl, 1) / value;
                    assertTrue(low > 0.4 && low < 0.72, row.id() + " low " + low);
                    assertTrue(high > 1.3 && high < 2, row.id() + " high " + high);
                    assertTrue(
                            value < 0.8 * burl.water().orElseThrow().swelling().perMoisture(Axis.ACROSS, 0), row.id());
                }));
    }

    private static double swelling(Material burl, double lean) {
        Swelling swelling = burl.water().orElseThrow().swelling();
        return new BurlGrain(burl)
                .shares(lean)
                .mean(
                        swelling.perMoisture(Axis.ALONG, 0),
                        swelling.perMoisture(Axis.ACROSS, 0),
                        swelling.perMoisture(Axis.THROUGH, 0));
    }
}
