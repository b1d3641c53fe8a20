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
import java.util.List;
import java.util.Optional;

/**
 * Changed builds of a full-tang knife, each run through the engine.
 *
 * <p>The finishing state is sought between the driest and the dampest moisture of the customer's year, towards the dry
 * end, since steel that stands proud is worse than a scale that does, and within {@link WorkableAir}.
 *
 * @param judgement what judges a trial
 * @param offer what the shop could use instead
 * @param engine of the knife as it stands
 * @param before its year
 */
record FullTangTrials(Judgement judgement, Offer offer, BondedEngine engine, FitYear before) {
    private static final List<Double> SHARES_OF_THE_YEAR = List.of(0.1, 0.25, 0.4, 0.55);
    private static final List<Double> PIN_MILLIMETRES = List.of(4.0, 3.0);
    private static final List<Double> RING_MILLIMETRES = List.of(0.1, 0.2, 0.3);
    private static final List<Double> BOND_MILLIMETRES = List.of(0.2, 0.4);

    /** A change and how the knife does with it. */
    record Trial(Change change, FullTangKnife knife, FitYear year, Verdict verdict, double use) {}

    /** Stock that has settled in other air. */
    List<Trial> conditions(FullTangKnife from) {
        List<Trial> trials = new ArrayList<>();
        Optional<Material> wettable =
                material(from.scale()).filter(material -> material.water().isPresent());
        if (wettable.isEmpty()) {
            return trials;
        }
        WaterUptake water = wettable.get().water().orElseThrow();
        double celsius = from.build().made().temperature().celsius();
        double low = before.whole().moisture().lowest();
        double high = before.whole().moisture().highest();
        List<Long> tried = new ArrayList<>();
        for (double share : SHARES_OF_THE_YEAR) {
            double wanted = low + share * (high - low);
            WorkableAir workable = WorkableAir.of(wettable.get(), celsius);
            double humidity = water.isotherm().waterActivity(wanted, celsius);
            long percent = workable.percentNearest(humidity);
            if (tried.contains(percent)) {
                continue;
            }
            tried.add(percent);
            RelativeHumidity air = new RelativeHumidity(percent / 100.0);
            double moisture = water.isotherm().moistureFraction(air.fraction(), celsius);
            trials.add(run(
                    new Change.Condition(air, moisture, !workable.allows(humidity)),
                    KnifeChange.conditioned(from, air)));
        }
        return trials.stream().filter(trial -> !sameState(from, trial)).toList();
    }

    /** True where the stock is in that state already, within a point of humidity. */
    private static boolean sameState(FullTangKnife from, Trial trial) {
        WorkState was = from.build().made();
        Change.Condition change = (Change.Condition) trial.change();
        return was instanceof MeasuredMoisture measured
                ? Math.abs(measured.moisture().fraction() - change.moistureFraction()) < 0.002
                : Math.abs(((SettledAir) was).humidity().fraction()
                                - change.humidity().fraction())
                        < 0.015;
    }

    /** Scales cut another way. */
    List<Trial> cuts(FullTangKnife from) {
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

    /** Other pins and holes, from thick and tight to thin and loose. */
    List<Trial> pins(FullTangKnife from) {
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

    /** Thicker glue lines. */
    List<Trial> bondLines(FullTangKnife from) {
        double now = from.build().glue().thickness().millimetres();
        return BOND_MILLIMETRES.stream()
                .filter(thickness -> thickness > 1.2 * now)
                .map(Length::ofMillimetres)
                .map(thickness -> run(new Change.BondLine(thickness), KnifeChange.bonded(from, thickness)))
                .toList();
    }

    /** Other glues. */
    List<Trial> glues(FullTangKnife from) {
        return offer.adhesives().stream()
                .filter(adhesive -> !adhesive.id().equals(from.adhesive().id()))
                .map(adhesive ->
                        run(new Change.Glue(adhesive.id(), adhesive.name()), KnifeChange.glued(from, adhesive)))
                .toList();
    }

    /** Scales of other materials. */
    List<Trial> materials(FullTangKnife knife) {
        return offer.scales().parallelStream()
                .filter(material -> !material.id().equals(knife.scale().id()))
                .map(material ->
                        run(new Change.Material(material.id(), material.name()), KnifeChange.remade(knife, material)))
                .toList();
    }

    private Trial run(Change change, FullTangKnife changed) {
        FitYear year = engine.of(changed).yearWithoutBands();
        return new Trial(change, changed, year, judgement.verdict(year), judgement.seasonalUse(year));
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
