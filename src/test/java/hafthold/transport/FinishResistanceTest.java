package hafthold.transport;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.material.Finish;
import hafthold.table.FinishTable;
import hafthold.table.TableSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The resistances of {@code finishes.csv} against the effectiveness they were fitted to (FPL 462; see the table's header):
 * one figure a finish has to serve three days, so this can fail, but it is no independent check.
 */
class FinishResistanceTest {
    private static final double POINTS = 4;
    private static final FinishTable FINISHES = FinishTable.read(TableSet.builtIn());
    private static final FinishedPanel PANEL = new FinishedPanel(FinishedPanel.FITTED_SPEED);
    private static final double[] BARE = PANEL.gains(0);

    @ParameterizedTest
    @CsvSource({
        "oil-linseed, 33, 2, 0",
        "oil-tung, 46, 2, 0",
        "lacquer-nitrocellulose, 70, 22, 8",
        "shellac, 84, 43, 20",
        "varnish-spar, 80, 36, 15",
        "varnish-urethane-1, 55, 10, 2",
        "varnish-urethane-2, 83, 43, 23",
        "varnish-urethane-3, 90, 64, 44",
        "varnish-urethane-4, 91, 68, 51",
        "varnish-urethane-6, 93, 76, 62",
        "varnish-polyurethane, 90, 66, 46",
        "enamel-alkyd, 91, 64, 43",
        "paint-polyurethane, 94, 79, 62",
        "epoxy-clear, 98, 93, 88"
    })
    void aFinishHoldsBackWhatThePanelsShowed(String id, double first, double seventh, double fourteenth) {
        double[] finished = PANEL.gains(FINISHES.find(id).resistance().value());
        assertEquals(first, PANEL.effectiveness(BARE, finished, 1), POINTS);
        assertEquals(seventh, PANEL.effectiveness(BARE, finished, 7), POINTS);
        assertEquals(fourteenth, PANEL.effectiveness(BARE, finished, 14), POINTS);
    }

    @ParameterizedTest
    @CsvSource({
        "wax, 0",
        "wax-brushed, 69",
        "wax-dipped, 95",
        "shellac-3, 42",
        "varnish-spar-3, 30",
        "varnish-polyurethane-3, 66",
        "epoxy-clear-3, 91"
    })
    void aFinishHoldsBackWhatThePanelsShowedAfterTwoWeeks(String id, double fourteenth) {
        double[] finished = PANEL.gains(FINISHES.find(id).resistance().value());
        assertEquals(fourteenth, PANEL.effectiveness(BARE, finished, 14), 1);
    }

    @Test
    void everyBandIsInOrderAndOilsMayBeNothing() {
        for (Finish finish : FINISHES.all()) {
            double low = finish.resistance().band().low();
            assertTrue(
                    low >= 0
                            && finish.resistance().value()
                                    <= finish.resistance().band().high(),
                    finish.id());
            assertTrue(!finish.id().startsWith("oil") || low == 0, finish.id());
        }
    }

    /** The conclusion of the paper for a season: oil and furniture wax do nothing, dipped wax and epoxy do much. */
    @Test
    void onlyThickFilmsHalveAHardwoodsYear() {
        double bare = swing(0);
        assertTrue(swing(resistance("oil-linseed")) > 0.8 * bare);
        assertTrue(swing(resistance("varnish-urethane-3")) < 0.6 * bare);
        assertTrue(swing(resistance("epoxy-clear")) < 0.35 * bare);
    }

    private static double resistance(String id) {
        return FINISHES.find(id).resistance().value();
    }

    /** Highest less lowest mean moisture of a rough outdoor year. */
    private static double swing(double finishResistance) {
        MoistureHistory year = PeriodicMoisture.of(Rack.hardwood(8e-3, finishResistance), RoughYear.hourly(1))
                .history();
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (int i = 0; i < year.size(); i++) {
            low = Math.min(low, year.meanFraction(i));
            high = Math.max(high, year.meanFraction(i));
        }
        return high - low;
    }
}
