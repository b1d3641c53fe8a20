package hafthold.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hafthold.air.Setting;
import hafthold.knife.FullTangBuild;
import hafthold.knife.FullTangKnife;
import hafthold.knife.Handle;
import hafthold.material.Axis;
import hafthold.quantity.Band;
import hafthold.quantity.Length;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.simulate.BondedEngine;
import hafthold.simulate.Conditions;
import hafthold.simulate.Destination;
import hafthold.simulate.FitYear;
import hafthold.simulate.HandleEngine;
import hafthold.simulate.HandleYear;
import hafthold.simulate.Sampling;
import hafthold.table.FinishTable;
import hafthold.table.MaterialLibrary;
import hafthold.table.PlaceTable;
import hafthold.table.TableSet;
import hafthold.table.UsualBuild;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The quick sections of a comparison and the full ones of a fit answer alike about one handle: within 3 % of the free
 * movement and a micrometre.
 */
class CompareAgreesWithFitTest {
    private static final TableSet TABLES = TableSet.builtIn();
    private static final MaterialLibrary LIBRARY = MaterialLibrary.read(TABLES);
    private static final double SHARE = 0.03;
    private static final double ROUNDING = 1e-6;

    @ParameterizedTest
    @CsvFileSource(resources = "/hafthold/decide/compare-and-fit.csv", numLinesToSkip = 1)
    void answersAlike(String material, String cut, String place, String setting, int thickness, int made) {
        Destination destination = Destination.of(
                PlaceTable.read(TABLES).find(place), Setting.find(setting).orElseThrow());
        FullTangKnife knife = (FullTangKnife)
                FitOrders.fullTang(material, cut, 110, thickness, made, FitOrders.pins(6, 0, "hard-epoxy", 20, 90));
        HandleYear fit = new BondedEngine(knife, destination, Sampling.VALUE_ONLY)
                .yearWithoutBands()
                .whole();
        HandleYear compare = new HandleEngine(conditions(knife, destination, made), Sampling.VALUE_ONLY)
                .year(knife.scale(), knife.cutLeft());

        double edge = largest(fit.edge().free().shy(), fit.edge().free().proud());
        near("edge shy", fit.edge().bonded().shy(), compare.edge().bonded().shy(), edge);
        near("edge proud", fit.edge().bonded().proud(), compare.edge().bonded().proud(), edge);
        near(
                "tang line shy",
                fit.edge().tangLine().shy(),
                compare.edge().tangLine().shy(),
                edge);
        near(
                "tang line proud",
                fit.edge().tangLine().proud(),
                compare.edge().tangLine().proud(),
                edge);
        near("free shy", fit.edge().free().shy(), compare.edge().free().shy(), edge);
        near("free proud", fit.edge().free().proud(), compare.edge().free().proud(), edge);
        double end = fit.ends().lengthMismatch().value() / 2;
        near("end short", fit.ends().shortBy(), compare.ends().shortBy(), end);
        near("end long", fit.ends().longBy(), compare.ends().longBy(), end);
        double head = largest(fit.pins().headProud(), fit.pins().headSunk());
        near("head proud", fit.pins().headProud(), compare.pins().headProud(), head);
        near("head sunk", fit.pins().headSunk(), compare.pins().headSunk(), head);
    }

    /**
     * What the glue bears in samples of a comparison, where stress is taken to go with step, stiffness, strength and
     * relaxation, against samples of a fit, each with sections of its own: both ends of the range within a fifth and 0.05
     * of the strength.
     */
    @ParameterizedTest
    @CsvSource({
        "walnut-black, flat, yakutsk, heated-home, 8, 50",
        "walnut-black, cross, yakutsk, heated-home, 8, 50",
        "maple-sugar+lumen-resin, flat, yakutsk, heated-home, 8, 50",
        "canvas-phenolic-c, none, singapore, uncooled-home, 8, 50",
        "antler-reindeer, none, phoenix, heated-home, 8, 50",
        "hybrid-maple-burl-epoxy, none, phoenix, heated-home, 8, 50"
    })
    void glueIsAsDoubtful(String material, String cut, String place, String setting, int thickness, int made) {
        Destination destination = Destination.of(
                PlaceTable.read(TABLES).find(place), Setting.find(setting).orElseThrow());
        FullTangKnife knife = (FullTangKnife)
                FitOrders.fullTang(material, cut, 110, thickness, made, FitOrders.pins(6, 0, "hard-epoxy", 20, 90));
        Sampling few = new Sampling(40, 1);
        Band fit = new BondedEngine(knife, destination, few).year().glueUse();
        Band compare = new HandleEngine(conditions(knife, destination, made), few)
                .year(knife.scale(), knife.cutLeft())
                .load()
                .orElseThrow()
                .glueUse();
        assertEquals(fit.value(), compare.value(), 0.05 * fit.value() + 0.01, "value");
        assertEquals(fit.low(), compare.low(), 0.2 * fit.low() + 0.05, "low end");
        assertEquals(fit.high(), compare.high(), 0.2 * fit.high() + 0.05, "high end");
    }

    /**
     * What may split the scale, mid-section by layers or at its glued edge: two halves of the depth tell it within 5 % of
     * eight layers.
     */
    @ParameterizedTest
    @CsvSource({
        "walnut-black, flat, yakutsk, heated-home, 8, 50",
        "walnut-black, quarter, yakutsk, heated-home, 8, 50",
        "walnut-black, quarter, yakutsk, heated-home, 4, 50",
        "walnut-black, burl, yakutsk, heated-home, 8, 50",
        "beech-european, quarter, oslo, heated-home, 8, 60",
        "maple-sugar+lumen-resin, quarter, yakutsk, heated-home, 8, 50",
        "maple-sugar, quarter, phoenix, outdoors, 8, 50",
        "canvas-phenolic-c, none, yakutsk, heated-home, 8, 50"
    })
    void splitsAsSoon(String material, String cut, String place, String setting, int thickness, int made) {
        Destination destination = Destination.of(
                PlaceTable.read(TABLES).find(place), Setting.find(setting).orElseThrow());
        FullTangKnife knife = (FullTangKnife)
                FitOrders.fullTang(material, cut, 110, thickness, made, FitOrders.pins(6, 0, "hard-epoxy", 20, 90));
        FitYear fit = new BondedEngine(knife, destination, Sampling.VALUE_ONLY).yearWithoutBands();
        double layers = Math.max(
                fit.middleUse().orElseThrow().value(),
                fit.tearUse().orElseThrow().value());
        Band compare = new HandleEngine(conditions(knife, destination, made), Sampling.VALUE_ONLY)
                .year(knife.scale(), knife.cutLeft())
                .load()
                .orElseThrow()
                .splitUse()
                .orElseThrow();
        assertEquals(layers, compare.value(), 0.05 * layers + 0.01);
    }

    private static void near(String what, Band expected, Band got, double free) {
        assertEquals(
                1e6 * expected.value(), 1e6 * got.value(), 1e6 * (SHARE * free + ROUNDING), what + ", micrometres");
    }

    private static double largest(Band one, Band other) {
        return Math.max(one.value(), other.value());
    }

    private static Conditions conditions(FullTangKnife knife, Destination destination, int made) {
        FullTangBuild build = knife.build();
        return new Conditions(
                new Handle(
                        build.scales().length(),
                        build.tang().width(),
                        build.scales().thickness(),
                        build.pins().get(0).diameter(),
                        build.pins().get(0).openClearance(),
                        Length.ofMillimetres(70)),
                new Temperature(20),
                new RelativeHumidity(made / 100.0),
                FinishTable.read(TABLES).find("bare"),
                destination,
                knife.steel().thermalExpansionPerKelvin().get(Axis.ALONG),
                knife.pinMetals().get(0).thermalExpansionPerKelvin().get(Axis.ALONG),
                Optional.of(UsualBuild.bond(LIBRARY)));
    }
}
