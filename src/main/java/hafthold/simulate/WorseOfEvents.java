package hafthold.simulate;

import hafthold.air.CommonYear;
import hafthold.knife.FullTangKnife;
import hafthold.quantity.Band;
import hafthold.simulate.EventWindow.Sample;
import hafthold.simulate.FitYear.BolsterYear;
import hafthold.simulate.FitYear.PinYear;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;

/**
 * The worse of a bonded knife's year without and with events, quantity by quantity.
 *
 * @param quiet the year without
 * @param events the worst of all events and of the hours between them
 * @param hours each side in the hours of the year with events, everything at its value
 * @param set lasting loss of half the width in the year with events
 * @param answers one a distinct event
 * @param course moisture of the scale in the year with events
 */
record WorseOfEvents(
        FullTangKnife knife,
        FitYear quiet,
        SideBands events,
        List<SideMovement> hours,
        Band set,
        List<BondedEventAnswer> answers,
        EventCourse course) {
    private static final double SECONDS_AN_HOUR = 3600;

    FitYear year() {
        EventHeat heat = EventHeat.of(
                Softening.materials(knife),
                answers.stream().map(BondedEventAnswer::scale).toList());
        boolean hotter = heat.hottestCelsius() > quiet.hottestCelsius();
        Step outer = new Step(quiet.outerShy(), quiet.outerProud()).worse(events.step(SideMovement::outer));
        Step dome = new Step(quiet.domeHollow(), quiet.domeRound()).worse(events.step(SideMovement::dome));
        Band glueUse = events.band(side -> side.glue().use());
        return new FitYear(
                whole(),
                outer.shy(),
                outer.proud(),
                dome.shy(),
                dome.proud(),
                worse(quiet.endMismatch(), side -> side.end().either()),
                worse(quiet.pinSpan(), side -> side.pinSpan().either()),
                quiet.bow(),
                bolster(),
                worse(quiet.glueShear(), side -> side.glue().shear2()),
                worse(quiet.gluePeel(), side -> side.glue().peel2()),
                worse(quiet.glueShearLastMillimetre(), side -> side.glue().shear1()),
                worse(quiet.gluePeelLastMillimetre(), side -> side.glue().peel1()),
                EventReading.worse(quiet.glueUse(), glueUse),
                glueUse.value() > quiet.glueUse().value()
                        ? worstMonth(
                                BondedEventAnswer::glueUse,
                                side -> side.glue().use(),
                                side -> side.glue().hour())
                        : quiet.glueMonth(),
                EventReading.worse(quiet.middleUse(), events.middleUse()),
                EventReading.worse(quiet.tearUse(), events.tearUse()),
                EventReading.worse(quiet.crackUse(), events.crackUse()),
                hotter ? heat.margin() : quiet.softening(),
                Math.max(quiet.hottestCelsius(), heat.hottestCelsius()),
                Math.min(quiet.coldestCelsius(), -EventReading.most(samples(), sample -> -sample.backCelsius())),
                EventReading.worse(quiet.set(), set),
                pins(),
                quiet.sides(),
                quiet.places(),
                quiet.drivers(),
                quiet.days(),
                quiet.dryPose(),
                quiet.wetPose(),
                List.of());
    }

    /** Bolster and tang part most in the hottest or the coldest of the events; the scale beside them is that of the year. */
    private Optional<BolsterYear> bolster() {
        return knife.bolster()
                .flatMap(material -> quiet.bolster().map(year -> {
                    double hot =
                            BolsterLine.overTangAt(EventReading.most(samples(), Sample::backCelsius), knife, material);
                    double cold = BolsterLine.overTangAt(
                            -EventReading.most(samples(), sample -> -sample.backCelsius()), knife, material);
                    Step during = new Step(
                            Band.exact(Math.max(0, -Math.min(hot, cold))),
                            Band.exact(Math.max(0, Math.max(hot, cold))));
                    return new BolsterYear(year.againstTang().worse(during), year.scale());
                }));
    }

    private HandleYear whole() {
        HandleYear whole = quiet.whole();
        EdgeSteps edge = events.edges();
        boolean edgeWorse =
                edge.bonded().larger().value() > whole.edge().bonded().larger().value();
        return new HandleYear(
                whole.scale(),
                whole.moisture()
                        .stretchedTo(
                                -EventReading.most(samples(), sample -> -sample.mean()),
                                EventReading.most(samples(), Sample::mean)),
                whole.edge().worse(edge),
                whole.ends().worse(events.ends()),
                whole.pins().worse(events.worstPins()),
                whole.joint(),
                whole.load(),
                edgeWorse
                        ? worstMonth(
                                answer -> EventReading.larger(
                                        answer.scale().edgeShy(), answer.scale().edgeProud()),
                                side -> side.mid().either(),
                                side -> side.mid().worstHour())
                        : whole.worstMonth(),
                whole.grounds().withoutSamples(),
                whole.days(),
                List.of());
    }

    private Band worse(Band year, ToDoubleFunction<SideMovement> of) {
        return EventReading.worse(year, events.band(of));
    }

    private List<PinYear> pins() {
        List<PinYear> during = events.pins(knife);
        List<PinYear> pins = new ArrayList<>();
        for (int i = 0; i < during.size(); i++) {
            pins.add(quiet.pins().get(i).worse(during.get(i)));
        }
        return pins;
    }

    private List<Sample> samples() {
        return EventWindow.samples(course.windows());
    }

    /** Month of the first time that the worst event happens, or of the hour between events that is worse still. */
    private int worstMonth(
            Function<BondedEventAnswer, Band> of,
            ToDoubleFunction<SideMovement> between,
            ToIntFunction<SideMovement> at) {
        BondedEventAnswer worst = answers.get(0);
        for (BondedEventAnswer answer : answers) {
            worst = of.apply(answer).value() > of.apply(worst).value() ? answer : worst;
        }
        SideMovement side =
                hours.stream().max(Comparator.comparingDouble(between)).orElseThrow();
        if (between.applyAsDouble(side) > of.apply(worst).value()) {
            return CommonYear.monthOfHour(at.applyAsInt(side) % CommonYear.HOURS);
        }
        int first = EventReading.windowsOf(worst.scale().event(), course).get(0);
        double hour = course.windows().get(first).startSeconds() / SECONDS_AN_HOUR;
        return CommonYear.monthOfHour((int) (hour % CommonYear.HOURS));
    }
}
