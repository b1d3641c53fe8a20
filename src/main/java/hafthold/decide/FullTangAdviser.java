package hafthold.decide;

import hafthold.knife.FullTangKnife;
import hafthold.knife.Pin;
import hafthold.knife.UnfitBuildException;
import hafthold.knife.WorkState;
import hafthold.knife.WorkState.MeasuredMoisture;
import hafthold.knife.WorkState.SettledAir;
import hafthold.material.Cut;
import hafthold.material.Hybrid;
import hafthold.material.Material;
import hafthold.material.ScaleMaterial;
import hafthold.material.WaterUptake;
import hafthold.quantity.Length;
import hafthold.quantity.RelativeHumidity;
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
 * <p>The finishing state is sought between the driest and the dampest moisture of the customer's year, towards the dry
 * end, since steel that stands proud is worse than a scale that does. Stock is never sent below 5 % moisture content nor
 * out of 25 to 65 % humidity: drier wood takes up water faster than it can be sanded, damper wood does not stay (a
 * workshop's judgement). Whole handles get changes of air, cut, pins, glue line, glue, treatment and material; where none
 * is enough alone, the best ones are put together.
 */
final class FullTangAdviser {
    private static final double DRIEST_MOISTURE = 0.05;
    private static final double DRIEST_HUMIDITY = 0.25;
    private static final double DAMPEST_HUMIDITY = 0.65;
    private static final List<Double> SHARES_OF_THE_YEAR = List.of(0.1, 0.25, 0.4, 0.55);
    private static final List<Double> PIN_MILLIMETRES = List.of(4.0, 3.0);
    private static final List<Double> RING_MILLIMETRES = List.of(0.1, 0.2, 0.3);
    private static final List<Double> BOND_MILLIMETRES = List.of(0.2, 0.4);
    private static final double SAME_GAP = 0.02e-3;
    private static final int MOST_MATERIALS = 2;
    private static final int MOST_ADVICE = 6;
    private static final double WORTH_SAYING = 0.95;

    private final Judgement judgement;
    private final Offer offer;
    private final BondedEngine engine;
    private final FullTangKnife knife;
    private final FitYear before;
    private final Set<Reason.Kind> out;

    FullTangAdviser(Judgement judgement, Offer offer, BondedEngine engine, FullTangKnife knife, FitYear before) {
        this.judgement = judgement;
        this.offer = offer;
        this.engine = engine;
        this.knife = knife;
        this.before = before;
        this.out = judgement.reasons(before).stream().map(Reason::kind).collect(Collectors.toSet());
    }

    /** A change and how the knife does with it. */
    private record Trial(Change change, FullTangKnife knife, FitYear year, Verdict verdict, double use) {}

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
                        () -> best(conditionTrials(knife)),
                        () -> best(recutTrials(knife)),
                        () -> pinned ? gentlest(pinTrials(knife)) : Optional.empty(),
                        () -> bonded ? best(bondTrials(knife)) : Optional.empty(),
                        () -> bonded ? best(glueTrials(knife)) : Optional.empty())
                .parallel()
                .map(Supplier::get)
                .flatMap(Optional::stream)
                .toList();
        List<Trial> kept = new ArrayList<>(shopChanges);
        kept.addAll(materialTrials());
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

    private static Optional<Trial> best(List<Trial> trials) {
        return trials.stream().min(order());
    }

    /** The first that leaves the pins in order, as trials go from thick and tight to thin and loose; else the best. */
    private Optional<Trial> gentlest(List<Trial> trials) {
        return trials.stream()
                .filter(trial -> judgement.reasons(trial.year()).stream()
                        .noneMatch(reason -> reason.kind() == Reason.Kind.PIN_CRACK))
                .filter(trial -> trial.year().whole().pinGap().value()
                        <= before.whole().pinGap().value() + SAME_GAP)
                .findFirst()
                .or(() -> best(trials));
    }

    private boolean helps(Trial trial) {
        if (trial.verdict().compareTo(judgement.verdict(before)) < 0) {
            return true;
        }
        Map<Reason.Kind, Double> was = sizes(before);
        Map<Reason.Kind, Double> is = sizes(trial.year());
        boolean worse = trial.verdict().compareTo(judgement.verdict(before)) > 0;
        return !worse
                && out.stream()
                        .anyMatch(kind -> is.containsKey(kind) && is.get(kind) < WORTH_SAYING * was.get(kind) - 1e-6);
    }

    private List<Trial> conditionTrials(FullTangKnife from) {
        List<Trial> trials = new ArrayList<>();
        Optional<Material> wettable =
                material(from.scale()).filter(material -> material.water().isPresent());
        if (wettable.isEmpty()) {
            return trials;
        }
        WaterUptake water = wettable.get().water().orElseThrow();
        double celsius = from.build().made().temperature().celsius();
        double low = before.whole().moistureLowest();
        double high = before.whole().moistureHighest();
        List<Long> tried = new ArrayList<>();
        for (double share : SHARES_OF_THE_YEAR) {
            double wanted = low + share * (high - low);
            double driest = Math.max(DRIEST_HUMIDITY, water.isotherm().waterActivity(DRIEST_MOISTURE, celsius));
            double humidity = water.isotherm().waterActivity(wanted, celsius);
            long percent = (long) Math.ceil(100 * Math.min(DAMPEST_HUMIDITY, Math.max(driest, humidity)) - 1e-9);
            if (tried.contains(percent)) {
                continue;
            }
            tried.add(percent);
            RelativeHumidity air = new RelativeHumidity(percent / 100.0);
            double moisture = water.isotherm().moistureFraction(air.fraction(), celsius);
            trials.add(run(
                    new Change.Condition(air, moisture, humidity < driest || humidity > DAMPEST_HUMIDITY),
                    KnifeChange.conditioned(from, air)));
        }
        return trials.stream().filter(trial -> !sameState(trial)).toList();
    }

    /** True where the stock is in that state already, within a point of humidity. */
    private boolean sameState(Trial trial) {
        WorkState was = knife.build().made();
        Change.Condition change = (Change.Condition) trial.change();
        return was instanceof MeasuredMoisture measured
                ? Math.abs(measured.moisture().fraction() - change.moistureFraction()) < 0.002
                : Math.abs(((SettledAir) was).humidity().fraction()
                                - change.humidity().fraction())
                        < 0.015;
    }

    private List<Trial> recutTrials(FullTangKnife from) {
        if (from.scale().usualCut() == Cut.NONE || from.scale().usualCut() == Cut.BURL) {
            return List.of();
        }
        return List.of(Cut.FLAT, Cut.QUARTER).stream()
                .filter(cut -> from.cutLeft() != cut || from.cutRight() != cut)
                .filter(cut -> cut != Cut.FLAT || isAcrossGrain(from))
                .map(cut -> run(new Change.Recut(cut), KnifeChange.recut(from, cut)))
                .toList();
    }

    private static boolean isAcrossGrain(FullTangKnife from) {
        return from.cutLeft() == Cut.CROSS || from.cutRight() == Cut.CROSS;
    }

    private List<Trial> pinTrials(FullTangKnife from) {
        List<Trial> trials = new ArrayList<>();
        if (from.build().pins().isEmpty()) {
            return trials;
        }
        Pin thickest = from.build().pins().stream()
                .max(Comparator.comparingDouble(pin -> pin.diameter().metres()))
                .orElseThrow();
        List<Double> diameters = new ArrayList<>(List.of(thickest.diameter().millimetres()));
        PIN_MILLIMETRES.stream()
                .filter(size -> size < thickest.diameter().millimetres() - 0.5)
                .forEach(diameters::add);
        double ring = thickest.hole().millimetres() - thickest.diameter().millimetres();
        for (double diameter : diameters) {
            if (diameter < thickest.diameter().millimetres()) {
                addPins(trials, from, diameter, ring, thickest.fill());
            }
            for (double softRing : RING_MILLIMETRES) {
                addPins(trials, from, diameter, softRing, Pin.Fill.FLEXIBLE);
            }
        }
        return trials;
    }

    private void addPins(List<Trial> trials, FullTangKnife from, double diameter, double ring, Pin.Fill fill) {
        Change.Pins pins = new Change.Pins(Length.ofMillimetres(diameter), Length.ofMillimetres(diameter + ring), fill);
        try {
            trials.add(run(pins, KnifeChange.pinned(from, pins)));
        } catch (UnfitBuildException e) {
            // A larger hole may not fit beside its neighbour or the edge: then it is no advice.
            return;
        }
    }

    private List<Trial> bondTrials(FullTangKnife from) {
        double now = from.build().glue().thickness().millimetres();
        return BOND_MILLIMETRES.stream()
                .filter(thickness -> thickness > 1.2 * now)
                .map(Length::ofMillimetres)
                .map(thickness -> run(new Change.BondLine(thickness), KnifeChange.bonded(from, thickness)))
                .toList();
    }

    private List<Trial> glueTrials(FullTangKnife from) {
        return offer.adhesives().stream()
                .filter(adhesive -> !adhesive.id().equals(from.adhesive().id()))
                .map(adhesive ->
                        run(new Change.Glue(adhesive.id(), adhesive.name()), KnifeChange.glued(from, adhesive)))
                .toList();
    }

    private List<Trial> materialTrials() {
        return offer.scales().parallelStream()
                .filter(material -> !material.id().equals(knife.scale().id()))
                .map(material ->
                        run(new Change.Material(material.id(), material.name()), KnifeChange.remade(knife, material)))
                .sorted(order())
                .limit(MOST_MATERIALS)
                .toList();
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
            return best(conditionTrials(from));
        }
        if (kind instanceof Change.Recut) {
            return best(recutTrials(from));
        }
        if (kind instanceof Change.Pins) {
            return gentlest(pinTrials(from));
        }
        return best(kind instanceof Change.BondLine ? bondTrials(from) : glueTrials(from));
    }

    private Trial run(Change change, FullTangKnife changed) {
        FitYear year = engine.of(changed).yearWithoutBands();
        return new Trial(change, changed, year, judgement.verdict(year), judgement.seasonalUse(year));
    }

    private Advice advice(Trial trial) {
        Map<Reason.Kind, Double> was = sizes(before);
        Map<Reason.Kind, Double> is = sizes(trial.year());
        Set<Reason.Kind> outNow =
                judgement.reasons(trial.year()).stream().map(Reason::kind).collect(Collectors.toSet());
        List<Advice.Effect> effects = new ArrayList<>();
        for (Reason.Kind kind : Reason.Kind.values()) {
            if (was.containsKey(kind) && (out.contains(kind) || outNow.contains(kind))) {
                effects.add(new Advice.Effect(kind, was.get(kind), is.get(kind)));
            }
        }
        return new Advice(trial.change(), trial.knife(), effects, trial.verdict());
    }

    private static Map<Reason.Kind, Double> sizes(FitYear year) {
        Map<Reason.Kind, Double> sizes = new EnumMap<>(Reason.Kind.class);
        sizes.put(Reason.Kind.EDGE_SHY, year.whole().edgeShy().value());
        sizes.put(Reason.Kind.EDGE_PROUD, year.whole().edgeProud().value());
        sizes.put(Reason.Kind.PIN_HEAD_PROUD, year.whole().pinHeadProud().value());
        sizes.put(Reason.Kind.PIN_HEAD_SUNK, year.whole().pinHeadSunk().value());
        sizes.put(Reason.Kind.PIN_GAP, year.whole().pinGap().value());
        sizes.put(Reason.Kind.END_GAP, year.whole().endShort().value());
        sizes.put(Reason.Kind.END_PROUD, year.whole().endLong().value());
        sizes.put(Reason.Kind.PIN_CRACK, year.whole().pinCrackUse().value());
        sizes.put(Reason.Kind.GLUE_LINE, year.glueUse().value());
        sizes.put(
                Reason.Kind.SCALE_SPLIT,
                Math.max(year.middleUse().value(), year.tearUse().value()));
        sizes.put(Reason.Kind.END_LETS_GO, year.whole().lengthMismatch().value() / 2);
        return sizes;
    }

    private static Optional<Material> material(ScaleMaterial scale) {
        if (scale instanceof Material plain) {
            return Optional.of(plain);
        }
        return ((Hybrid) scale)
                .parts().stream()
                        .map(Hybrid.Part::material)
                        .filter(part -> part.water().isPresent())
                        .findFirst();
    }
}
