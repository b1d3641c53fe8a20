package hafthold.decide;

import hafthold.air.ClimateGroup;
import hafthold.knife.Handle;
import hafthold.material.Cut;
import hafthold.material.Family;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.simulate.HandleYear;
import hafthold.source.Evidence;
import hafthold.source.Finding;
import hafthold.source.Message;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Many materials in many places, all in one setting.
 *
 * @param setting id of where the knives live
 * @param settingRule one sentence: how its air follows from the outdoor air
 * @param handle the handle they are compared on
 * @param madeTemperature temperature at final sanding
 * @param madeHumidity humidity of the workshop at final sanding
 * @param finishName finish on the scales
 * @param sites places, in the order of the table or of the question
 * @param lines materials, likewise
 * @param findings choices common to all answers
 */
public record Atlas(
        String setting,
        Message settingRule,
        Handle handle,
        Temperature madeTemperature,
        RelativeHumidity madeHumidity,
        String finishName,
        List<Site> sites,
        List<Line> lines,
        List<Finding> findings) {

    /** Keeps its own copies; rejects an atlas without places or materials, and lines of another length. */
    public Atlas {
        sites = List.copyOf(sites);
        lines = List.copyOf(lines);
        findings = List.copyOf(findings);
        if (sites.isEmpty() || lines.isEmpty()) {
            throw new IllegalArgumentException("an atlas needs a place and a material");
        }
        for (Line line : lines) {
            if (line.cells().size() != sites.size()) {
                throw new IllegalArgumentException(
                        line.materialId() + " has " + line.cells().size() + " answers for " + sites.size() + " places");
            }
        }
    }

    /**
     * A place.
     *
     * @param id id of the place
     * @param name name and country for people
     * @param climate kind of its outdoor climate
     */
    public record Site(String id, String name, ClimateGroup climate) {}

    /**
     * One material in all places.
     *
     * @param materialId id
     * @param materialName name for people
     * @param family family
     * @param cut how the scale lies
     * @param evidence weakest evidence among its figures; that of an answer may be better founded
     * @param findings choices made on the way to its figures
     * @param cells answers, in the order of the places
     */
    public record Line(
            String materialId,
            String materialName,
            Family family,
            Cut cut,
            Evidence evidence,
            List<Finding> findings,
            List<Cell> cells) {

        /** Keeps its own copies. */
        public Line {
            findings = List.copyOf(findings);
            cells = List.copyOf(cells);
        }
    }

    /**
     * One material in one place.
     *
     * @param rank among the materials of the atlas in this place, 1 is best
     * @param year what the handle does, without its days
     * @param verdict what to tell the customer
     * @param use largest movement over its seasonal limit
     * @param holds share of the samples that bear the verdict out, 0 to 1; empty where only values were asked for
     */
    public record Cell(int rank, HandleYear year, Verdict verdict, double use, OptionalDouble holds) {}

    /** Climates that have a place, from damp to dry. */
    public List<ClimateGroup> climates() {
        EnumSet<ClimateGroup> present = EnumSet.noneOf(ClimateGroup.class);
        sites.forEach(site -> present.add(site.climate()));
        return List.copyOf(present);
    }

    /** Families that have a material, in the order of materials. */
    public List<Family> families() {
        return lines.stream().map(Line::family).distinct().toList();
    }

    /** Materials of a family, the one that moves least over all places first. */
    public List<Line> linesOf(Family family) {
        return lines.stream()
                .filter(line -> line.family() == family)
                .sorted(Comparator.comparingDouble(line -> meanUse(line.cells())))
                .toList();
    }

    /** Numbers of the places of a climate, from 0. */
    public List<Integer> placesOf(ClimateGroup climate) {
        return IntStream.range(0, sites.size())
                .filter(place -> sites.get(place).climate() == climate)
                .boxed()
                .toList();
    }

    /** Answers of a material in a climate. */
    public List<Cell> cells(Line line, ClimateGroup climate) {
        return placesOf(climate).stream().map(line.cells()::get).toList();
    }

    /** Answers of all materials in a place. */
    public List<Cell> cellsAt(int place) {
        return lines.stream().map(line -> line.cells().get(place)).toList();
    }

    /** Mean over answers of the largest movement over its seasonal limit. */
    public static double meanUse(List<Cell> cells) {
        return cells.stream().mapToDouble(Cell::use).average().orElseThrow();
    }
}
