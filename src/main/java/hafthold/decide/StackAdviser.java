package hafthold.decide;

import hafthold.knife.StackPart;
import hafthold.knife.StackTang;
import hafthold.knife.TangStackBuild;
import hafthold.knife.TangStackKnife;
import hafthold.knife.WorkState;
import hafthold.knife.WorkState.SettledAir;
import hafthold.material.Cut;
import hafthold.material.Material;
import hafthold.material.ScaleMaterial;
import hafthold.quantity.Force;
import hafthold.quantity.RelativeHumidity;
import hafthold.simulate.StackEngine;
import hafthold.simulate.StackYear;
import hafthold.simulate.StackYear.PartYear;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Looks for changes of a stack that keep it tight, by running each through the engine: drier stock, a harder pull on the
 * nut, the part that moves most cut or made otherwise; the best of each together where none is enough alone.
 */
final class StackAdviser {
    private static final List<Integer> HUMIDITY_PERCENT = List.of(55, 50, 45, 40, 35, 30, 25);
    /** 1000 N is about a firm hand on the spanner of a 5 mm thread; more would rest on assumed figures of leather. */
    private static final List<Integer> PRELOAD_NEWTONS = List.of(500, 1000);

    /**
     * What a press in the damp is weighed against: proof load of an M5 thread of the softest common grade, 4.6 (ISO 898-1:
     * 14.2 mm2 at 225 MPa, from memory).
     */
    private static final double THREAD_BEARS_NEWTONS = 3200;

    private static final double DRIEST_MOISTURE = 0.05;
    private static final int MOST_MATERIALS = 2;
    private static final double WORTH_SAYING = 0.9;

    private final Judgement judgement;
    private final Offer offer;
    private final StackEngine engine;
    private final TangStackKnife knife;
    private final StackYear before;

    StackAdviser(Judgement judgement, Offer offer, StackEngine engine, TangStackKnife knife, StackYear before) {
        this.judgement = judgement;
        this.offer = offer;
        this.engine = engine;
        this.knife = knife;
        this.before = before;
    }

    /**
     * A change and how the knife does with it.
     *
     * @param use the larger of its uses of the limits and of what a thread bears
     */
    private record Trial(Change change, TangStackKnife knife, StackYear year, Verdict verdict, double use) {}

    /** Changes that help, the most helpful first; none where the stack stays as it is. */
    List<Advice> advice() {
        Verdict now = judgement.verdict(before);
        if (now == Verdict.STAYS || now == Verdict.UNKNOWN) {
            return List.of();
        }
        List<Trial> kept = new ArrayList<>();
        best(conditionTrials(knife)).ifPresent(kept::add);
        best(preloadTrials(knife)).ifPresent(kept::add);
        kept.addAll(otherParts(knife));
        if (kept.stream().noneMatch(trial -> trial.verdict().compareTo(Verdict.CARE) <= 0)) {
            together().ifPresent(kept::add);
        }
        double use = use(before);
        return kept.stream()
                .filter(trial ->
                        trial.use() < WORTH_SAYING * use || trial.verdict().compareTo(now) < 0)
                .sorted(order())
                .map(this::advice)
                .toList();
    }

    private static Comparator<Trial> order() {
        return Comparator.comparing(Trial::verdict).thenComparingDouble(Trial::use);
    }

    private static Optional<Trial> best(List<Trial> trials) {
        return trials.stream().min(order());
    }

    private Optional<Trial> together() {
        Optional<Trial> dry = best(conditionTrials(knife));
        TangStackKnife from = dry.map(Trial::knife).orElse(knife);
        List<Change> changes = new ArrayList<>();
        dry.ifPresent(trial -> changes.add(trial.change()));
        Optional<Trial> pulled = best(preloadTrials(from));
        if (pulled.isEmpty() || dry.isEmpty() || pulled.get().use() >= dry.get().use()) {
            return Optional.empty();
        }
        changes.add(pulled.get().change());
        Trial both = pulled.get();
        return Optional.of(
                new Trial(new Change.Together(changes), both.knife(), both.year(), both.verdict(), both.use()));
    }

    private List<Trial> conditionTrials(TangStackKnife from) {
        TangStackBuild b = from.build();
        double celsius = b.made().temperature().celsius();
        List<Trial> trials = new ArrayList<>();
        for (int percent : HUMIDITY_PERCENT) {
            RelativeHumidity humidity = new RelativeHumidity(percent / 100.0);
            Optional<Double> moisture = moistureOfMover(humidity, celsius);
            boolean drier = !(b.made() instanceof SettledAir air)
                    || humidity.fraction() < air.humidity().fraction() - 0.01;
            if (moisture.isEmpty() || moisture.get() < DRIEST_MOISTURE || !drier) {
                continue;
            }
            WorkState made = new SettledAir(humidity, b.made().temperature());
            TangStackBuild changed = new TangStackBuild(b.order(), b.tang(), b.grip(), b.parts(), made);
            trials.add(run(
                    new Change.Condition(humidity, moisture.get(), false),
                    new TangStackKnife(changed, from.steel(), from.parts(), from.finish())));
        }
        return trials;
    }

    private Optional<Double> moistureOfMover(RelativeHumidity humidity, double celsius) {
        return knife.parts().get(mover()) instanceof Material plain
                ? plain.water().map(water -> water.isotherm().moistureFraction(humidity.fraction(), celsius))
                : Optional.empty();
    }

    private List<Trial> preloadTrials(TangStackKnife from) {
        TangStackBuild b = from.build();
        StackTang tang = b.tang();
        return PRELOAD_NEWTONS.stream()
                .filter(newtons -> newtons > tang.preload().newtons())
                .map(newtons -> run(
                        new Change.Preload(newtons),
                        new TangStackKnife(
                                new TangStackBuild(
                                        b.order(),
                                        new StackTang(
                                                tang.kind(),
                                                tang.steelId(),
                                                tang.width(),
                                                tang.thickness(),
                                                new Force(newtons)),
                                        b.grip(),
                                        b.parts(),
                                        b.made()),
                                from.steel(),
                                from.parts(),
                                from.finish())))
                .toList();
    }

    /** The part that moves most, of what the shop could use instead. */
    private List<Trial> otherParts(TangStackKnife from) {
        return offer.scales().stream()
                .filter(material ->
                        !material.id().equals(from.parts().get(mover()).id()))
                .map(material -> run(
                        new Change.Part(mover() + 1, from.parts().get(mover()).name(), material.id(), material.name()),
                        remade(from, material)))
                .sorted(order())
                .limit(MOST_MATERIALS)
                .toList();
    }

    private TangStackKnife remade(TangStackKnife from, ScaleMaterial material) {
        TangStackBuild b = from.build();
        List<StackPart> parts = new ArrayList<>(b.parts());
        Cut cut = material.usualCut();
        parts.set(
                mover(),
                new StackPart(
                        material.id(), Optional.of(cut), parts.get(mover()).length()));
        List<ScaleMaterial> materials = new ArrayList<>(from.parts());
        materials.set(mover(), material);
        return new TangStackKnife(
                new TangStackBuild(b.order(), b.tang(), b.grip(), parts, b.made()),
                from.steel(),
                materials,
                from.finish());
    }

    /** The part that shrinks most. */
    private int mover() {
        int mover = 0;
        List<PartYear> parts = before.parts();
        for (int i = 1; i < parts.size(); i++) {
            mover = parts.get(i).shrinks().value() > parts.get(mover).shrinks().value() ? i : mover;
        }
        return mover;
    }

    private Trial run(Change change, TangStackKnife changed) {
        StackYear year = engine.of(changed).yearWithoutBands();
        return new Trial(change, changed, year, judgement.verdict(year), use(year));
    }

    /** Looseness, crushing and press together: what eases one of them at the cost of another is no gain. */
    private double use(StackYear year) {
        return Math.max(judgement.seasonalUse(year), year.load().value() / THREAD_BEARS_NEWTONS);
    }

    private Advice advice(Trial trial) {
        return new Advice(
                trial.change(),
                trial.knife(),
                List.of(
                        new Advice.Effect(
                                Reason.Kind.STACK_GAP,
                                before.gap().value(),
                                trial.year().gap().value()),
                        new Advice.Effect(
                                Reason.Kind.STACK_SET,
                                before.set().value(),
                                trial.year().set().value())),
                Optional.of(new Advice.Press(
                        before.growth().value(),
                        trial.year().growth().value(),
                        before.load().value(),
                        trial.year().load().value())),
                trial.verdict());
    }
}
