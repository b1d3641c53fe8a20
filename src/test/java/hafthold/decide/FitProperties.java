package hafthold.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.knife.FullTangBuild;
import hafthold.knife.FullTangKnife;
import hafthold.knife.WorkState;
import hafthold.quantity.RelativeHumidity;
import hafthold.simulate.BondedEngine;
import hafthold.simulate.FitYear;
import hafthold.simulate.HandleYear;
import hafthold.simulate.Sampling;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** What holds of any bonded handle with its grain along the blade. */
class FitProperties {
    private static final String[] WOODS = {"walnut-black", "beech-european", "teak", "maple-sugar+lumen-resin"};
    private static final String[] CUTS = {"flat", "rift", "quarter"};

    /** Glue holds an edge back: it stays between flush and where it would be unglued, the tang line nearer to flush. */
    @Property(tries = 25)
    void aGluedEdgeStaysBetweenFlushAndFree(
            @ForAll @IntRange(max = 3) int wood,
            @ForAll @IntRange(max = 2) int cut,
            @ForAll @IntRange(min = 10, max = 90) int made,
            @ForAll @IntRange(min = 10, max = 90) int there) {
        FitYear year = year(wood, cut, made, there);
        HandleYear whole = year.whole();
        double free = Math.max(
                whole.edge().free().shy().value(), whole.edge().free().proud().value());
        double mid = Math.max(
                whole.edge().bonded().shy().value(),
                whole.edge().bonded().proud().value());
        double tangLine = Math.max(
                whole.edge().tangLine().shy().value(),
                whole.edge().tangLine().proud().value());
        assertTrue(tangLine <= mid + 1e-9 && mid <= free + 1e-9, tangLine + " " + mid + " " + free);
        assertTrue(free < 1e-6 || mid > 0.3 * free, "it is held at the tang only");
    }

    /** Drier and damper stand on opposite sides, and never both in air that does not change. */
    @Property(tries = 15)
    void steadyAirMovesAnEdgeOneWay(
            @ForAll @IntRange(max = 3) int wood,
            @ForAll @IntRange(min = 15, max = 80) int made,
            @ForAll @IntRange(min = 15, max = 80) int there) {
        HandleYear whole = year(wood, 0, made, there).whole();
        assertEquals(
                0,
                Math.min(
                        whole.edge().bonded().shy().value(),
                        whole.edge().bonded().proud().value()),
                1e-9);
        assertTrue(there >= made || whole.edge().bonded().proud().value() < 1e-9);
        assertTrue(there <= made || whole.edge().bonded().shy().value() < 1e-9);
    }

    /** A knife made in the air it lives in keeps its shape and bears nothing. */
    @Property(tries = 8)
    void nothingMovesInTheAirItWasMadeIn(
            @ForAll @IntRange(max = 3) int wood,
            @ForAll @IntRange(max = 2) int cut,
            @ForAll @IntRange(min = 10, max = 90) int air) {
        FitYear year = year(wood, cut, air, air);
        assertEquals(
                0,
                year.whole().edge().free().shy().value()
                        + year.whole().edge().free().proud().value(),
                2e-6);
        assertEquals(0, year.glueUse().value(), 0.01);
        assertEquals(0, year.crackUse().orElseThrow().value(), 0.02);
    }

    /** Stress counts from glue-up, steps count from sanding. */
    @Property(tries = 6)
    void gluedInTheAirOfThePlaceNothingBearsWhateverTheStepsDo(
            @ForAll @IntRange(max = 3) int wood, @ForAll @IntRange(min = 20, max = 40) int there) {
        FullTangKnife knife = (FullTangKnife) FitOrders.fullTang(WOODS[wood], "flat", 110, 70, "");
        FullTangBuild b = knife.build();
        WorkState glueUp = new WorkState.SettledAir(
                new RelativeHumidity(there / 100.0), b.made().temperature());
        FitYear year = new BondedEngine(
                        knife.with(new FullTangBuild(
                                b.order(),
                                b.tang(),
                                b.scales(),
                                b.liners(),
                                b.bolsterId(),
                                b.pins(),
                                b.glue(),
                                glueUp,
                                b.made())),
                        FitOrders.steady(20, there / 100.0),
                        Sampling.VALUE_ONLY)
                .yearWithoutBands();
        assertEquals(0, year.glueUse().value(), 0.01);
        assertEquals(0, year.middleUse().orElseThrow().value(), 0.02);
        assertTrue(
                year.whole().edge().bonded().shy().value() > 0.02e-3,
                "" + year.whole().edge().bonded().shy());
    }

    private static FitYear year(int wood, int cut, int made, int there) {
        FullTangKnife knife = (FullTangKnife)
                FitOrders.fullTang(WOODS[wood], CUTS[cut], 110, made, FitOrders.pins(5, 0.05, "hard-epoxy", 20, 90));
        return new BondedEngine(knife, FitOrders.steady(20, there / 100.0), Sampling.VALUE_ONLY).yearWithoutBands();
    }
}
