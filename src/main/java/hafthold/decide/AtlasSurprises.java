package hafthold.decide;

import hafthold.air.ClimateGroup;
import hafthold.decide.Atlas.Cell;
import hafthold.decide.Atlas.Line;
import hafthold.material.Family;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Looks through an atlas for what a maker would not have guessed.
 *
 * <p>A place counts as odd where the share of materials that stay lies a quarter or more off that of its climate; a
 * material where its usual verdict lies two classes or more off its family's; a treatment as no help where the treated
 * wood does no better than the plain one in half of the places or more (all three by judgement).
 */
public final class AtlasSurprises {
    private static final int MOST_OF_A_KIND = 4;
    private static final double ODD_SHARE = 0.25;
    private static final int ODD_CLASSES = 2;
    private static final int FEWEST_TO_COMPARE = 4;

    private AtlasSurprises() {}

    /** What was found, of each sort the most striking first; nothing where there is too little to compare. */
    public static List<AtlasSurprise> of(Atlas atlas) {
        List<AtlasSurprise> found = new ArrayList<>();
        ends(atlas).ifPresent(found::add);
        found.addAll(oddPlaces(atlas));
        found.addAll(oddMaterials(atlas));
        found.addAll(noHelp(atlas));
        return found;
    }

    private static Optional<AtlasSurprise> ends(Atlas atlas) {
        List<Tally> tallies = IntStream.range(0, atlas.sites().size())
                .mapToObj(place -> Tally.of(atlas.cellsAt(place)))
                .toList();
        Comparator<Integer> byStaying =
                Comparator.comparingInt(place -> tallies.get(place).of(Verdict.STAYS));
        Comparator<Integer> byUse = Comparator.comparingDouble(place -> -Atlas.meanUse(atlas.cellsAt(place)));
        List<Integer> order = IntStream.range(0, tallies.size())
                .boxed()
                .sorted(byStaying.thenComparing(byUse))
                .toList();
        int harshest = order.get(0);
        int kindest = order.get(order.size() - 1);
        return tallies.get(harshest).of(Verdict.STAYS) == tallies.get(kindest).of(Verdict.STAYS)
                ? Optional.empty()
                : Optional.of(new AtlasSurprise.Ends(
                        atlas.sites().get(kindest),
                        tallies.get(kindest),
                        atlas.sites().get(harshest),
                        tallies.get(harshest)));
    }

    private static List<AtlasSurprise.OddPlace> oddPlaces(Atlas atlas) {
        List<AtlasSurprise.OddPlace> odd = new ArrayList<>();
        for (ClimateGroup climate : atlas.climates()) {
            List<Integer> places = atlas.placesOf(climate);
            if (places.size() >= FEWEST_TO_COMPARE) {
                Tally all = Tally.of(places.stream()
                        .flatMap(at -> atlas.cellsAt(at).stream())
                        .toList());
                places.forEach(at ->
                        odd.add(new AtlasSurprise.OddPlace(atlas.sites().get(at), Tally.of(atlas.cellsAt(at)), all)));
            }
        }
        return odd.stream()
                .filter(place -> distance(place) >= ODD_SHARE)
                .sorted(Comparator.comparingDouble((AtlasSurprise.OddPlace place) -> -distance(place)))
                .limit(MOST_OF_A_KIND)
                .toList();
    }

    private static double distance(AtlasSurprise.OddPlace place) {
        return Math.abs(place.here().share(Verdict.STAYS) - place.climate().share(Verdict.STAYS));
    }

    private static List<AtlasSurprise.OddMaterial> oddMaterials(Atlas atlas) {
        List<AtlasSurprise.OddMaterial> odd = new ArrayList<>();
        for (Family family : atlas.families()) {
            List<Line> lines = atlas.linesOf(family);
            if (lines.size() >= FEWEST_TO_COMPARE) {
                Verdict usual = Tally.of(lines.stream()
                                .flatMap(line -> line.cells().stream())
                                .toList())
                        .usual();
                lines.forEach(line -> odd.add(new AtlasSurprise.OddMaterial(
                        line, Tally.of(line.cells()).usual(), usual)));
            }
        }
        return odd.stream()
                .filter(material -> material.usual() != Verdict.UNKNOWN && distance(material) >= ODD_CLASSES)
                .sorted(Comparator.comparingInt((AtlasSurprise.OddMaterial material) -> -distance(material)))
                .limit(MOST_OF_A_KIND)
                .toList();
    }

    private static int distance(AtlasSurprise.OddMaterial material) {
        return Math.abs(material.usual().compareTo(material.ofFamily()));
    }

    private static List<AtlasSurprise.NoHelp> noHelp(Atlas atlas) {
        List<AtlasSurprise.NoHelp> found = new ArrayList<>();
        for (Line treated : atlas.lines()) {
            int plus = treated.materialId().indexOf('+');
            String species = plus < 0 ? "" : treated.materialId().substring(0, plus);
            atlas.lines().stream()
                    .filter(line -> line.materialId().equals(species) && line.cut() == treated.cut())
                    .findFirst()
                    .map(plain -> new AtlasSurprise.NoHelp(treated, plain, noBetter(treated.cells(), plain.cells())))
                    .filter(pair -> 2 * pair.places() >= atlas.sites().size())
                    .ifPresent(found::add);
        }
        return found.stream()
                .sorted(Comparator.comparingInt(AtlasSurprise.NoHelp::places).reversed())
                .limit(MOST_OF_A_KIND)
                .toList();
    }

    private static int noBetter(List<Cell> treated, List<Cell> plain) {
        return (int) IntStream.range(0, plain.size())
                .filter(place -> treated.get(place).use() >= plain.get(place).use())
                .count();
    }
}
