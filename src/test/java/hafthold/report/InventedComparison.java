package hafthold.report;

import hafthold.decide.Comparison;
import hafthold.decide.Comparison.DayOfAir;
import hafthold.decide.Comparison.Ranked;
import hafthold.decide.Judgement;
import hafthold.decide.Likelihood;
import hafthold.decide.Verdict;
import hafthold.knife.FitLimits;
import hafthold.knife.Handle;
import hafthold.material.Cut;
import hafthold.material.Family;
import hafthold.quantity.Band;
import hafthold.quantity.Length;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.simulate.Driver;
import hafthold.simulate.EdgeSteps;
import hafthold.simulate.EndSteps;
import hafthold.simulate.Grounds;
import hafthold.simulate.HandleDays;
import hafthold.simulate.HandleYear;
import hafthold.simulate.MoistureSpan;
import hafthold.simulate.Once;
import hafthold.simulate.PartsJoint;
import hafthold.simulate.RestsOn;
import hafthold.simulate.ScaleChoice;
import hafthold.simulate.Step;
import hafthold.simulate.WorstPins;
import hafthold.source.Evidence;
import hafthold.source.Finding;
import hafthold.source.Finding.Kind;
import hafthold.source.Message;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/** An invented comparison in an invented place: figures of the right order, for looking at reports only. */
public final class InventedComparison {
    public static final int DAYS = 365;
    private static final double HALF_WIDTH_METRES = 0.013;
    private static final double THICKNESS_METRES = 0.008;
    private static final double PIN_METRES = 0.006;
    private static final double LENGTH_METRES = 0.115;
    private static final double FINISH_MOISTURE = 0.100;

    private static final double ALONG = 4;
    private static final double DRY = 0.068;

    /** What all years of one comparison share. */
    private record Run(double glue, double middleMoisture, UnaryOperator<String> change) {}

    private InventedComparison() {}

    /** Limits as a workshop might set them, strictest first. */
    public static List<FitLimits> limits() {
        return List.of(
                limit("show-piece", 0.03, 0.05, 0.02, 0.03),
                limit("good-new", 0.06, 0.10, 0.04, 0.05),
                limit("seasonal", 0.12, 0.20, 0.08, 0.10),
                limit("retouch", 0.25, 0.40, 0.15, 0.20));
    }

    /** Sixteen answers, glued scales showing 0.6 of the free movement. */
    public static Comparison glued() {
        return comparison("Nordhavn, invented place in the far north", 0.6, DRY, UnaryOperator.identity());
    }

    /** The same without glue. */
    public static Comparison unglued() {
        return comparison("Nordhavn, invented place in the far north", 1.0, DRY, UnaryOperator.identity());
    }

    /** Glued, with every text that a user may choose passed through a change. */
    public static Comparison glued(UnaryOperator<String> change) {
        return comparison(change.apply("Nordhavn"), 0.6, DRY, change);
    }

    /** A damp place where everything swells, glued. */
    public static Comparison damp() {
        return comparison("Port Mangrove, invented place by a warm sea", 0.6, 0.128, UnaryOperator.identity());
    }

    private static Likelihood likelihood(int rank) {
        List<Likelihood.ClassShare> classes = new ArrayList<>();
        for (FitLimits limits : limits()) {
            classes.add(new Likelihood.ClassShare(limits, 0.25 * (classes.size() + 1)));
        }
        return new Likelihood(100, OptionalDouble.of(0.98 - 0.01 * rank), classes);
    }

    private static FitLimits limit(String name, double shy, double proud, double head, double gap) {
        return new FitLimits(
                name,
                Length.ofMillimetres(shy),
                Length.ofMillimetres(proud),
                Length.ofMillimetres(head),
                Length.ofMillimetres(gap));
    }

    private static Comparison comparison(
            String place, double glue, double middleMoisture, UnaryOperator<String> change) {
        List<DayOfAir> outdoors = new ArrayList<>();
        List<DayOfAir> indoors = new ArrayList<>();
        for (int day = 0; day < DAYS; day++) {
            double season = season(day, 15);
            double weather = 2.0 * Math.sin(day * 0.9) + 1.5 * Math.sin(day * 0.37);
            outdoors.add(new DayOfAir(-3 + 17 * season + weather, 0.78 - 0.12 * season + 0.02 * weather));
            indoors.add(new DayOfAir(21 + 1.5 * Math.max(0, season), 0.32 + 0.14 * season + 0.008 * weather));
        }
        Judgement judgement = new Judgement(limits());
        List<HandleYear> years = new ArrayList<>(years(new Run(glue, middleMoisture, change)));
        years.sort(Comparator.comparing((HandleYear year) -> year.grounds().evidence() == Evidence.UNKNOWN)
                .thenComparing(judgement::seasonalUse));
        List<Ranked> ranked = new ArrayList<>();
        for (HandleYear year : years) {
            Verdict verdict = judgement.verdict(year);
            HandleYear sampled = year.with(
                    List.of(new Driver("swelling", 0.5, 0.7), new Driver("hygrometer", 0.21, -0.4)), List.of());
            ranked.add(new Ranked(
                    ranked.size() + 1,
                    sampled,
                    verdict,
                    judgement.reasons(year),
                    Optional.empty(),
                    Once.of(likelihood(ranked.size()))));
        }
        return new Comparison(
                "nordhavn",
                Message.verbatim(place),
                "heated-home",
                Message.verbatim(
                        change.apply("heated to 21 °C, moisture of the outdoor air plus a little from living")),
                new Handle(
                        Length.ofMillimetres(115),
                        Length.ofMillimetres(26),
                        Length.ofMillimetres(8),
                        Length.ofMillimetres(6),
                        Length.ofMillimetres(0.05),
                        Length.ofMillimetres(70)),
                new Temperature(20),
                new RelativeHumidity(0.55),
                change.apply("oil, two coats"),
                outdoors,
                indoors,
                ranked,
                List.of(
                        new Finding(Kind.DEFAULT, "hygrometer", Message.verbatim("read right to 5 points of humidity")),
                        new Finding(
                                Kind.DEFAULT,
                                "limits",
                                Message.verbatim("a workshop's judgement; no published tolerance was found")),
                        new Finding(
                                Kind.EXTRAPOLATION,
                                "air",
                                Message.verbatim(
                                        "the day-to-day weather is made up around monthly means, not measured")),
                        new Finding(Kind.CAUTION, "dust", Message.verbatim("sand with extraction and a fitted mask"))));
    }

    private static List<HandleYear> years(Run run) {
        return List.of(
                wood(run, "walnut-black", "black walnut", Cut.FLAT, 0.0027, 0.0019, 1.0, Evidence.PUBLISHED),
                wood(run, "walnut-black", "black walnut", Cut.QUARTER, 0.0019, 0.0027, 1.0, Evidence.PUBLISHED),
                wood(run, "maple-sugar", "sugar maple", Cut.FLAT, 0.0035, 0.0017, 1.0, Evidence.PUBLISHED),
                wood(run, "maple-sugar", "sugar maple", Cut.QUARTER, 0.0017, 0.0035, 1.0, Evidence.PUBLISHED),
                wood(run, "beech-european", "European beech", Cut.FLAT, 0.0042, 0.0021, 1.05, Evidence.MEMORY),
                wood(run, "beech-european", "European beech", Cut.QUARTER, 0.0021, 0.0042, 1.05, Evidence.MEMORY),
                wood(run, "teak", "teak", Cut.FLAT, 0.0020, 0.0013, 0.8, Evidence.PUBLISHED),
                wood(run, "teak", "teak", Cut.QUARTER, 0.0013, 0.0020, 0.8, Evidence.PUBLISHED),
                treated(run, "walnut-black+lumen-resin", "black walnut, resin in the pores", 0.0023),
                treated(run, "maple-sugar+lumen-resin", "sugar maple, resin in the pores", 0.0030),
                other(
                        run,
                        "burl-in-resin",
                        "maple burl cast in resin",
                        Family.HYBRID,
                        0.0016,
                        0.5,
                        0.0,
                        Evidence.ESTIMATED),
                other(
                        run,
                        "glass-epoxy-g10",
                        "glass-epoxy G-10",
                        Family.LAMINATE,
                        0.0002,
                        0.02,
                        0.0,
                        Evidence.PUBLISHED),
                other(
                        run,
                        "linen-phenolic-le",
                        "linen phenolic LE",
                        Family.LAMINATE,
                        0.0017,
                        0.25,
                        0.3e-5,
                        Evidence.ESTIMATED),
                other(
                        run,
                        "carbon-epoxy-woven",
                        "woven carbon-epoxy",
                        Family.LAMINATE,
                        0.0001,
                        0.02,
                        0.0,
                        Evidence.ESTIMATED),
                other(run, "acrylic-cast", "cast acrylic", Family.POLYMER, 0.0024, 0.05, 6e-5, Evidence.PUBLISHED),
                other(
                        run,
                        "antler-reindeer",
                        "reindeer antler",
                        Family.HARD_TISSUE,
                        0.0015,
                        0.6,
                        0.0,
                        Evidence.ESTIMATED),
                other(
                        run,
                        "greywood",
                        "greywood (name not in the tables)",
                        Family.WOOD,
                        0.0030,
                        1.0,
                        0.0,
                        Evidence.UNKNOWN));
    }

    private static HandleYear wood(
            Run run,
            String id,
            String name,
            Cut cut,
            double width,
            double thickness,
            double uptake,
            Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        findings.add(new Finding(
                Kind.ESTIMATE,
                id,
                Message.verbatim("speed of drying taken from walnut-like wood, uncertain by a factor of 2.5")));
        if (evidence == Evidence.MEMORY) {
            findings.add(new Finding(
                    Kind.ESTIMATE, id, Message.verbatim("shrinkage as remembered, the print was not seen again")));
        }
        if (id.equals("teak")) {
            findings.add(new Finding(
                    Kind.CAUTION, id, Message.verbatim("its dust can make skin and lungs touchy: gloves and mask")));
        }
        return year(run, id, name, Family.WOOD, cut, width, thickness, uptake, 0.0, 0.25, evidence, findings);
    }

    private static HandleYear treated(Run run, String id, String name, double width) {
        return year(
                run,
                id,
                name,
                Family.TREATED_WOOD,
                Cut.FLAT,
                width,
                0.7 * width,
                0.8,
                0.0,
                0.45,
                Evidence.ESTIMATED,
                List.of(
                        new Finding(
                                Kind.ESTIMATE,
                                id,
                                Message.verbatim(
                                        "resin in the pores slows water; tests say it finally moves nearly as much as plain wood"))));
    }

    private static HandleYear other(
            Run run,
            String id,
            String name,
            Family family,
            double width,
            double uptake,
            double perKelvin,
            Evidence evidence) {
        double doubt = evidence == Evidence.UNKNOWN ? 0.9 : evidence == Evidence.PUBLISHED ? 0.2 : 0.4;
        List<Finding> findings = evidence == Evidence.UNKNOWN
                ? List.of(new Finding(
                        Kind.ESTIMATE,
                        id,
                        Message.verbatim("no such name in the tables; a middling hardwood was taken")))
                : List.of();
        return year(run, id, name, family, Cut.NONE, width, width, uptake, perKelvin, doubt, evidence, findings);
    }

    private static HandleYear year(
            Run run,
            String id,
            String name,
            Family family,
            Cut cut,
            double width,
            double thickness,
            double uptake,
            double perKelvin,
            double doubt,
            Evidence evidence,
            List<Finding> findings) {
        double finish = FINISH_MOISTURE * uptake;
        double[] moisture = IntStream.range(0, DAYS)
                .mapToDouble(
                        day -> uptake * (run.middleMoisture() + 0.024 * season(day, 45) + 0.002 * Math.sin(day * 0.37)))
                .toArray();
        double[] free = IntStream.range(0, DAYS)
                .mapToDouble(day ->
                        HALF_WIDTH_METRES * (width * 100 * (moisture[day] - finish) + perKelvin * season(day, 15)))
                .toArray();
        double driest = min(moisture) - finish;
        double wettest = max(moisture) - finish;
        double head = THICKNESS_METRES * thickness * 100;
        double hole = PIN_METRES * width * 100;
        double squeeze = Math.max(0, -driest * hole - 5e-5);
        return new HandleYear(
                new ScaleChoice(id, run.change().apply(name), family, cut),
                new MoistureSpan(finish, min(moisture), max(moisture)),
                new EdgeSteps(step(free, run.glue(), doubt), step(free, 1, doubt), step(free, run.glue() * 0.4, doubt)),
                new EndSteps(
                        band(Math.max(Math.abs(driest), wettest) * ALONG * LENGTH_METRES * width, doubt),
                        band(-driest * ALONG * LENGTH_METRES * width / 2, doubt),
                        band(wettest * ALONG * LENGTH_METRES * width / 2, doubt)),
                new WorstPins(
                        band(Math.max(0, wettest * hole), doubt),
                        band(squeeze, doubt),
                        Optional.of(band(squeeze / PIN_METRES / 0.015, doubt)),
                        band(-driest * head, doubt),
                        band(wettest * head, doubt)),
                PartsJoint.NONE,
                Optional.empty(),
                worstMonth(free),
                new Grounds(
                        RestsOn.grade(evidence),
                        findings.stream()
                                .map(finding -> new Finding(
                                        finding.kind(),
                                        finding.subject(),
                                        Message.verbatim(
                                                run.change().apply(BenchStyle.ENGLISH.tell(finding.message())))))
                                .toList()),
                new HandleDays(
                        IntStream.range(0, DAYS)
                                .mapToObj(day -> signedBand(run.glue() * free[day], doubt))
                                .toList(),
                        IntStream.range(0, DAYS).mapToObj(day -> moisture[day]).toList()),
                List.of());
    }

    private static Step step(double[] free, double share, double doubt) {
        return new Step(band(-share * min(free), doubt), band(share * max(free), doubt));
    }

    /** -1 in winter, 1 in summer, the turn of the year shifted by a number of days. */
    private static double season(int day, int lagDays) {
        return -Math.cos(2 * Math.PI * (day - lagDays) / DAYS);
    }

    private static int worstMonth(double[] offset) {
        int worst = IntStream.range(0, DAYS)
                .boxed()
                .max(Comparator.comparingDouble(day -> Math.abs(offset[day])))
                .orElseThrow();
        return Math.min(12, 1 + worst * 12 / DAYS);
    }

    private static Band band(double metres, double doubt) {
        double value = Math.max(0, metres);
        return new Band(value * (1 - doubt), value, value * (1 + doubt));
    }

    private static Band signedBand(double metres, double doubt) {
        double spread = Math.abs(metres) * doubt;
        return new Band(metres - spread, metres, metres + spread);
    }

    private static double min(double[] values) {
        return IntStream.range(0, values.length)
                .mapToDouble(i -> values[i])
                .min()
                .orElseThrow();
    }

    private static double max(double[] values) {
        return IntStream.range(0, values.length)
                .mapToDouble(i -> values[i])
                .max()
                .orElseThrow();
    }
}
