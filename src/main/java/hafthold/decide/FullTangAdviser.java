package hafthold.decide;

import hafthold.decide.FullTangTrials.Trial;
import hafthold.knife.FullTangKnife;
import hafthold.quantity.Band;
import hafthold.simulate.BondedEngine;
import hafthold.simulate.FitYear;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Looks for changes of a build that bring it back within its limits, by running each through the engine.
 *
 * <p>Handles get changes of air, cut, pins, glue line, glue, treatment and material, see {@link FullTangTrials}; where none
 * is enough alone, the best ones are put together. What keeps the material and brings the knife back is told first.
 */
final class FullTangAdviser {
    private static final double SAME_GAP = 0.02e-3;
    private static final int MOST_MATERIALS = 2;
    private static final int MOST_ADVICE = 6;
    private static final double WORTH_SAYING = 0.95;
    private static final double SAME_SHARE = 0.01;
    private static final double SAME_SIZE = 1e-6;

    private final Judgement judgement;
    private final FullTangTrials trials;
    private final FullTangKnife knife;
    private final FitYear before;
    private final Set<Reason.Kind> out;
    private final Optional<Reason.Kind> deciding;

    FullTangAdviser(Judgement judgement, Offer offer, BondedEngine engine, FullTangKnife knife, FitYear before) {
        this.judgement = judgement;
        this.trials = new FullTangTrials(judgement, offer, engine, before);
        this.knife = knife;
        this.before = before;
        List<Reason> reasons = judgement.reasons(before);
        this.out = reasons.stream().map(Reason::kind).collect(Collectors.toSet());
        this.deciding = reasons.stream().findFirst().map(Reason::kind);
    }

    /** Changes that help, those that bring back most first; none where the knife stays as it is. */
    List<Advice> advice() {
        Verdict now = judgement.verdict(before);
        if (now == Verdict.STAYS || now == Verdict.UNKNOWN) {
            return List.of();
        }
        boolean pinned = out.contains(Reason.Kind.PIN_CRACK) || out.contains(Reason.Kind.PIN_GAP);
        boolean bonded = out.contains(Reason.Kind.GLUE_LINE)
                || out.contains(Reason.Kind.SCALE_SPLIT)
                || out.contains(Reason.Kind.SOFTENING);
        List<Trial> shopChanges = Stream.<Supplier<Optional<Trial>>>of(
                        () -> best(trials.conditions(knife)),
                        () -> best(trials.cuts(knife)),
                        () -> pinned ? gentlest(trials.pins(knife)) : Optional.empty(),
                        () -> bonded ? best(trials.bondLines(knife)) : Optional.empty(),
                        () -> bonded ? best(trials.glues(knife)) : Optional.empty())
                .parallel()
                .map(Supplier::get)
                .flatMap(Optional::stream)
                .toList();
        List<Trial> kept = new ArrayList<>(shopChanges);
        kept.addAll(trials.materials(knife).stream()
                .sorted(order())
                .limit(MOST_MATERIALS)
                .toList());
        if (shopChanges.stream().noneMatch(trial -> trial.verdict().compareTo(Verdict.CARE) <= 0)) {
            together(shopChanges).ifPresent(kept::add);
        }
        return kept.stream()
                .filter(this::helps)
                .sorted(Comparator.comparing(FullTangAdviser::falls).thenComparing(order()))
                .limit(MOST_ADVICE)
                .map(this::advice)
                .toList();
    }

    private static Comparator<Trial> order() {
        return Comparator.comparing(Trial::verdict).thenComparingDouble(Trial::use);
    }

    /** What keeps the material and brings the knife back comes first, then other materials, then what only eases. */
    private static int falls(Trial trial) {
        boolean brings = trial.verdict().compareTo(Verdict.CARE) <= 0;
        return brings ? trial.change() instanceof Change.Material ? 1 : 0 : 2;
    }

    private static Optional<Trial> best(List<Trial> tried) {
        return tried.stream().min(order());
    }

    /** The first that leaves the pins in order, as trials go from thick and tight to thin and loose; else the best. */
    private Optional<Trial> gentlest(List<Trial> tried) {
        return tried.stream()
                .filter(trial -> judgement.reasons(trial.year()).stream()
                        .noneMatch(reason -> reason.kind() == Reason.Kind.PIN_CRACK))
                .filter(trial -> trial.year().whole().pins().gap().value()
                        <= before.whole().pins().gap().value() + SAME_GAP)
                .findFirst()
                .or(() -> best(tried));
    }

    /** Whether it makes something better that is out, and what decides the verdict no worse. */
    private boolean helps(Trial trial) {
        if (worsensWhatDecides(trial)) {
            return false;
        }
        if (trial.verdict().compareTo(judgement.verdict(before)) < 0) {
            return true;
        }
        Map<Reason.Kind, Double> was = sizes(before);
        Map<Reason.Kind, Double> is = sizes(trial.year());
        boolean worse = trial.verdict().compareTo(judgement.verdict(before)) > 0;
        return !worse
                && out.stream()
                        .anyMatch(kind -> was.containsKey(kind)
                                && is.containsKey(kind)
                                && is.get(kind) < WORTH_SAYING * was.get(kind) - SAME_SIZE);
    }

    private boolean worsensWhatDecides(Trial trial) {
        Optional<Double> was = deciding.map(sizes(before)::get);
        Optional<Double> is = deciding.map(sizes(trial.year())::get);
        return was.isPresent() && is.isPresent() && is.get() > was.get() * (1 + SAME_SHARE) + SAME_SIZE;
    }

    /** The best single change first, then the others on top of it as long as they help. */
    private Optional<Trial> together(List<Trial> singles) {
        List<Change> changes = new ArrayList<>();
        Trial best = null;
        for (Trial single : singles.stream().sorted(order()).toList()) {
            FullTangKnife from = best == null ? knife : best.knife();
            Optional<Trial> next = best == null ? Optional.of(single) : again(single.change(), from);
            if (next.isPresent() && (best == null || order().compare(next.get(), best) < 0)) {
                changes.add(next.get().change());
                best = next.get();
            }
            if (best.verdict().compareTo(Verdict.CARE) <= 0) {
                break;
            }
        }
        if (best == null || changes.size() < 2) {
            return Optional.empty();
        }
        return Optional.of(
                new Trial(new Change.Together(changes), best.knife(), best.year(), best.verdict(), best.use()));
    }

    private Optional<Trial> again(Change kind, FullTangKnife from) {
        if (kind instanceof Change.Condition) {
            return best(trials.conditions(from));
        }
        if (kind instanceof Change.Recut) {
            return best(trials.cuts(from));
        }
        if (kind instanceof Change.Pins) {
            return gentlest(trials.pins(from));
        }
        return best(kind instanceof Change.BondLine ? trials.bondLines(from) : trials.glues(from));
    }

    private Advice advice(Trial trial) {
        Map<Reason.Kind, Double> was = sizes(before);
        Map<Reason.Kind, Double> is = sizes(trial.year());
        Set<Reason.Kind> outNow =
                judgement.reasons(trial.year()).stream().map(Reason::kind).collect(Collectors.toSet());
        List<Advice.Effect> effects = new ArrayList<>();
        for (Reason.Kind kind : Reason.Kind.values()) {
            if (was.containsKey(kind) && is.containsKey(kind) && (out.contains(kind) || outNow.contains(kind))) {
                effects.add(new Advice.Effect(kind, was.get(kind), is.get(kind)));
            }
        }
        return new Advice(trial.change(), trial.knife(), effects, trial.verdict());
    }

    private static Map<Reason.Kind, Double> sizes(FitYear year) {
        Map<Reason.Kind, Double> sizes = new EnumMap<>(Reason.Kind.class);
        sizes.put(Reason.Kind.EDGE_SHY, year.whole().edge().bonded().shy().value());
        sizes.put(Reason.Kind.EDGE_PROUD, year.whole().edge().bonded().proud().value());
        sizes.put(Reason.Kind.PIN_HEAD_PROUD, year.whole().pins().headProud().value());
        sizes.put(Reason.Kind.PIN_HEAD_SUNK, year.whole().pins().headSunk().value());
        sizes.put(Reason.Kind.PIN_GAP, year.whole().pins().gap().value());
        sizes.put(Reason.Kind.END_GAP, year.whole().ends().shortBy().value());
        sizes.put(Reason.Kind.END_PROUD, year.whole().ends().longBy().value());
        year.whole().pins().crackUse().ifPresent(use -> sizes.put(Reason.Kind.PIN_CRACK, use.value()));
        sizes.put(Reason.Kind.RIDGE, year.whole().joint().ridge().value());
        sizes.put(
                Reason.Kind.PARTS_JOINT,
                year.whole().joint().use().map(Band::value).orElse(0.0));
        sizes.put(Reason.Kind.GLUE_LINE, year.glueUse().value());
        Stream.of(year.middleUse(), year.tearUse())
                .flatMap(Optional::stream)
                .mapToDouble(Band::value)
                .max()
                .ifPresent(use -> sizes.put(Reason.Kind.SCALE_SPLIT, use));
        sizes.put(Reason.Kind.END_LETS_GO, year.whole().ends().lengthMismatch().value() / 2);
        return sizes;
    }
}
