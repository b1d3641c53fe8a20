package hafthold.decide;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.HeldAir;
import hafthold.air.Outdoors;
import hafthold.air.SeasonalSine;
import hafthold.decide.PlaceComparison.Candidate;
import hafthold.decide.SeasonAnswer.Call;
import hafthold.decide.SeasonAnswer.Hindrance;
import hafthold.knife.BenchStock;
import hafthold.knife.Blank;
import hafthold.knife.FitLimits;
import hafthold.knife.Handle;
import hafthold.material.Axis;
import hafthold.material.Cut;
import hafthold.quantity.Band;
import hafthold.quantity.Length;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.simulate.BlankYear;
import hafthold.simulate.Conditions;
import hafthold.simulate.Destination;
import hafthold.simulate.HandleYear;
import hafthold.simulate.Sampling;
import hafthold.source.Message;
import hafthold.table.FinishTable;
import hafthold.table.LimitTable;
import hafthold.table.MaterialLibrary;
import hafthold.table.SeasonTable;
import hafthold.table.TableSet;
import hafthold.table.UsualBuild;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A workshop's year against customers': scenarios of our own invention, figures worked out by hand beside them. */
class SeasonPlannerTest {
    private static final TableSet TABLES = TableSet.builtIn();
    private static final MaterialLibrary LIBRARY = MaterialLibrary.read(TABLES);
    private static final List<FitLimits> CLASSES = LimitTable.read(TABLES);
    private static final Blank BLANK = new Blank(
            Length.ofMillimetres(25),
            Length.ofMillimetres(40),
            Length.ofMillimetres(130),
            new Blank.Open(true, true, true));

    /** 20 % in winter and 60 % in summer indoors, as in a heated home of the northern plains. */
    private static final Destination PLAINS = going("plains", 0.20, 0.60);

    /** 55 to 70 %, as on a mild coast. */
    private static final Destination COAST = going("coast", 0.55, 0.70);

    /** A workshop at 35 % in January and 72 % in July. */
    private static final ShopAir SHOP = shop(new SeasonalSine(20, 0.35, 0.72));

    private static final LocalDate JULY = LocalDate.of(2026, 7, 15);
    private static final LocalDate JANUARY = LocalDate.of(2026, 1, 15);

    /**
     * Sugar maple of 25 mm holds 13.6 % in July (Wood Handbook equation 4-5 at 72 %, 20 C). By hand, unglued, half of 26 mm
     * across: 0.40 mm shy where the home dries it to 4.5 %, to be met within 35 %, since a scale of 8 mm does not follow all
     * the way. Quarter-sawn about half of that at the tang, pin heads worse.
     */
    @Test
    void mapleSandedInJulyFallsShyOnThePlains() {
        Season season = season(PLAINS, SHOP, JULY, Sampling.VALUE_ONLY, Cut.FLAT, Cut.QUARTER);
        HandleYear flat = season.answers().get(0).today().year();
        HandleYear quarter = season.answers().get(1).today().year();
        double free = flat.edge().free().shy().value();
        double bySide = quarter.edge().free().shy().value() / free;
        assertAll(
                () -> assertEquals(13.6, 100 * flat.moisture().finish(), 0.2),
                () -> assertEquals(0.40e-3, free, 0.35 * 0.40e-3),
                () -> assertTrue(flat.edge().bonded().shy().value() < free),
                () -> assertTrue(bySide > 0.4 && bySide < 0.65, "quarter over flat " + bySide),
                () -> assertTrue(quarter.pins().headProud().value()
                        > 1.3 * flat.pins().headProud().value()),
                () -> assertTrue(season.answers().get(0).finish().call() != Call.GO));
    }

    /** Hand values: the plains want it sanded at 6.5 to 7.5 %, which the workshop has from winter into early spring. */
    @Test
    void eachCustomerHasHisOwnWeeks() {
        SeasonAnswer plains = season(PLAINS, SHOP, JULY, Sampling.VALUE_ONLY, Cut.FLAT)
                .answers()
                .get(0);
        SeasonAnswer coast = season(COAST, SHOP, JULY, Sampling.VALUE_ONLY, Cut.FLAT)
                .answers()
                .get(0);
        double target = 100 * plains.conditioning().orElseThrow().moistureFraction();
        double best = 100 * plains.bestWeek().blank().meanFraction();
        assertAll(
                () -> assertTrue(target >= 6.2 && target <= 7.8, "target " + target),
                () -> assertTrue(best >= 6.5 && best <= 7.8, "best week " + best),
                () -> assertTrue(isBest(plains, JANUARY), plains.best().toString()),
                () -> assertFalse(isBest(plains, JULY), plains.best().toString()),
                () -> assertFalse(isBest(coast, JANUARY), coast.best().toString()),
                () -> assertTrue(coast.bestWeek().blank().meanFraction()
                        > plains.bestWeek().blank().meanFraction() + 0.02));
    }

    /** In air that never changes every week is what compare says of stock settled in that air. */
    @ParameterizedTest
    @CsvSource({"maple-sugar, FLAT", "walnut-black, QUARTER", "linen-phenolic-le, NONE", "hybrid-maple-burl-epoxy, BURL"
    })
    void evenAirIsWhatCompareSays(String id, Cut cut) {
        Sampling sampling = new Sampling(40, 3);
        Candidate candidate = new Candidate(LIBRARY.find(id), cut);
        ShopAir even = new ShopAir(Message.verbatim("even"), new HeldAir(20, 0.5).year(), ShopAir.HYGROMETER_FRACTION);
        SeasonAnswer answer = planner(sampling)
                .plan(order(PLAINS), even, BenchStock.unread(BLANK), JULY, List.of(candidate), List.of())
                .answers()
                .get(0);
        Comparison.Ranked compared = new PlaceComparison(new Judgement(CLASSES), sampling)
                .compare(order(PLAINS), List.of(candidate), List.of())
                .ranked()
                .get(0);
        assertTrue(answer.anyWeek());
        for (int week : new int[] {0, 20, 51}) {
            HandleYear year = answer.weeks().get(week).year();
            List<Function<HandleYear, Band>> figures = List.of(
                    one -> one.edge().bonded().shy(),
                    one -> one.edge().bonded().proud(),
                    one -> one.edge().free().shy(),
                    one -> one.pins().headProud(),
                    one -> one.pins().gap(),
                    one -> one.ends().lengthMismatch());
            for (Function<HandleYear, Band> figure : figures) {
                assertBand(figure.apply(compared.year()), figure.apply(year));
            }
            assertEquals(compared.verdict(), answer.weeks().get(week).verdict());
            assertEquals(compared.year().moisture().finish(), year.moisture().finish(), 1e-8);
        }
    }

    private static void assertBand(Band expected, Band found) {
        assertEquals(expected.low(), found.low(), 2e-8);
        assertEquals(expected.value(), found.value(), 2e-8);
        assertEquals(expected.high(), found.high(), 2e-8);
    }

    /** What is left proud puts the year where shy and proud take the same share of their limits. */
    @Test
    void theAllowanceSharesOutTheLimits() {
        Season season = season(PLAINS, SHOP, JULY, Sampling.VALUE_ONLY, Cut.FLAT);
        for (SeasonWeek week : season.answers().get(0).weeks()) {
            Allowance leave = week.allowance();
            double shy = leave.shyAfter() / season.held().shy().metres();
            double proud = leave.proudAfter() / season.held().proud().metres();
            assertEquals(shy, proud, 1e-9);
            assertTrue(leave.shyAfter() < leave.proudAfter());
        }
        Allowance july = season.answers().get(0).today().allowance();
        assertTrue(july.proud().value() > 0.1e-3, "July is too damp: " + july);
    }

    /** Whatever the shop, nobody is sent to the driest end of the customer's year. */
    @Test
    void neverAdvisesTheDriestEnd() {
        for (Destination place : List.of(PLAINS, COAST)) {
            SeasonAnswer answer = season(
                            place, shop(new SeasonalSine(20, 0.10, 0.80)), JANUARY, Sampling.VALUE_ONLY, Cut.FLAT)
                    .answers()
                    .get(0);
            double driest = answer.today().year().moisture().lowest();
            assertTrue(answer.conditioning().orElseThrow().moistureFraction() > driest + 0.003);
            assertTrue(answer.bestWeek().blank().meanFraction() > driest);
        }
    }

    @Test
    void gluingWaitsForStockThatIsEvenAndDryEnoughInAWarmRoom() {
        SeasonAnswer july = season(PLAINS, SHOP, JULY, Sampling.VALUE_ONLY, Cut.FLAT)
                .answers()
                .get(0);
        SeasonAnswer january = season(PLAINS, SHOP, JANUARY, Sampling.VALUE_ONLY, Cut.FLAT)
                .answers()
                .get(0);
        SeasonAnswer cold = season(
                        PLAINS, shop(new SeasonalSine(8, 0.35, 0.72)), JANUARY, Sampling.VALUE_ONLY, Cut.FLAT)
                .answers()
                .get(0);
        assertAll(
                () -> assertEquals(List.of(Hindrance.TOO_DAMP), july.glue().hindrances()),
                () -> assertTrue(
                        july.glue().waitDays() > 30, "waits " + july.glue().waitDays()),
                () -> assertTrue(january.glue().isGo(), january.glue().toString()),
                () -> assertTrue(cold.glue().hindrances().contains(Hindrance.TOO_COOL)));
    }

    /** A thick plank that has just changed its air differs from face to middle by more than is fit to glue. */
    @Test
    void aThickPlankInSummerIsUneven() {
        Blank plank = new Blank(
                Length.ofMillimetres(80),
                Length.ofMillimetres(200),
                Length.ofMillimetres(800),
                new Blank.Open(true, false, false));
        SeasonAnswer answer = planner(Sampling.VALUE_ONLY)
                .plan(
                        order(PLAINS),
                        SHOP,
                        BenchStock.unread(plank),
                        LocalDate.of(2026, 6, 5),
                        maple(Cut.FLAT),
                        List.of())
                .answers()
                .get(0);
        assertTrue(
                answer.glue().hindrances().contains(Hindrance.GRADIENT),
                answer.glue().toString());
    }

    @Test
    void theCutsStandSideBySide() {
        SeasonAnswer answer = season(PLAINS, SHOP, JULY, Sampling.VALUE_ONLY, Cut.FLAT)
                .answers()
                .get(0);
        assertEquals(
                List.of(Cut.FLAT, Cut.RIFT, Cut.QUARTER, Cut.CROSS),
                answer.cuts().stream().map(SeasonAnswer.CutChoice::cut).toList());
        HandleYear flat = answer.cuts().get(0).today();
        HandleYear cross = answer.cuts().get(3).today();
        assertEquals(answer.today().year().edge(), flat.edge());
        assertTrue(cross.ends().lengthMismatch().value()
                > 20 * flat.ends().lengthMismatch().value());
    }

    @Test
    void samplesSayHowSureAWeekIs() {
        SeasonAnswer answer = season(COAST, SHOP, JULY, new Sampling(40, 1), Cut.QUARTER)
                .answers()
                .get(0);
        SeasonWeek best = answer.bestWeek();
        SeasonWeek worst = answer.worstWeek();
        assertTrue(best.keeps().orElseThrow() > worst.keeps().orElseThrow());
        assertEquals(
                answer.weeks(),
                season(COAST, SHOP, JULY, new Sampling(40, 1), Cut.QUARTER)
                        .answers()
                        .get(0)
                        .weeks(),
                "the same seed gives the same answer");
    }

    /** Stock from a cold shed is sent into a living room, and takes as long there as stock from a warm one. */
    @Test
    void stockFromTheColdSettlesAtTheWarmthItIsSentTo() {
        Band cold = asKept(2);
        Band warm = asKept(20);
        assertEquals(warm.value(), cold.value(), 0.15 * warm.value());
    }

    private static Band asKept(double celsius) {
        SeasonAnswer answer = season(
                        PLAINS, shop(new SeasonalSine(celsius, 0.35, 0.72)), JULY, Sampling.VALUE_ONLY, Cut.FLAT)
                .answers()
                .get(0);
        assertEquals(20, answer.conditioning().orElseThrow().celsius());
        return answer.conditioning().orElseThrow().blankDays();
    }

    private static boolean isBest(SeasonAnswer answer, LocalDate day) {
        return answer.best().stream().anyMatch(span -> span.has(day.getDayOfYear() - 1));
    }

    private static Season season(Destination place, ShopAir shop, LocalDate today, Sampling sampling, Cut... cuts) {
        return planner(sampling).plan(order(place), shop, BenchStock.unread(BLANK), today, maple(cuts), List.of());
    }

    private static List<Candidate> maple(Cut... cuts) {
        return List.of(cuts).stream()
                .map(cut -> new Candidate(LIBRARY.find("maple-sugar"), cut))
                .toList();
    }

    private static SeasonPlanner planner(Sampling sampling) {
        return new SeasonPlanner(CLASSES, "good-new", SeasonTable.read(TABLES), sampling);
    }

    private static ShopAir shop(SeasonalSine sine) {
        return new ShopAir(Message.verbatim("shop"), sine.year(), ShopAir.HYGROMETER_FRACTION);
    }

    private static Destination going(String id, double winter, double summer) {
        return Destination.recorded(id, id, Outdoors.usual(), new SeasonalSine(20, winter, summer).year(), 0.03);
    }

    private static Conditions order(Destination destination) {
        return new Conditions(
                new Handle(
                        Length.ofMillimetres(110),
                        Length.ofMillimetres(26),
                        Length.ofMillimetres(8),
                        Length.ofMillimetres(6),
                        Length.ofMillimetres(0),
                        Length.ofMillimetres(70)),
                new Temperature(20),
                new RelativeHumidity(0.5),
                FinishTable.read(TABLES).find("bare"),
                destination,
                LIBRARY.plain("steel-stainless-martensitic")
                        .thermalExpansionPerKelvin()
                        .get(Axis.ALONG),
                LIBRARY.plain("brass-free-cutting").thermalExpansionPerKelvin().get(Axis.ALONG),
                Optional.of(UsualBuild.bond(LIBRARY, Length.ofMillimetres(4))));
    }

    @Test
    void weeksCoverTheYear() {
        assertEquals(0, BlankYear.weekOf(0));
        assertEquals(51, BlankYear.weekOf(364));
    }
}
