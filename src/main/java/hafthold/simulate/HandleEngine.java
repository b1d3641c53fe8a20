package hafthold.simulate;

import hafthold.knife.WorkState;
import hafthold.material.Cut;
import hafthold.material.Hybrid;
import hafthold.material.Material;
import hafthold.material.ScaleMaterial;
import hafthold.quantity.Band;
import hafthold.source.Evidence;
import hafthold.source.Figure;
import hafthold.source.Finding;
import hafthold.transport.Resolution;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/**
 * One scale material on one handle through the customer's year.
 *
 * <p>Read it as the method statement: moisture through the year for every doubt about an input; from moisture and
 * temperature the strain of each part in the directions of the handle; from strain the steps and gaps against steel;
 * from all doubts the band.
 */
public final class HandleEngine {
    private final Conditions order;
    private final Conditions conditions;
    private final LayerMoisture moisture;
    private final Map<Lay, Double> cracks = new ConcurrentHashMap<>();

    /** A material as it lies. */
    private record Lay(String material, Cut cut) {}

    /** An engine for one order; moisture once computed is kept for further cuts of the same material. */
    public HandleEngine(Conditions order) {
        this.order = order;
        this.conditions = order.at(order.destination().thinned(Resolution.STANDARD.airStrayFraction()));
        this.moisture = new LayerMoisture(conditions.destination(), made());
    }

    /** The year of a material in a cut; for a hybrid the cut of each part is its own. */
    public HandleYear year(ScaleMaterial material, Cut cut) {
        List<Hybrid.Part> parts = partsOf(material, cut);
        FreeMovement value = movement(parts, Doubt.NONE);
        List<Doubt> doubts = Doubt.ONE_AT_A_TIME.stream()
                .filter(doubt -> parts.stream().anyMatch(part -> doubt.matters(part.material(), part.cut())))
                .toList();
        Spread<FreeMovement> spread = new Spread<>(
                value, doubts.stream().map(doubt -> movement(parts, doubt)).toList());
        RestsOn restsOn = RestsOn.of(
                material.evidence(),
                parts,
                Drivers.of(doubts, spread, movement -> Math.max(movement.edgeShy(), movement.edgeProud())));
        return answer(material, cut, parts, spread, restsOn);
    }

    /**
     * Makes ready for {@link #year} of several materials: their moisture is worked out side by side, which is several times
     * quicker than one by one and gives the same.
     *
     * @param parts all their parts, see {@link #partsOf}
     */
    public void prepare(List<Hybrid.Part> parts) {
        List<Doubt> doubts = Stream.concat(Stream.of(Doubt.NONE), Doubt.ONE_AT_A_TIME.stream())
                .toList();
        moisture.prepareMeans(parts, order.handle(), order.finish(), doubts);
    }

    /** The year of a material in a cut hour by hour, everything at its value; of a hybrid, the moisture of its first part. */
    public ScaleTrace trace(ScaleMaterial material, Cut cut) {
        List<Hybrid.Part> parts = partsOf(material, cut);
        Hybrid.Part leading = parts.get(0);
        LayerMoisture hourly = new LayerMoisture(order.destination(), made());
        return new ScaleTrace(
                order,
                motions(parts, hourly, Doubt.NONE),
                leading.material()
                        .water()
                        .map(water -> hourly.scaleHistory(
                                leading.material(), leading.cut(), order.handle(), order.finish())));
    }

    private FreeMovement movement(List<Hybrid.Part> parts, Doubt doubt) {
        return FreeMovement.of(motions(parts, moisture, doubt), conditions);
    }

    private List<PartMotion> motions(List<Hybrid.Part> parts, LayerMoisture moisture, Doubt doubt) {
        return parts.stream()
                .map(part -> PartMotion.of(
                        part.material(),
                        part.cut(),
                        part.share().value(),
                        moisture.stockFraction(part.material(), made(), doubt),
                        course(part, moisture, doubt),
                        crackPerStrain(part.material(), part.cut()),
                        doubt))
                .toList();
    }

    private MoistureCourse course(Hybrid.Part part, LayerMoisture moisture, Doubt doubt) {
        return moisture.scaleMean(part.material(), part.cut(), order.handle(), order.finish(), doubt);
    }

    private WorkState made() {
        return new WorkState.SettledAir(order.madeHumidity(), order.madeTemperature());
    }

    private double crackPerStrain(Material material, Cut cut) {
        return cracks.computeIfAbsent(
                new Lay(material.id(), cut),
                lay -> PinCrack.perStrain(material, cut).orElse(0.0));
    }

    /** What a scale consists of; a plain material is its own only part. */
    public static List<Hybrid.Part> partsOf(ScaleMaterial material, Cut cut) {
        if (material instanceof Hybrid hybrid) {
            return hybrid.parts();
        }
        Material whole = (Material) material;
        return List.of(
                new Hybrid.Part(whole, cut, new Figure(Band.exact(1), Evidence.MEASURED, "own", "the whole scale")));
    }

    private HandleYear answer(
            ScaleMaterial material, Cut cut, List<Hybrid.Part> parts, Spread<FreeMovement> spread, RestsOn restsOn) {
        Material wettest = parts.get(0).material();
        MoistureCourse course = course(parts.get(0), moisture, Doubt.NONE);
        List<Band> days = new ArrayList<>();
        for (int day = 0; day < spread.value().dailyEdge().length; day++) {
            int today = day;
            days.add(spread.signed(movement -> movement.dailyEdge()[today]));
        }
        Band shy = spread.of(FreeMovement::edgeShy);
        Band proud = spread.of(FreeMovement::edgeProud);
        double finish = moisture.stockFraction(wettest, made(), Doubt.NONE);
        List<Finding> findings = new ArrayList<>(material.findings());
        PartsJoint joint = PartsJoint.of(
                material,
                spread.map(FreeMovement::joint),
                conditions.handle().scaleThickness().metres(),
                finish - course.least());
        findings.addAll(PartingFindings.of(material, cut, joint, spread.value(), conditions, course, finish));
        return new HandleYear(
                        material.id(),
                        material.name(),
                        material.family(),
                        material instanceof Hybrid ? Cut.NONE : cut,
                        finish,
                        course.least(),
                        course.most(),
                        shy,
                        proud,
                        shy,
                        proud,
                        spread.of(FreeMovement::lengthMismatch),
                        spread.of(FreeMovement::endShort),
                        spread.of(FreeMovement::endLong),
                        spread.of(FreeMovement::pinGap),
                        spread.of(FreeMovement::pinSqueeze),
                        spread.of(FreeMovement::pinCrackUse),
                        spread.of(FreeMovement::pinHeadProud),
                        spread.of(FreeMovement::pinHeadSunk),
                        joint,
                        conditions.destination().monthAt(spread.value().worstSample()),
                        restsOn,
                        findings,
                        conditions.destination().calendarYear(days),
                        conditions
                                .destination()
                                .calendarYear(course.dailyMeans(FreeMovement.samplesADay(
                                        conditions.destination().air()))))
                .through(StaySpan.of(
                        conditions.destination(), course, spread.value().dailyEdge()));
    }
}
