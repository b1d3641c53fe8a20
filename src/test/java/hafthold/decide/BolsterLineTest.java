package hafthold.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.EventSchedule;
import hafthold.knife.FullTangKnife;
import hafthold.simulate.BondedEngine;
import hafthold.simulate.BondedEventEngine;
import hafthold.simulate.Destination;
import hafthold.simulate.FitYear;
import hafthold.simulate.FitYear.BolsterYear;
import hafthold.simulate.Sampling;
import hafthold.table.EventTable;
import hafthold.table.EventWords;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class BolsterLineTest {

    private static FitYear year(String bolster, Destination destination, Sampling sampling) {
        return new BondedEngine(knife(bolster), destination, sampling).year();
    }

    private static FullTangKnife knife(String bolster) {
        return (FullTangKnife) FitOrders.knife(String.join(
                "\n",
                "pins = []",
                "[tang]",
                "width = \"26 mm\"",
                "[scales]",
                "material = \"walnut-black\"",
                "cut = \"flat\"",
                "[made]",
                "humidity = \"50 %\"",
                bolster.isEmpty() ? "" : "[bolster]\nmaterial = \"" + bolster + "\""));
    }

    private static BolsterYear at(String bolster, double celsius, double humidity) {
        return year(bolster, FitOrders.steady(celsius, humidity), Sampling.VALUE_ONLY)
                .bolster()
                .orElseThrow();
    }

    /** Half of 26 mm, 40 K colder; expansion of nickel silver 16 to 18 and martensitic stainless 10 to 11 (from memory). */
    @Test
    void coldSinksABolsterThatGrowsMoreThanTheTang() {
        BolsterYear cold = at("nickel-silver", -20, 0.5);
        double least = 13e-3 * 40 * (16e-6 - 11e-6);
        double most = 13e-3 * 40 * (18e-6 - 10e-6);
        double shy = cold.againstTang().shy().value();
        assertTrue(shy >= least && shy <= most, 1e6 * shy + " micrometres");
        assertEquals(0, cold.againstTang().proud().value(), 0);
    }

    @Test
    void aBolsterOfTheTangsOwnSteelStaysLevelAndTheScaleStandsAsAgainstTheTang() {
        FitYear year = year("steel-stainless-martensitic", FitOrders.steady(45, 0.3), Sampling.VALUE_ONLY);
        BolsterYear bolster = year.bolster().orElseThrow();
        assertEquals(0, bolster.againstTang().larger().value(), 1e-12);
        assertEquals(
                year.whole().edge().bonded().shy().value(),
                bolster.scale().shy().value(),
                1e-9);
    }

    @Test
    void theScaleBesideItCountsFromTheBolstersOwnEdge() {
        BolsterYear hot = at("nickel-silver", 60, 0.3);
        BolsterYear level = at("steel-stainless-martensitic", 60, 0.3);
        assertEquals(
                level.scale().shy().value() + hot.againstTang().proud().value(),
                hot.scale().shy().value(),
                1e-9);
    }

    @Test
    void itHasABandAndIsNotThereWithoutABolster() {
        BolsterYear bolster = year("nickel-silver", FitOrders.steady(-20, 0.5), new Sampling(30, 1))
                .bolster()
                .orElseThrow();
        assertTrue(
                bolster.againstTang().shy().low() < bolster.againstTang().shy().high());
        assertEquals(
                Optional.empty(),
                year("", FitOrders.steady(-20, 0.5), Sampling.VALUE_ONLY).bolster());
    }

    /** A dashboard of 80 C over rooms of 20 C: 60 K, of which the tang takes most; expansions as above. */
    @Test
    void itPartsFromTheTangInTheHeatOfAnEvent() {
        FullTangKnife knife = knife("nickel-silver");
        Destination rooms = FitOrders.steady(20, 0.5);
        FitYear quiet = new BondedEngine(knife, rooms, Sampling.VALUE_ONLY).year();
        EventSchedule sun = new EventSchedule(
                List.of(EventWords.read("dashboard from 07-10", EventTable.read(FitOrders.TABLES), rooms.outdoors())),
                1);
        FitYear year = new BondedEventEngine(knife, rooms, sun).year(quiet).year();
        double proud = year.bolster().orElseThrow().againstTang().proud().value();
        assertEquals(0, quiet.bolster().orElseThrow().againstTang().larger().value(), 1e-9);
        assertTrue(proud > 13e-3 * 45 * (16e-6 - 11e-6) && proud < 13e-3 * 60 * (18e-6 - 10e-6), () -> "" + proud);
        assertEquals(7, year.whole().worstMonth(), "the edge is worst in the event of July");
    }
}
