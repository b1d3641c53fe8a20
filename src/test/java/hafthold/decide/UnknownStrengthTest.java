package hafthold.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.decide.PlaceComparison.Candidate;
import hafthold.knife.FullTangKnife;
import hafthold.knife.Handle;
import hafthold.material.Axis;
import hafthold.material.Cut;
import hafthold.material.Material;
import hafthold.material.Property;
import hafthold.material.PropertySheet;
import hafthold.quantity.Band;
import hafthold.quantity.Length;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.simulate.BondedEngine;
import hafthold.simulate.Conditions;
import hafthold.simulate.Destination;
import hafthold.simulate.FitYear;
import hafthold.simulate.HandleEngine;
import hafthold.simulate.HandleYear;
import hafthold.simulate.Sampling;
import hafthold.source.Figure;
import hafthold.table.FinishTable;
import hafthold.table.LimitTable;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A strength that no sheet states is neither a limit that holds nor one that breaks. */
class UnknownStrengthTest {
    private static final Judgement JUDGEMENT = new Judgement(LimitTable.read(FitOrders.TABLES));
    private static final Material WALNUT = FitOrders.LIBRARY.plain("walnut-black");
    private static final Destination A_LITTLE_DRIER = FitOrders.steady(20, 0.45);
    private static final Sampling SAMPLED = new Sampling(30, 1);

    @Test
    void withoutAStrengthThePinsCannotBeJudged() {
        HandleYear known = compare(WALNUT, A_LITTLE_DRIER, Sampling.VALUE_ONLY);
        HandleYear unknown = compare(withoutStrength(), A_LITTLE_DRIER, Sampling.VALUE_ONLY);
        assertTrue(JUDGEMENT.verdict(known).compareTo(Verdict.CARE) <= 0, "the case should be a mild one");
        assertTrue(known.pins().crackUse().orElseThrow().value() > 0);
        assertEquals(known.pins().squeeze(), unknown.pins().squeeze());
        assertEquals(Optional.empty(), unknown.pins().crackUse());
        assertEquals(Verdict.UNKNOWN, JUDGEMENT.verdict(unknown));
        Reason first = JUDGEMENT.reasons(unknown).get(0);
        assertEquals(Reason.Kind.PIN_CRACK, first.kind());
        assertTrue(first.isOpen());
    }

    @Test
    void whatIsNotSqueezedDoesNotSplit() {
        HandleYear damp = compare(withoutStrength(), FitOrders.steady(20, 0.60), Sampling.VALUE_ONLY);
        assertEquals(Band.exact(0), damp.pins().squeeze());
        assertEquals(Optional.of(Band.exact(0)), damp.pins().crackUse());
        assertTrue(JUDGEMENT.verdict(damp).compareTo(Verdict.CARE) <= 0);
    }

    @Test
    void whatAsksForAChangeAnywayIsStillTold() {
        HandleYear dry = compare(withoutStrength(), FitOrders.steady(20, 0.10), SAMPLED);
        assertTrue(JUDGEMENT.verdict(dry).compareTo(Verdict.CHANGE) >= 0);
        assertTrue(JUDGEMENT.verdict(dry) != Verdict.UNKNOWN);
        assertFalse(JUDGEMENT.reasons(dry).get(0).isOpen());
        assertTrue(JUDGEMENT.reasons(dry).stream().anyMatch(Reason::isOpen));
    }

    @Test
    void howOftenTheVerdictHoldsIsUnknownToo() {
        Likelihood known = JUDGEMENT.likelihood(compare(WALNUT, A_LITTLE_DRIER, SAMPLED));
        Likelihood unknown = JUDGEMENT.likelihood(compare(withoutStrength(), A_LITTLE_DRIER, SAMPLED));
        assertTrue(known.verdictHolds().isPresent() && !known.classes().isEmpty());
        assertEquals(30, unknown.samples());
        assertTrue(unknown.verdictHolds().isEmpty() && unknown.classes().isEmpty());
    }

    @Test
    void anOpenLimitRanksAfterThoseThatWereJudged() {
        List<Candidate> rack = List.of(new Candidate(withoutStrength(), Cut.QUARTER), new Candidate(WALNUT, Cut.FLAT));
        List<Comparison.Ranked> ranked = new PlaceComparison(JUDGEMENT).rank(conditions(A_LITTLE_DRIER), rack);
        assertEquals(Verdict.UNKNOWN, ranked.get(1).verdict());
        assertTrue(ranked.get(1).isMovementKnown());
    }

    @Test
    void aBondedKnifeTellsItOfPinsAndScale() {
        FullTangKnife knife = (FullTangKnife)
                FitOrders.fullTang("elastomer", "none", 110, 65, FitOrders.pins(6, 0, "hard-epoxy", 20, 90));
        FitYear year = new BondedEngine(knife, FitOrders.swinging(20, 0.3, 0.5), SAMPLED).year();
        assertTrue(year.crackUse().isEmpty()
                && year.middleUse().isEmpty()
                && year.tearUse().isEmpty());
        assertTrue(year.pins().stream().allMatch(pin -> pin.crackUse().isEmpty()));
        assertTrue(year.days().pinUse().isEmpty() && !year.days().glueUse().isEmpty());
        assertEquals(Verdict.UNKNOWN, JUDGEMENT.verdict(year));
        assertEquals(2, JUDGEMENT.reasons(year).stream().filter(Reason::isOpen).count());
        assertTrue(JUDGEMENT.likelihood(year).verdictHolds().isEmpty());
    }

    /**
     * Whichever way the rings lie, wood splits along its grain. In a plate that is alike in all directions a pin squeezed
     * by eps puts E eps / (1 + nu) into it (Timoshenko, Theory of Elasticity, thick cylinder, from memory); grain along
     * the handle raises that, and half of it is left after weeks.
     */
    @ParameterizedTest
    @EnumSource(
            value = Cut.class,
            names = {"FLAT", "QUARTER"})
    void woodSplitsAtItsPinsInEveryCut(Cut cut) {
        HandleYear year =
                new HandleEngine(conditions(FitOrders.steady(20, 0.30)), Sampling.VALUE_ONLY).year(WALNUT, cut);
        double modulus = WALNUT.sheet()
                .figure(Property.YOUNGS_MODULUS, cut == Cut.FLAT ? Axis.ACROSS : Axis.THROUGH)
                .orElseThrow()
                .value();
        double strength = WALNUT.sheet()
                .figure(Property.TENSION_STRENGTH, Axis.ACROSS)
                .orElseThrow()
                .value();
        double alike = 0.5 * modulus / 1.35 * year.pins().squeeze().value() / 6e-3 / strength;
        double use = year.pins().crackUse().orElseThrow().value();
        assertTrue(use > 0.5 * alike && use < 2.5 * alike, use + " against " + alike);
    }

    private static HandleYear compare(Material material, Destination destination, Sampling sampling) {
        return new HandleEngine(conditions(destination), sampling).year(material, Cut.QUARTER);
    }

    private static Material withoutStrength() {
        Map<PropertySheet.Entry, Figure> figures =
                new LinkedHashMap<>(WALNUT.sheet().figures());
        figures.keySet().removeIf(entry -> entry.property() == Property.TENSION_STRENGTH);
        return new Material(
                "walnut-untested",
                WALNUT.name(),
                WALNUT.family(),
                WALNUT.evidence(),
                WALNUT.usualCut(),
                new PropertySheet(figures),
                WALNUT.water(),
                WALNUT.thermalExpansionPerKelvin(),
                WALNUT.findings());
    }

    private static Conditions conditions(Destination destination) {
        return new Conditions(
                new Handle(
                        Length.ofMillimetres(110),
                        Length.ofMillimetres(26),
                        Length.ofMillimetres(5),
                        Length.ofMillimetres(6),
                        Length.ofMillimetres(0),
                        Length.ofMillimetres(70)),
                new Temperature(20),
                new RelativeHumidity(0.5),
                FinishTable.read(FitOrders.TABLES).find("bare"),
                destination,
                FitOrders.LIBRARY
                        .plain("steel-stainless-martensitic")
                        .thermalExpansionPerKelvin()
                        .get(Axis.ALONG),
                FitOrders.LIBRARY
                        .plain("brass-free-cutting")
                        .thermalExpansionPerKelvin()
                        .get(Axis.ALONG),
                Optional.empty());
    }
}
