package hafthold.knife;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import hafthold.knife.Scales.Station;
import hafthold.material.Cut;
import hafthold.quantity.Length;
import hafthold.quantity.MoistureContent;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FullTangBuildTest {
    private static final Temperature ROOM = new Temperature(20);
    private static final WorkState AIR = new WorkState.SettledAir(new RelativeHumidity(0.5), ROOM);

    @Test
    void theWidthBetweenTwoPlacesLiesOnTheStraightLine() {
        Scales scales = scales(List.of(station(0, 26), station(60, 20), station(80, 30)));
        assertEquals(26, scales.widthAt(mm(0)).millimetres(), 1e-12);
        assertEquals(23, scales.widthAt(mm(30)).millimetres(), 1e-12);
        assertEquals(20, scales.widthAt(mm(60)).millimetres(), 1e-12);
        assertEquals(25, scales.widthAt(mm(70)).millimetres(), 1e-12);
    }

    @Test
    void theLastWidthHoldsToTheButt() {
        assertEquals(
                30,
                scales(List.of(station(0, 26), station(80, 30)))
                        .widthAt(mm(110))
                        .millimetres(),
                1e-12);
        assertEquals(26, scales(List.of(station(0, 26))).widthAt(mm(110)).millimetres(), 1e-12);
    }

    @Test
    void theTangFollowsTheScalesWhereTheyAreNarrower() {
        FullTangBuild build = build(26, scales(List.of(station(0, 30), station(100, 20))), List.of());
        assertEquals(26, build.tangWidthAt(mm(0)).millimetres(), 1e-12);
        assertEquals(25, build.tangWidthAt(mm(50)).millimetres(), 1e-12);
        assertEquals(20, build.tangWidthAt(mm(100)).millimetres(), 1e-12);
    }

    @Test
    void hardGlueLeavesNoRoomBesideAPin() {
        assertEquals(0, pin(20, 0, 6.2, Pin.Fill.HARD_EPOXY).openClearance().metres(), 0);
        assertEquals(0.2, pin(20, 0, 6.2, Pin.Fill.OPEN).openClearance().millimetres(), 1e-12);
        assertEquals(0.2, pin(20, 0, 6.2, Pin.Fill.FLEXIBLE).openClearance().millimetres(), 1e-12);
    }

    /** The edge falls from 15 to 5 mm over 100 mm: slope 0.1, so the nearest point is not straight above. */
    @Test
    void aHoleIsHeldAgainstASlantingEdgeAlongTheShortestWay() {
        Scales scales = scales(List.of(station(0, 30), station(100, 10)));
        double height = 10.0 - 3.1 * Math.sqrt(1 + 0.1 * 0.1);
        build(30, scales, List.of(pin(50, height - 0.001, 6.2, Pin.Fill.OPEN)));
        UnfitBuildException fault = assertThrows(
                UnfitBuildException.class,
                () -> build(30, scales, List.of(pin(50, height + 0.001, 6.2, Pin.Fill.OPEN))));
        assertEquals("pins[1].up", fault.key());
    }

    @Test
    void holesMayTouchButNotOverlap() {
        Scales scales = scales(List.of(station(0, 26)));
        build(26, scales, List.of(pin(20, 0, 6.5, Pin.Fill.OPEN), pin(26.5001, 0, 6.5, Pin.Fill.OPEN)));
        UnfitBuildException fault = assertThrows(
                UnfitBuildException.class,
                () -> build(26, scales, List.of(pin(20, 0, 6.5, Pin.Fill.OPEN), pin(26.499, 0, 6.5, Pin.Fill.OPEN))));
        assertEquals("pins[2].along", fault.key());
    }

    @Test
    void aBuildKeepsItsOwnCopies() {
        List<Pin> pins = new ArrayList<>(List.of(pin(20, 0, 6.2, Pin.Fill.OPEN)));
        FullTangBuild build = build(26, scales(List.of(station(0, 26))), pins);
        pins.clear();
        assertEquals(1, build.pins().size());
        assertThrows(UnsupportedOperationException.class, () -> build.pins().clear());
        assertThrows(
                UnsupportedOperationException.class, () -> build.materialIds().clear());
    }

    @Test
    void everyMaterialOfTheBuildIsListedOnce() {
        FullTangBuild build = build(
                26,
                scales(List.of(station(0, 26))),
                List.of(pin(20, 0, 6.2, Pin.Fill.OPEN), pin(60, 0, 6.2, Pin.Fill.OPEN)));
        assertEquals(
                List.of(
                        "steel-carbon",
                        "walnut-black",
                        "vulcanised-fibre",
                        "nickel-silver",
                        "copper",
                        "epoxy-two-part"),
                List.copyOf(build.materialIds()));
    }

    @Test
    void aPlaceAndAClimateFileTogetherAreRefused() {
        UnfitBuildException fault = assertThrows(
                UnfitBuildException.class,
                () -> new Order(
                        Optional.empty(),
                        Optional.of("yakutsk"),
                        Optional.empty(),
                        Optional.of(Path.of("a.csv")),
                        "good-new",
                        false));
        assertEquals("climate", fault.key());
    }

    @Test
    void aStateNoWorkshopHasIsRefused() {
        assertThrows(UnfitBuildException.class, () -> new WorkState.SettledAir(new RelativeHumidity(0.02), ROOM));
        assertThrows(UnfitBuildException.class, () -> new WorkState.MeasuredMoisture(new MoistureContent(0.41), ROOM));
        assertThrows(
                UnfitBuildException.class,
                () -> new WorkState.SettledAir(new RelativeHumidity(0.5), new Temperature(61)));
        assertThrows(UnfitBuildException.class, () -> AIR.at(new Temperature(-31)));
    }

    private static FullTangBuild build(double tangWidth, Scales scales, List<Pin> pins) {
        return new FullTangBuild(
                new Order(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), "good-new", false),
                new Tang("steel-carbon", mm(tangWidth), mm(4), mm(2)),
                scales,
                List.of(new Liner("vulcanised-fibre", mm(0.8))),
                Optional.of("nickel-silver"),
                pins,
                new GlueLine("epoxy-two-part", mm(0.1)),
                AIR,
                AIR);
    }

    private static Scales scales(List<Station> profile) {
        return new Scales(
                "walnut-black", Optional.of(Cut.FLAT), Optional.empty(), mm(8), mm(110), profile, mm(0.3), "bare");
    }

    private static Station station(double at, double width) {
        return new Station(mm(at), mm(width));
    }

    private static Pin pin(double along, double up, double hole, Pin.Fill fill) {
        return new Pin(Pin.Kind.SOLID, "copper", mm(6), mm(hole), mm(along), mm(up), fill);
    }

    private static Length mm(double millimetres) {
        return Length.ofMillimetres(millimetres);
    }
}
