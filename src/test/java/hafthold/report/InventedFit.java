package hafthold.report;

import hafthold.air.AirSeries;
import hafthold.air.Outdoors;
import hafthold.decide.Advice;
import hafthold.decide.Change;
import hafthold.decide.FullTangFit;
import hafthold.decide.Likelihood;
import hafthold.decide.Reason;
import hafthold.decide.Verdict;
import hafthold.knife.FitLimits;
import hafthold.knife.FullTangKnife;
import hafthold.knife.Pin;
import hafthold.material.Cut;
import hafthold.material.Family;
import hafthold.quantity.Band;
import hafthold.quantity.Length;
import hafthold.quantity.RelativeHumidity;
import hafthold.simulate.Destination;
import hafthold.simulate.Driver;
import hafthold.simulate.EdgeSteps;
import hafthold.simulate.EndSteps;
import hafthold.simulate.FitYear;
import hafthold.simulate.FitYear.FitDays;
import hafthold.simulate.FitYear.PinYear;
import hafthold.simulate.FitYear.PlaceYear;
import hafthold.simulate.FitYear.SideYear;
import hafthold.simulate.Grounds;
import hafthold.simulate.HandleDays;
import hafthold.simulate.HandleYear;
import hafthold.simulate.MoistureSpan;
import hafthold.simulate.PartsJoint;
import hafthold.simulate.RestsOn;
import hafthold.simulate.ScaleChoice;
import hafthold.simulate.SectionPose;
import hafthold.simulate.SofteningMargin;
import hafthold.simulate.Step;
import hafthold.simulate.WorstPins;
import hafthold.source.Evidence;
import hafthold.source.Finding;
import hafthold.source.Message;
import hafthold.table.BuildFile;
import hafthold.table.KnifeFile;
import hafthold.table.MaterialLibrary;
import hafthold.table.TableSet;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** An answer about one knife whose every number is made up, so that a text about it stays when the engine improves. */
final class InventedFit {
    private static final Band NONE = Band.exact(0);

    private InventedFit() {}

    static FullTangFit walnut() {
        return walnut(Optional.of(new SofteningMargin(new Band(24, 34, 59), "two-part epoxy, slow")));
    }

    /** The same, with what softens first. */
    static FullTangFit walnut(Optional<SofteningMargin> softening) {
        FullTangKnife knife = example();
        FitLimits retouch = limits("retouch", 0.25, 0.40, 0.15, 0.20);
        List<Reason> reasons = List.of(
                new Reason(Reason.Kind.PIN_CRACK, new Band(0.6, 1.3, 2.8), retouch, true),
                new Reason(Reason.Kind.EDGE_SHY, mm(0.11, 0.15, 0.2), retouch, true));
        Advice dry = new Advice(
                new Change.Condition(new RelativeHumidity(0.3), 0.061, false),
                knife,
                List.of(
                        new Advice.Effect(Reason.Kind.EDGE_SHY, 0.15e-3, 0.06e-3),
                        new Advice.Effect(Reason.Kind.PIN_CRACK, 1.3, 0.5)),
                Verdict.CARE);
        Advice pins = new Advice(
                new Change.Together(List.of(
                        new Change.Pins(Length.ofMillimetres(4), Length.ofMillimetres(4.1), Pin.Fill.FLEXIBLE),
                        new Change.Recut(Cut.QUARTER))),
                knife,
                List.of(new Advice.Effect(Reason.Kind.PIN_CRACK, 1.3, 0)),
                Verdict.CHANGE);
        List<Finding> findings = List.of(
                new Finding(
                        Finding.Kind.ESTIMATE,
                        "limits",
                        Message.verbatim("How much may show is a workshop's judgement.")),
                new Finding(Finding.Kind.DEFAULT, "liners", Message.verbatim("The file says nothing of liners.")));
        return new FullTangFit(
                knife,
                Destination.recorded(
                        "somewhere",
                        "Somewhere cold",
                        Outdoors.usual(),
                        new AirSeries(3600, new double[] {20, 20}, new double[] {0.2, 0.2}),
                        0.03),
                year(softening),
                Verdict.CHANGE,
                reasons,
                new Likelihood(100, OptionalDouble.of(0.83), List.of()),
                List.of(dry, pins),
                findings);
    }

    /** The same for other reasons. */
    static FullTangFit walnut(List<Reason> reasons) {
        FullTangFit fit = walnut();
        return new FullTangFit(
                fit.knife(),
                fit.destination(),
                fit.year(),
                fit.verdict(),
                reasons,
                fit.likelihood(),
                fit.advice(),
                fit.findings());
    }

    private static FitYear year(Optional<SofteningMargin> softening) {
        SectionPose pose = new SectionPose(0, 13e-3, 4e-3, 1e-4, 8e-3, 0, 0, 0, 0, 0, 0, 0);
        return new FitYear(
                whole(),
                mm(0.15, 0.2, 0.27),
                NONE,
                mm(0.04, 0.06, 0.08),
                NONE,
                mm(0.01, 0.02, 0.02),
                mm(0.01, 0.02, 0.03),
                Optional.empty(),
                Optional.empty(),
                new Band(3e6, 6.5e6, 13e6),
                new Band(3e6, 7e6, 14e6),
                new Band(4e6, 8e6, 16e6),
                new Band(6e6, 12e6, 24e6),
                new Band(0.2, 0.5, 1.2),
                1,
                Optional.of(new Band(0.5, 1.2, 2.5)),
                Optional.of(new Band(0.6, 1.25, 2.7)),
                Optional.of(new Band(0.6, 1.3, 2.8)),
                softening,
                21,
                20,
                NONE,
                List.of(new PinYear(
                        Length.ofMillimetres(6),
                        Length.ofMillimetres(12.5),
                        NONE,
                        mm(0, 0.01, 0.02),
                        NONE,
                        mm(0.08, 0.11, 0.14),
                        mm(0.1, 0.14, 0.18),
                        NONE,
                        Optional.of(new Band(0.6, 1.3, 2.8)))),
                List.of(new SideYear(
                        "both", Cut.FLAT, mm(0.11, 0.15, 0.2), NONE, mm(0.18, 0.24, 0.3), NONE, pose, pose)),
                List.of(new PlaceYear(new Length(0), Length.ofMillimetres(26), 0.15e-3, 0)),
                List.of(
                        new Driver("swelling", 0.6, 0.8),
                        new Driver("hygrometer", 0.3, 0.5),
                        new Driver("sorption", 0.1, 0.3)),
                new FitDays(List.of(), List.of(), List.of(), List.of(), List.of(), List.of()),
                pose,
                pose,
                List.of());
    }

    private static HandleYear whole() {
        return new HandleYear(
                new ScaleChoice("walnut-black", "black walnut", Family.WOOD, Cut.FLAT),
                new MoistureSpan(0.101, 0.035, 0.098),
                new EdgeSteps(
                        new Step(mm(0.11, 0.15, 0.2), NONE),
                        new Step(mm(0.18, 0.24, 0.3), NONE),
                        new Step(mm(0.04, 0.06, 0.08), NONE)),
                new EndSteps(mm(0.02, 0.04, 0.06), mm(0.01, 0.02, 0.02), NONE),
                new WorstPins(
                        mm(0, 0.01, 0.02),
                        mm(0.08, 0.11, 0.14),
                        Optional.of(new Band(0.6, 1.3, 2.8)),
                        mm(0.1, 0.14, 0.18),
                        NONE),
                PartsJoint.NONE,
                Optional.empty(),
                1,
                new Grounds(RestsOn.grade(Evidence.PUBLISHED), List.of()),
                HandleDays.NONE,
                List.of());
    }

    private static FullTangKnife example() {
        try {
            Path file = Files.createTempFile("knife", ".toml");
            try {
                Files.writeString(file, BuildFile.example());
                TableSet tables = TableSet.builtIn();
                KnifeFile read = KnifeFile.read(file, tables, MaterialLibrary.read(tables));
                return (FullTangKnife) read.knife();
            } finally {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static FitLimits limits(String name, double shy, double proud, double head, double gap) {
        return new FitLimits(
                name,
                Length.ofMillimetres(shy),
                Length.ofMillimetres(proud),
                Length.ofMillimetres(head),
                Length.ofMillimetres(gap));
    }

    private static Band mm(double low, double value, double high) {
        return new Band(low, value, high).times(1e-3);
    }
}
