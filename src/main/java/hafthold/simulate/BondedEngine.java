package hafthold.simulate;

import hafthold.knife.FullTangKnife;
import hafthold.mechanics.BondedSection;
import hafthold.mechanics.OrthotropicElasticity;
import hafthold.mechanics.SectionInfluence;
import hafthold.quantity.Length;
import hafthold.simulate.FitYear.PlaceYear;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * One full-tang knife, bonded, through the customer's year.
 *
 * <p>Read it as the method statement: moisture in layers through the year for every sample of the inputs; from moisture
 * and temperature the free strain of each layer, since finish for offsets and since glue-up for stress; sections across
 * and along the handle, solved once for unit strains, turn these into steps at the edge and stress in glue and scale;
 * pins are held against holes that move with the scale; from all samples the band.
 *
 * <p>An engine keeps what it has solved: changed builds for the same destination are best run through {@link #of}.
 */
public final class BondedEngine {
    private final Setup setup;

    /**
     * An engine for one knife in one place.
     *
     * @param sampling how often a year is run with other figures
     */
    public BondedEngine(FullTangKnife knife, Destination destination, Sampling sampling) {
        this(new Setup(
                knife,
                destination,
                new Draws(sampling),
                new LayerMoisture(destination, knife.build().made()),
                new ConcurrentHashMap<>(),
                new ConcurrentHashMap<>()));
    }

    private BondedEngine(Setup setup) {
        this.setup = setup;
    }

    /** An engine for another knife in the same place that shares what this one has solved. */
    public BondedEngine of(FullTangKnife other) {
        return new BondedEngine(new Setup(
                other,
                setup.destination,
                setup.draws,
                setup.moisture.madeAt(other.build().made()),
                setup.influences,
                setup.splits));
    }

    /** What runs share. */
    record Setup(
            FullTangKnife knife,
            Destination destination,
            Draws draws,
            LayerMoisture moisture,
            Map<BondedSection, SectionInfluence> influences,
            Map<OrthotropicElasticity, PinSplit> splits) {

        SectionInfluence influence(BondedSection section) {
            return influences.computeIfAbsent(section, BondedSection::influence);
        }

        PinSplit split(OrthotropicElasticity scale, boolean anyWay) {
            return splits.computeIfAbsent(scale, elasticity -> new PinSplit(elasticity, anyWay));
        }
    }

    /** The year with the band of every answer. */
    public FitYear year() {
        return answer(setup.draws.doubts(), SectionPlan.positions(setup.knife));
    }

    /** The year at the value of every input, without bands: for trying changes of the build. */
    public FitYear yearWithoutBands() {
        return answer(List.of(), List.of());
    }

    private FitYear answer(List<Doubt> doubts, List<Length> places) {
        List<BondedRun> samples =
                doubts.parallelStream().map(doubt -> BondedRun.of(setup, doubt)).toList();
        List<FitYear> years = samples.stream()
                .map(run -> new BondedAnswer(setup, new Spread<>(run, List.of()), false).year(List.of(), List.of()))
                .toList();
        return new BondedAnswer(setup, new Spread<>(BondedRun.of(setup, Doubt.NONE), samples), true)
                .year(places.stream().map(this::place).toList(), years);
    }

    private PlaceYear place(Length along) {
        Swing worst = setup.knife.sides().stream()
                .map(cut -> new SideRun(setup, cut, Doubt.NONE).edgeAt(along))
                .reduce(Swing::with)
                .orElseThrow();
        return new PlaceYear(along, setup.knife.build().tangWidthAt(along), worst.below(), worst.above());
    }
}
