package hafthold.simulate;

import hafthold.knife.FullTangKnife;
import hafthold.knife.Pin;
import hafthold.quantity.Band;
import hafthold.quantity.Length;
import hafthold.simulate.FitYear.PinYear;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * What runs of both sides answer together, each quantity with its band: of the year's samples, or of events.
 *
 * @param of band of a quantity of a side, the worse side counting
 * @param strength whether uses of the scale's strength can be stated
 */
record SideBands(Function<ToDoubleFunction<SideMovement>, Band> of, ScaleStrength strength) {

    static SideBands of(FullTangKnife knife, Function<ToDoubleFunction<SideMovement>, Band> of) {
        return new SideBands(of, ScaleStrength.of(HandleEngine.partsOf(knife.scale(), knife.cutLeft())));
    }

    Band band(ToDoubleFunction<SideMovement> quantity) {
        return of.apply(quantity);
    }

    EdgeSteps edges() {
        return new EdgeSteps(step(SideMovement::mid), step(SideMovement::free), step(SideMovement::tangLine));
    }

    Step step(Function<SideMovement, Swing> swing) {
        return new Step(
                band(side -> swing.apply(side).below()),
                band(side -> swing.apply(side).above()));
    }

    EndSteps ends() {
        return new EndSteps(
                band(side -> side.freeLength().either()),
                band(side -> side.end().below()),
                band(side -> side.end().above()));
    }

    WorstPins worstPins() {
        return new WorstPins(
                overPins(PinMovement::gap),
                overPins(PinMovement::squeeze),
                pinUse(),
                overPins(pin -> pin.head().above()),
                overPins(pin -> pin.head().below()));
    }

    /** One by one. */
    List<PinYear> pins(FullTangKnife knife) {
        List<PinYear> pins = new ArrayList<>();
        for (int i = 0; i < knife.build().pins().size(); i++) {
            Pin pin = knife.build().pins().get(i);
            int index = i;
            Function<ToDoubleFunction<PinMovement>, Band> one =
                    quantity -> band(side -> quantity.applyAsDouble(side.pins().get(index)));
            pins.add(new PinYear(
                    pin.diameter(),
                    new Length(PinRun.edgeDistance(knife, pin)),
                    one.apply(PinMovement::gapAlong),
                    one.apply(PinMovement::gapAcross),
                    one.apply(movement -> movement.along().below()),
                    one.apply(movement -> movement.across().below()),
                    one.apply(movement -> movement.head().above()),
                    one.apply(movement -> movement.head().below()),
                    strength.besidePins(one.apply(PinMovement::squeeze), one.apply(PinMovement::largestSplitUse))));
        }
        return pins;
    }

    Optional<Band> middleUse() {
        return strength.use(band(SideMovement::middleUse));
    }

    Optional<Band> tearUse() {
        return strength.use(band(SideMovement::tearUse));
    }

    Optional<Band> pinUse() {
        return strength.besidePins(overPins(PinMovement::squeeze), overPins(PinMovement::largestSplitUse));
    }

    /** Held back by the glue, in its middle or at its glued edge. */
    Optional<Band> splitUse() {
        return strength.use(band(side -> Math.max(side.middleUse(), side.tearUse())));
    }

    /** The largest of middle, tear and pins. */
    Optional<Band> crackUse() {
        return strength.use(band(side ->
                Math.max(worst(side, PinMovement::largestSplitUse), Math.max(side.middleUse(), side.tearUse()))));
    }

    private Band overPins(ToDoubleFunction<PinMovement> quantity) {
        return band(side -> worst(side, quantity));
    }

    private static double worst(SideMovement side, ToDoubleFunction<PinMovement> quantity) {
        return side.pins().stream().mapToDouble(quantity).max().orElse(0);
    }
}
