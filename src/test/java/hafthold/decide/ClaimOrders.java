package hafthold.decide;

import hafthold.air.Event;
import hafthold.knife.FullTangKnife;
import hafthold.knife.KnifeHistory;
import hafthold.knife.KnifeHistory.BenchRest;
import hafthold.knife.MeasuredStep;
import hafthold.knife.MeasuringPoint;
import hafthold.quantity.Length;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.simulate.Cause;
import hafthold.simulate.Destination;
import hafthold.simulate.ReturnEngine;
import hafthold.simulate.ReturnSample;
import hafthold.simulate.Sampling;
import hafthold.table.LimitTable;
import hafthold.table.MaterialLibrary;
import hafthold.table.TableSet;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Invented returns: a flat-sawn walnut knife made at one humidity, half a year in invented air, four weeks at the bench. */
final class ClaimOrders {
    static final LocalDate MADE = LocalDate.of(2025, 9, 1);
    static final LocalDate AT_HOME = LocalDate.of(2026, 2, 10);
    static final LocalDate BACK = LocalDate.of(2026, 2, 20);
    static final LocalDate AT_BENCH = LocalDate.of(2026, 3, 20);

    /** Of a hardwood of middling weight in the tables, m2/s. */
    private static final double DIFFUSIVITY = 1.6e-11;

    private ClaimOrders() {}

    /** The knife, made at a humidity. */
    static FullTangKnife walnut(int madePercent) {
        return (FullTangKnife) FitOrders.fullTang(
                "walnut-black", "flat", 110, madePercent, FitOrders.pins(5, 0.05, "hard-epoxy", 20, 90));
    }

    /** The same of wood that lets water through at so many times the speed of the tables, surely. */
    static FullTangKnife walnut(int madePercent, double speed) {
        try {
            Path folder = Files.createTempDirectory("slow");
            Path own = folder.resolve("properties.csv");
            try {
                Files.writeString(
                        own,
                        "material,property,axis,low,value,high,unit,condition,source,locator,evidence\n"
                                + String.format(
                                        Locale.ROOT,
                                        "walnut-black,diffusivity,any,%1$.4g,%1$.4g,%1$.4g,m2/s,invented,workshop-judgement,,estimated%n",
                                        speed * DIFFUSIVITY));
                TableSet tables = TableSet.with(folder);
                return (FullTangKnife) FitOrders.knife(
                        String.join(
                                "\n",
                                "[tang]",
                                "width = \"26 mm\"",
                                "[scales]",
                                "material = \"walnut-black\"",
                                "cut = \"flat\"",
                                "length = \"110 mm\"",
                                "thickness = \"8 mm\"",
                                "[made]",
                                "humidity = \"" + madePercent + " %\"",
                                FitOrders.pins(5, 0.05, "hard-epoxy", 20, 90)),
                        tables,
                        MaterialLibrary.read(tables));
            } finally {
                Files.delete(own);
                Files.delete(folder);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A home whose air is other than that of the tables by so many points. */
    static Destination home(int points) {
        return FitOrders.swinging(20, 0.30 + points / 100.0, 0.60 + points / 100.0);
    }

    /** What becomes of it, measured with an error either way. */
    static KnifeHistory history(double errorMillimetres, boolean alsoAtBench, double... millimetres) {
        List<MeasuredStep> measured = new ArrayList<>();
        LocalDate[] days = {AT_HOME, AT_BENCH};
        for (int i = 0; i < millimetres.length; i++) {
            measured.add(new MeasuredStep(
                    days[i],
                    MeasuringPoint.EDGES,
                    Length.ofMillimetres(millimetres[i]),
                    Length.ofMillimetres(errorMillimetres)));
        }
        return new KnifeHistory(
                MADE,
                MADE,
                alsoAtBench
                        ? Optional.of(new BenchRest(BACK, new RelativeHumidity(0.5), new Temperature(20), true))
                        : Optional.empty(),
                measured,
                List.of());
    }

    /** What would be measured on a knife that goes there, everything at its value, mm. */
    static double[] steps(FullTangKnife knife, Destination home, boolean alsoAtBench) {
        double[] any = alsoAtBench ? new double[2] : new double[1];
        double[] steps = new ReturnEngine(knife, home, history(0.05, alsoAtBench, any), Sampling.VALUE_ONLY).nominal();
        for (int i = 0; i < steps.length; i++) {
            steps[i] *= 1000;
        }
        return steps;
    }

    /** Knives of which both the stock and the home are off, each drawn with other figures, measured at home and bench. */
    static List<ReturnSample> bothOff(int madePercent, int homePoints, double errorMillimetres, int knives) {
        return new ReturnEngine(
                        walnut(madePercent),
                        home(homePoints),
                        history(errorMillimetres, true, 0, 0),
                        new Sampling(30, 7))
                .samples(Cause.WEATHER, Optional.empty())
                .subList(0, knives);
    }

    static Claim judge(KnifeHistory history, int samples, List<Event> events) {
        return new ClaimJudge(LimitTable.read(FitOrders.TABLES), events, new Sampling(samples, 1))
                .judge(walnut(50), home(0), history, List.of());
    }
}
