package hafthold.simulate;

import hafthold.material.Cut;
import hafthold.quantity.Band;
import hafthold.quantity.Length;
import java.util.List;
import java.util.Optional;

/**
 * What one full-tang knife does over the customer's year: the worse of its two sides. Movements are the year's worst,
 * zero or more, metres; stresses in pascals, after relaxation.
 *
 * @param whole what every answer about a handle holds, edges as bonded and as unglued
 * @param outerShy steel proud of the scale at the outer face, a side
 * @param outerProud scale proud of the steel there
 * @param domeHollow face hollow: its middle below its edges
 * @param domeRound face round: its middle above its edges
 * @param endMismatch end of the glued scale against the steel at bolster and butt, either way
 * @param pinSpan change of the distance between the outermost holes against the steel, unglued, either way
 * @param bow of the whole handle, where its two scales lie differently
 * @param bolster where bolster, tang and scale meet; empty without a bolster
 * @param glueShear shear in the worst glue line, mean over its last 2 mm
 * @param gluePeel pull in the worst glue line, mean over its last 2 mm
 * @param glueShearLastMillimetre shear over the last 1 mm
 * @param gluePeelLastMillimetre pull over the last 1 mm
 * @param glueUse glue stress over strength at the temperature of the hour
 * @param glueMonth when that is largest, 1 to 12
 * @param middleUse tension across the grain in the middle of the scale over strength; empty, like the next two, where the
 *     strength is not known
 * @param tearUse pull on the scale beside the glued edge over its strength
 * @param crackUse the largest of middle, tear and pins
 * @param softening what softens first in the hottest air; empty where nothing in it states a softening temperature
 * @param hottestCelsius hottest air about the knife
 * @param coldestCelsius coldest air about the knife
 * @param set lasting loss of half the width after restrained swelling
 * @param pins one a pin of the build
 * @param sides each scale by itself
 * @param places edges at the places where the profile changes, the widest first, without bands
 * @param drivers inputs by their share in the doubt about the edge, largest first
 * @param days day by day
 * @param dryPose the widest section when its edge stands lowest
 * @param wetPose the widest section when its edge stands highest
 * @param samples the same year with every input drawn from its range, without days and places, one a sample; empty where
 *     only values were asked for
 */
public record FitYear(
        HandleYear whole,
        Band outerShy,
        Band outerProud,
        Band domeHollow,
        Band domeRound,
        Band endMismatch,
        Band pinSpan,
        Optional<BowYear> bow,
        Optional<BolsterYear> bolster,
        Band glueShear,
        Band gluePeel,
        Band glueShearLastMillimetre,
        Band gluePeelLastMillimetre,
        Band glueUse,
        int glueMonth,
        Optional<Band> middleUse,
        Optional<Band> tearUse,
        Optional<Band> crackUse,
        Optional<SofteningMargin> softening,
        double hottestCelsius,
        double coldestCelsius,
        Band set,
        List<PinYear> pins,
        List<SideYear> sides,
        List<PlaceYear> places,
        List<Driver> drivers,
        FitDays days,
        SectionPose dryPose,
        SectionPose wetPose,
        List<FitYear> samples) {

    /** How much of a glue line's end its shear and pull are means of. */
    public static final Length GLUE_END = Length.ofMillimetres(2);

    /** Keeps its own copies. */
    public FitYear {
        samples = List.copyOf(samples);
        pins = List.copyOf(pins);
        sides = List.copyOf(sides);
        places = List.copyOf(places);
        drivers = List.copyOf(drivers);
    }

    /**
     * Bow of the whole handle, the year's worst over a straight-edge from bolster to butt.
     *
     * @param hollowLeft hollow on the left side, m
     * @param hollowRight hollow on the right side, m
     * @param month when the larger of both falls, 1 to 12
     */
    public record BowYear(Band hollowLeft, Band hollowRight, int month) {}

    /**
     * Edges at the bolster line, a side, the year's worst since final sanding.
     *
     * @param againstTang bolster below and above the tang, by heat alone
     * @param scale glued scale below and above the bolster, half way up, without bands
     */
    public record BolsterYear(Step againstTang, Step scale) {}

    /**
     * One pin through the year.
     *
     * @param diameter of the pin
     * @param edgeDistance from its middle to the nearest edge or end of the scale
     * @param gapAlong widest opening along the handle
     * @param gapAcross widest opening across it
     * @param squeezeAlong largest overlap along the handle
     * @param squeezeAcross largest overlap across it
     * @param headProud head above the face
     * @param headSunk head below the face
     * @param crackUse tension beside the hole over the scale's strength across the grain; empty where that is not known
     */
    public record PinYear(
            Length diameter,
            Length edgeDistance,
            Band gapAlong,
            Band gapAcross,
            Band squeezeAlong,
            Band squeezeAcross,
            Band headProud,
            Band headSunk,
            Optional<Band> crackUse) {

        /** The worse of a year and its events. */
        PinYear worse(PinYear event) {
            return new PinYear(
                    diameter,
                    edgeDistance,
                    EventReading.worse(gapAlong, event.gapAlong),
                    EventReading.worse(gapAcross, event.gapAcross),
                    EventReading.worse(squeezeAlong, event.squeezeAlong),
                    EventReading.worse(squeezeAcross, event.squeezeAcross),
                    EventReading.worse(headProud, event.headProud),
                    EventReading.worse(headSunk, event.headSunk),
                    EventReading.worse(crackUse, event.crackUse));
        }
    }

    /**
     * One scale by itself.
     *
     * @param name left, right or both
     * @param cut how it lies
     * @param dryPose the widest section when its edge stands lowest
     * @param wetPose the widest section when its edge stands highest
     */
    public record SideYear(
            String name,
            Cut cut,
            Band edgeShy,
            Band edgeProud,
            Band freeShy,
            Band freeProud,
            SectionPose dryPose,
            SectionPose wetPose) {}

    /**
     * The worse edge at one place along the handle.
     *
     * @param along from the bolster
     * @param width of the tang there
     * @param edgeShy steel proud of the scale there, m
     * @param edgeProud scale proud of the steel there, m
     */
    public record PlaceYear(Length along, Length width, double edgeShy, double edgeProud) {}

    /**
     * The year day by day, of the side that moves more.
     *
     * @param edge glued edge at mid-thickness, m, positive proud
     * @param freeEdge the same unglued
     * @param glueUse largest use of the glue's strength of the day
     * @param middleUse largest use of the scale's strength across the grain of the day; no days, as in the next two, where
     *     that strength is not known
     * @param tearUse the same of the scale's own wood at the glued edge
     * @param pinUse the same beside the pins, the worst of them
     */
    public record FitDays(
            List<Band> edge,
            List<Band> freeEdge,
            List<Double> glueUse,
            List<Double> middleUse,
            List<Double> tearUse,
            List<Double> pinUse) {

        /** No day at all. */
        static final FitDays NONE = new FitDays(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

        /** Keeps its own copies. */
        public FitDays {
            edge = List.copyOf(edge);
            freeEdge = List.copyOf(freeEdge);
            glueUse = List.copyOf(glueUse);
            middleUse = List.copyOf(middleUse);
            tearUse = List.copyOf(tearUse);
            pinUse = List.copyOf(pinUse);
        }
    }
}
