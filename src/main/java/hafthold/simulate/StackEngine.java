package hafthold.simulate;

import hafthold.knife.TangStackKnife;
import java.util.List;

/**
 * A stack of parts on a through or hidden tang through the customer's year: what each part contributes against the steel
 * between guard and nut, the load or gap that follows, and what crushing leaves.
 *
 * <p>Each part is open to the air all round; its load relaxes as the stated share says. The year is run twice, so that
 * what was crushed in the damp shows as a gap in the dry.
 */
public final class StackEngine {
    private final TangStackKnife knife;
    private final Destination destination;
    private final Draws draws;
    private final LayerMoisture moisture;

    /**
     * An engine for one knife in one place.
     *
     * @param sampling how often a year is run with other figures
     */
    public StackEngine(TangStackKnife knife, Destination destination, Sampling sampling) {
        this(
                knife,
                destination,
                new Draws(sampling),
                new LayerMoisture(destination, knife.build().made()));
    }

    private StackEngine(TangStackKnife knife, Destination destination, Draws draws, LayerMoisture moisture) {
        this.draws = draws;
        this.knife = knife;
        this.destination = destination;
        this.moisture = moisture;
    }

    /** An engine for another knife in the same place that shares what this one has solved. */
    public StackEngine of(TangStackKnife other) {
        return new StackEngine(
                other, destination, draws, moisture.madeAt(other.build().made()));
    }

    /** The year at the value of every input, without bands: for trying changes of the build. */
    public StackYear yearWithoutBands() {
        return answer(new Spread<>(run(Doubt.NONE), List.of()), true).year(List.of());
    }

    /** The year with the band of every answer. */
    public StackYear year() {
        List<StackRun> runs = draws.doubts().parallelStream().map(this::run).toList();
        List<StackYear> samples = runs.stream()
                .map(run -> answer(new Spread<>(run, List.of()), false).year(List.of()))
                .toList();
        return answer(new Spread<>(run(Doubt.NONE), runs), true).year(samples);
    }

    private StackRun run(Doubt doubt) {
        return StackRun.of(knife, destination, moisture, doubt);
    }

    private StackAnswer answer(Spread<StackRun> spread, boolean tellsDays) {
        return new StackAnswer(knife, destination, moisture, draws, spread, tellsDays);
    }
}
