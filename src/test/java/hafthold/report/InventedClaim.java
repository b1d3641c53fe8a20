package hafthold.report;

import hafthold.decide.CauseChance;
import hafthold.decide.Claim;
import hafthold.decide.ClaimRow;
import hafthold.decide.ClaimRow.Part;
import hafthold.decide.ClaimRow.Share;
import hafthold.decide.ClaimVerdict;
import hafthold.decide.FullTangFit;
import hafthold.decide.ReTrue;
import hafthold.knife.KnifeHistory;
import hafthold.knife.KnifeHistory.BenchRest;
import hafthold.knife.MeasuredStep;
import hafthold.knife.MeasuringPoint;
import hafthold.quantity.Band;
import hafthold.quantity.Length;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.simulate.Cause;
import hafthold.source.Finding;
import hafthold.source.Message;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** A judged claim whose every number is made up, so that a text about it stays when the engine improves. */
final class InventedClaim {
    private static final LocalDate AT_HOME = LocalDate.of(2026, 2, 8);
    private static final LocalDate AT_BENCH = LocalDate.of(2026, 3, 16);

    private InventedClaim() {}

    /** With a verdict of any kind. */
    static Claim of(ClaimVerdict verdict) {
        return of(InventedFit.walnut(), verdict, -0.20);
    }

    /** With a verdict of any kind on a knife, its edge measured at the customer's, mm. */
    static Claim of(FullTangFit fit, ClaimVerdict verdict, double edge) {
        MeasuredStep there = step(AT_HOME, MeasuringPoint.EDGES, edge, 0.06);
        MeasuredStep heads = step(AT_BENCH, MeasuringPoint.PIN_HEADS, 0.05, 0.03);
        MeasuredStep gap = step(AT_BENCH, MeasuringPoint.PIN_GAP, 0, 0.03);
        boolean usual = verdict == ClaimVerdict.WEATHER;
        return new Claim(
                fit.knife(),
                fit.destination(),
                new KnifeHistory(
                        LocalDate.of(2025, 8, 20),
                        LocalDate.of(2025, 9, 5),
                        Optional.of(new BenchRest(
                                LocalDate.of(2026, 2, 16), new RelativeHumidity(0.5), new Temperature(20), true)),
                        List.of(there, heads, gap),
                        List.of("soak")),
                verdict,
                0.84,
                List.of(
                        row(there, mm(-0.19, -0.11, -0.02), usual ? 0.12 : 0.004, usual, mm(-0.08, -0.06, -0.04)),
                        row(heads, mm(-0.03, 0, 0.04), 0.2, true, mm(0, 0.004, 0.01)),
                        row(gap, mm(0, 0, 0.02), 1, true, mm(0, 0, 0))),
                List.of(
                        new CauseChance(Cause.FINISH, 1 / 7.0, 0.50, true),
                        new CauseChance(Cause.PLACE, 1 / 7.0, 0.20, true),
                        new CauseChance(Cause.lately("soak"), 1 / 7.0, 0.16, true),
                        new CauseChance(Cause.FINISH_AND_PLACE, 1 / 28.0, 0.10, true),
                        new CauseChance(Cause.WEATHER, 4 / 7.0, 0.04, usual)),
                new ReTrue(
                        Optional.of(new Band(34, 38, 41)),
                        20,
                        new Band(6.9, 7.4, 7.9),
                        List.of(5, 10),
                        Optional.of(new Band(6, 15, 33)),
                        mm(0.06, 0.08, 0.10),
                        mm(0.10, 0.13, 0.16)),
                fit.year(),
                IntStream.range(0, 365)
                        .mapToObj(day -> {
                            double middle = -0.1e-3 * Math.cos(2 * Math.PI * (day - 20) / 365);
                            return new Band(middle - 0.03e-3, middle, middle + 0.04e-3);
                        })
                        .toList(),
                1.32,
                400,
                25.4,
                List.of(new Finding(
                        Finding.Kind.DEFAULT, "since.delivered", Message.verbatim("Invented sentence on a default."))));
    }

    /** The same with other steps measured at the customer's. */
    static Claim measured(ClaimVerdict verdict, MeasuredStep... steps) {
        return of(verdict, List.of(steps), List.of("soak"));
    }

    /** The same with other events suspected. */
    static Claim suspecting(ClaimVerdict verdict, String... events) {
        return of(verdict, of(verdict).history().measured(), List.of(events));
    }

    private static Claim of(ClaimVerdict verdict, List<MeasuredStep> steps, List<String> suspected) {
        Claim claim = of(verdict);
        KnifeHistory history = claim.history();
        return new Claim(
                claim.knife(),
                claim.home(),
                new KnifeHistory(history.finished(), history.delivered(), history.bench(), steps, suspected),
                verdict,
                claim.sure(),
                steps.stream()
                        .map(step -> row(step, mm(-0.05, 0, 0.05), 0.5, true, mm(-0.01, 0, 0.01)))
                        .toList(),
                claim.chances(),
                claim.retrue(),
                claim.year(),
                claim.course(),
                claim.thinsOverFree(),
                claim.samples(),
                claim.effectiveSamples(),
                claim.findings());
    }

    /** A step at the customer's, mm. */
    static MeasuredStep edge(MeasuringPoint point, double step) {
        return step(AT_HOME, point, step, 0.05);
    }

    private static ClaimRow row(
            MeasuredStep measured, Band expected, double asFarOut, boolean consistent, Band settled) {
        double whole = measured.step().metres();
        List<Share> parts = List.of(
                new Share(Part.WEATHER, Band.exact(0.55 * whole)),
                share(Part.FINISH, 0.3 * whole),
                share(Part.PLACE, 0.1 * whole),
                share(Part.USE, 0.02 * whole),
                share(Part.MATERIAL, -0.04 * whole),
                share(Part.REST, 0.07 * whole));
        return new ClaimRow(measured, expected, asFarOut, consistent, expected, parts, Optional.of(settled));
    }

    private static Share share(Part part, double metres) {
        return new Share(part, new Band(metres - 0.02e-3, metres, metres + 0.03e-3));
    }

    private static MeasuredStep step(LocalDate on, MeasuringPoint point, double step, double error) {
        return new MeasuredStep(on, point, Length.ofMillimetres(step), Length.ofMillimetres(error));
    }

    private static Band mm(double low, double value, double high) {
        return new Band(low / 1000, value / 1000, high / 1000);
    }
}
