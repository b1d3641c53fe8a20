package hafthold.decide;

import hafthold.knife.Pin;
import hafthold.material.Cut;
import hafthold.quantity.Length;
import hafthold.quantity.RelativeHumidity;
import java.util.List;

/** Something about a build that can be done otherwise; put into words late, by the report. */
public sealed interface Change {

    /**
     * Let the stock settle in other air before it is glued and sanded for the last time.
     *
     * @param humidity of that air
     * @param moistureFraction moisture content it settles at, kg/kg
     * @param atLimit true where going further would be better still but is not advised
     */
    record Condition(RelativeHumidity humidity, double moistureFraction, boolean atLimit) implements Change {}

    /**
     * Cut both scales another way.
     *
     * @param cut the new one
     */
    record Recut(Cut cut) implements Change {}

    /**
     * Other pins or holes, the same for all.
     *
     * @param diameter of the pins
     * @param hole as drilled in the scales
     * @param fill what is in the ring
     */
    record Pins(Length diameter, Length hole, Pin.Fill fill) implements Change {}

    /**
     * Another thickness of the glue line.
     *
     * @param thickness of the cured layer
     */
    record BondLine(Length thickness) implements Change {}

    /**
     * Another glue.
     *
     * @param id of the adhesive
     * @param name for people
     */
    record Glue(String id, String name) implements Change {}

    /**
     * Another material for both scales.
     *
     * @param id of the material
     * @param name for people
     */
    record Material(String id, String name) implements Change {}

    /**
     * One part of a stack of another material.
     *
     * @param place from 1 at the guard
     * @param replaced name of what it is made of now
     * @param id of the material
     * @param name for people
     */
    record Part(int place, String replaced, String id, String name) implements Change {}

    /**
     * A harder pull on the nut.
     *
     * @param newtons of the nut
     */
    record Preload(double newtons) implements Change {}

    /**
     * Several at once.
     *
     * @param changes in the order they were found
     */
    record Together(List<Change> changes) implements Change {

        /** Keeps its own copy. */
        public Together {
            changes = List.copyOf(changes);
        }
    }
}
