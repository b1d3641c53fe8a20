package hafthold.simulate;

import hafthold.knife.Grip;
import hafthold.knife.TangStackKnife;
import hafthold.material.Hybrid;
import hafthold.material.ScaleMaterial;
import hafthold.simulate.StackYear.PartYear;
import hafthold.source.Evidence;
import hafthold.source.Finding;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Puts the runs of a stack's year together into one answer.
 *
 * @param draws how the inputs of the runs were drawn
 * @param tellsDays whether days are told too, which samples do without
 */
record StackAnswer(
        TangStackKnife knife,
        Destination destination,
        LayerMoisture moisture,
        Draws draws,
        Spread<StackRun> spread,
        boolean tellsDays) {

    StackYear year(List<StackYear> samples) {
        StackRun value = spread.value();
        List<PartYear> parts = new ArrayList<>();
        int most = 0;
        Evidence evidence = Evidence.MEASURED;
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < knife.parts().size(); i++) {
            int index = i;
            ScaleMaterial material = knife.parts().get(i);
            parts.add(new PartYear(
                    material.id(),
                    material.name(),
                    knife.build().parts().get(i).length().metres(),
                    spread.of(run -> run.parts().get(index).below()),
                    spread.of(run -> run.parts().get(index).above()),
                    spread.of(run -> run.sets().get(index)),
                    material.evidence()));
            most = value.parts().get(i).either() > value.parts().get(most).either() ? i : most;
            evidence = evidence.weaker(material.evidence());
            material.findings().stream()
                    .filter(finding -> !findings.contains(finding))
                    .forEach(findings::add);
        }
        List<Driver> drivers = new Drivers(draws)
                .of(movers(), spread.inSamples(run -> run.length().either()));
        return new StackYear(
                whole(
                        most,
                        new Grounds(
                                RestsOn.grade(evidence),
                                findings,
                                drivers,
                                Once.of(samples.stream().map(StackYear::whole).toList()))),
                parts,
                spread.of(StackRun::gap),
                spread.of(run -> run.length().above()),
                spread.of(StackRun::load),
                spread.of(StackRun::setOfAll),
                destination.monthAt(
                        value.gap() > 0 ? value.gapHour() : value.length().leastHour() * StackRun.HOURS_A_STEP),
                value.joint(),
                drivers,
                tellsDays
                        ? destination.calendarYear(IntStream.range(0, value.dailyLength().length)
                                .mapToObj(day -> spread.signed(run -> run.dailyLength()[day]))
                                .toList())
                        : List.of(),
                tellsDays
                        ? destination.calendarYear(
                                Arrays.stream(value.dailyGap()).boxed().toList())
                        : List.of(),
                samples);
    }

    /** What the doubt about the length may come from. */
    private List<Hybrid.Part> movers() {
        return IntStream.range(0, knife.parts().size())
                .mapToObj(i -> HandleEngine.partsOf(knife.parts().get(i), knife.cut(i)))
                .flatMap(List::stream)
                .toList();
    }

    private HandleYear whole(int most, Grounds grounds) {
        Hybrid.Part part =
                HandleEngine.partsOf(knife.parts().get(most), knife.cut(most)).get(0);
        Grip grip = knife.build().grip();
        MoistureCourse course = moisture.block(
                        part.material(),
                        part.cut(),
                        Math.min(grip.width().metres(), grip.thickness().metres()) / 2,
                        knife.finish(),
                        Doubt.NONE)
                .mean();
        return new HandleYear(
                ScaleChoice.of(knife.parts().get(most), knife.cut(most)),
                new MoistureSpan(
                        moisture.stockFraction(part.material(), knife.build().made(), Doubt.NONE),
                        course.least(),
                        course.most()),
                EdgeSteps.NONE,
                new EndSteps(
                        spread.of(run -> run.length().either()),
                        spread.of(run -> run.length().below()),
                        spread.of(run -> run.length().above())),
                WorstPins.NONE,
                PartsJoint.NONE,
                Optional.empty(),
                destination.monthAt(spread.value().length().worstHour() * StackRun.HOURS_A_STEP),
                grounds,
                tellsDays ? new HandleDays(List.of(), destination.calendarYear(course.dailyMeans())) : HandleDays.NONE,
                tellsDays
                        ? StaySpan.of(destination, course, () -> spread.value().dailyLength())
                        : List.of());
    }
}
