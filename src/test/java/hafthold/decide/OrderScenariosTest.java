package hafthold.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.AirSeries;
import hafthold.air.Outdoors;
import hafthold.air.Setting;
import hafthold.decide.PlaceComparison.Candidate;
import hafthold.knife.Handle;
import hafthold.material.Axis;
import hafthold.material.Cut;
import hafthold.quantity.Length;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.simulate.Conditions;
import hafthold.simulate.Destination;
import hafthold.simulate.HandleYear;
import hafthold.table.FinishTable;
import hafthold.table.LimitTable;
import hafthold.table.MaterialLibrary;
import hafthold.table.PlaceTable;
import hafthold.table.TableSet;
import hafthold.table.UsualBuild;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Invented orders with movements worked out by hand apart from this code (free movement; accepted within 35 %), and
 * facts of the trade (common practice, no source).
 */
class OrderScenariosTest {
    private static final TableSet TABLES = TableSet.builtIn();
    private static final MaterialLibrary LIBRARY = MaterialLibrary.read(TABLES);
    private static final Judgement JUDGEMENT = new Judgement(LimitTable.read(TABLES));

    /** Finished at 55 %, 15 % in January: shy 0.24 mm a side, pin heads 0.10 mm proud, hole closes by 0.11 mm. */
    @Test
    void walnutInAnArcticHeatedHomeFallsShyAndMustChange() {
        HandleYear year = year("walnut-black", Cut.FLAT, 8, 0.55, steady(20, 0.15));
        assertHand(0.24, year.edge().free().shy().value());
        assertHand(
                0.10,
                year("walnut-black", Cut.FLAT, loose(conditions(8, 0.55, steady(20, 0.15), 110)))
                        .pins()
                        .headProud()
                        .value());
        assertTrue(
                year.edge().bonded().shy().value()
                        < 0.7 * year.edge().free().shy().value(),
                "" + year.edge().bonded().shy());
        assertHand(0.11, year.pins().squeeze().value());
        assertTrue(
                year.pins().crackUse().orElseThrow().value() > 1,
                "crack use " + year.pins().crackUse().orElseThrow().value());
        assertEquals(Verdict.CHANGE, JUDGEMENT.verdict(year));
    }

    /** The same knife at 28 C and 80 %: proud about 0.20 mm, pins sunk 0.09 mm, no pin crack. */
    @Test
    void walnutInTheUncooledTropicsStandsProudAndDoesNotCrack() {
        HandleYear year = year("walnut-black", Cut.FLAT, 8, 0.55, steady(28, 0.80));
        assertHand(0.20, year.edge().free().proud().value());
        assertHand(0.09, year.pins().headSunk().value());
        assertEquals(0, year.pins().crackUse().orElseThrow().value(), 0);
        assertTrue(JUDGEMENT.verdict(year).compareTo(Verdict.CHANGE) <= 0);
    }

    /** In a flat cooled to 55 % it comes out about flush. */
    @Test
    void walnutInACooledFlatIsAboutFlush() {
        HandleYear year = year("walnut-black", Cut.FLAT, 8, 0.55, steady(24, 0.55));
        assertTrue(year.edge().free().proud().value() < 0.05e-3
                && year.edge().free().shy().value() < 0.05e-3);
    }

    /** End-grain look, 110 mm, 12 to 8 % MC at 0.0025 a point: 1.1 mm overall, refused; along the grain 0.03 mm. */
    @Test
    void theEndGrainLookIsRefusedAndTheSameWoodAlongTheGrainIsNot() {
        HandleYear cross = year("walnut-black", Cut.CROSS, 8, 0.65, steady(20, 0.43));
        HandleYear along = year("walnut-black", Cut.FLAT, 8, 0.65, steady(20, 0.43));
        assertHand(1.1, cross.ends().lengthMismatch().value());
        assertEquals(Verdict.REFUSE, JUDGEMENT.verdict(cross));
        assertTrue(
                along.ends().lengthMismatch().value() < 0.05e-3,
                "" + along.ends().lengthMismatch());
    }

    /** Acrylic, 80 mm, made at 20 C, at -45 C: shorter than steel by 0.30 mm, by heat alone. */
    @Test
    void acrylicInHardFrostShrinksAgainstSteel() {
        Conditions conditions = conditions(8, 0.5, steady(-45, 0.7), 80);
        HandleYear year = new PlaceComparison(JUDGEMENT)
                .rank(conditions, List.of(new Candidate(LIBRARY.find("acrylic-cast"), Cut.NONE)))
                .get(0)
                .year();
        assertHand(0.30, year.ends().lengthMismatch().value());
    }

    /** Facts of the trade (common practice, no source): laminates move least, stabilised less than plain, not nothing. */
    @Test
    void laminatesMoveLeastAndStabilisedWoodLessThanPlainInHeatColdAndDamp() {
        for (Destination destination : List.of(
                home("singapore", "uncooled-home"), home("yakutsk", "heated-home"), home("phoenix", "heated-home"))) {
            double glass = edge(destination, "glass-epoxy-g10", Cut.NONE);
            double cotton = edge(destination, "linen-phenolic-le", Cut.NONE);
            double antler = edge(destination, "antler-reindeer", Cut.NONE);
            double bone = edge(destination, "bone-bovine", Cut.NONE);
            double plain = edge(destination, "maple-sugar", Cut.FLAT);
            double stabilised = edge(destination, "maple-sugar+lumen-resin", Cut.FLAT);
            String where = destination.id();
            assertTrue(glass < bone && cotton < bone && bone < plain, where + " bone " + bone);
            assertTrue(glass < antler && cotton < antler && antler < plain, where + " antler " + antler);
            assertTrue(stabilised < plain && stabilised > 0.3 * plain, where + " stabilised " + stabilised);
        }
    }

    @Test
    void theAnswerDoesNotDependOnTheOrderOfTheQuestion() {
        Conditions conditions = conditions(8, 0.5, home("london", "heated-home"), 110);
        List<Candidate> rack = List.of(
                new Candidate(LIBRARY.find("teak"), Cut.FLAT),
                new Candidate(LIBRARY.find("walnut-black"), Cut.FLAT),
                new Candidate(LIBRARY.find("acrylic-cast"), Cut.NONE));
        List<Candidate> reversed = List.of(rack.get(2), rack.get(1), rack.get(0));
        PlaceComparison comparison = new PlaceComparison(JUDGEMENT);
        assertEquals(comparison.rank(conditions, rack), comparison.rank(conditions, reversed));
    }

    private static double edge(Destination destination, String material, Cut cut) {
        HandleYear year = year(material, cut, 8, 0.5, destination);
        return Math.max(
                year.edge().bonded().shy().value(), year.edge().bonded().proud().value());
    }

    private static HandleYear year(
            String material, Cut cut, double thickness, double madeHumidity, Destination destination) {
        return year(material, cut, conditions(thickness, madeHumidity, destination, 110));
    }

    /** The same handle with scales that are only pinned. */
    private static Conditions loose(Conditions glued) {
        return new Conditions(
                glued.handle(),
                glued.madeTemperature(),
                glued.madeHumidity(),
                glued.finish(),
                glued.destination(),
                glued.tangExpansion(),
                glued.pinExpansion(),
                Optional.empty());
    }

    private static HandleYear year(String material, Cut cut, Conditions conditions) {
        return new PlaceComparison(JUDGEMENT)
                .rank(conditions, List.of(new Candidate(LIBRARY.find(material), cut)))
                .get(0)
                .year();
    }

    private static Conditions conditions(
            double thickness, double madeHumidity, Destination destination, double length) {
        return new Conditions(
                new Handle(
                        Length.ofMillimetres(length),
                        Length.ofMillimetres(26),
                        Length.ofMillimetres(thickness),
                        Length.ofMillimetres(6),
                        Length.ofMillimetres(0),
                        Length.ofMillimetres(length * 0.64)),
                new Temperature(20),
                new RelativeHumidity(madeHumidity),
                FinishTable.read(TABLES).find("bare"),
                destination,
                LIBRARY.plain("steel-stainless-martensitic")
                        .thermalExpansionPerKelvin()
                        .get(Axis.ALONG),
                LIBRARY.plain("brass-free-cutting").thermalExpansionPerKelvin().get(Axis.ALONG),
                Optional.of(UsualBuild.bond(LIBRARY)));
    }

    private static Destination home(String place, String setting) {
        return Destination.of(
                PlaceTable.read(TABLES).find(place), Setting.find(setting).orElseThrow());
    }

    private static Destination steady(double celsius, double humidity) {
        double[] temperatures = new double[8760];
        double[] humidities = new double[8760];
        Arrays.fill(temperatures, celsius);
        Arrays.fill(humidities, humidity);
        return Destination.recorded(
                "steady", "steady air", Outdoors.usual(), new AirSeries(3600, temperatures, humidities), 0.02);
    }

    private static void assertHand(double handMillimetres, double metres) {
        assertEquals(handMillimetres, 1000 * metres, 0.35 * handMillimetres);
    }
}
