package hafthold.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.knife.FullTangBuild;
import hafthold.knife.GlueLine;
import hafthold.knife.Grip;
import hafthold.knife.KnifeBuild;
import hafthold.knife.Liner;
import hafthold.knife.Order;
import hafthold.knife.Pin;
import hafthold.knife.Scales;
import hafthold.knife.Scales.Station;
import hafthold.knife.StackPart;
import hafthold.knife.StackTang;
import hafthold.knife.Tang;
import hafthold.knife.TangStackBuild;
import hafthold.knife.WorkState;
import hafthold.material.Cut;
import hafthold.quantity.Force;
import hafthold.quantity.Length;
import hafthold.quantity.MoistureContent;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.source.Finding;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class BuildFileProperties {
    private static final Path FOLDER = Path.of("bench").toAbsolutePath();

    @Property(tries = 400, edgeCases = EdgeCasesMode.NONE)
    void aFullTangBuildWrittenOutReadsBackEqual(@ForAll("fullTangs") FullTangBuild build) {
        BuildFile read = BuildFile.parse("knife.toml", BuildFileText.of(build), FOLDER);
        assertEquals(build, read.build());
        assertEquals(silences(build), subjects(read));
    }

    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void aStackWrittenOutReadsBackEqual(@ForAll("stacks") TangStackBuild build) {
        BuildFile read = BuildFile.parse("knife.toml", BuildFileText.of(build), FOLDER);
        assertEquals(build, read.build());
        assertEquals(silences(build), subjects(read));
    }

    /** Whatever is typed, the reader answers with a build or with a fault for the person at the bench. */
    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void aFileWithOneLineSpoiltIsReadOrRefusedByName(
            @ForAll("fullTangs") FullTangBuild build, @ForAll("spoilt") String line, @ForAll("places") double place) {
        List<String> lines = new ArrayList<>(BuildFileText.of(build).lines().toList());
        lines.set((int) (place * lines.size()), line);
        try {
            BuildFile read = BuildFile.parse("knife.toml", String.join("\n", lines), FOLDER);
            assertTrue(read.build().materialIds().size() > 0);
        } catch (InvalidTableException fault) {
            assertTrue(fault.getMessage().matches("(?s)knife\\.toml line [0-9]+, .*"), fault.getMessage());
        }
    }

    /** What the written file says nothing of, because the build has none of it. */
    private static Set<String> silences(KnifeBuild build) {
        Set<String> silences = new TreeSet<>();
        if (build instanceof FullTangBuild full) {
            silent(silences, full.scales().cutLeft(), "scales.cut_left");
            silent(silences, full.scales().cutRight(), "scales.cut_right");
            silent(silences, full.bolsterId(), "bolster.material");
        } else {
            List<StackPart> parts = ((TangStackBuild) build).parts();
            for (int i = 0; i < parts.size(); i++) {
                silent(silences, parts.get(i).cut(), "parts[" + (i + 1) + "].cut");
            }
        }
        return silences;
    }

    private static void silent(Set<String> silences, Optional<?> said, String key) {
        if (said.isEmpty()) {
            silences.add(key);
        }
    }

    private static Set<String> subjects(BuildFile file) {
        Set<String> subjects = new TreeSet<>();
        for (Finding finding : file.findings()) {
            assertTrue(subjects.add(finding.subject()), "twice: " + finding.subject());
        }
        return subjects;
    }

    @Provide
    Arbitrary<String> spoilt() {
        return Arbitraries.oneOf(
                Arbitraries.of(
                        "",
                        "[tang]",
                        "[[pins]]",
                        "pins = 3",
                        "width = 26",
                        "width = \"1e9 m\"",
                        "along = \"nan mm\"",
                        "hole = \"8 mm\"",
                        "at = \"-0 mm\"",
                        "humidity = \"550 %\"",
                        "thickness = 1979-05-27",
                        "cut = \"\"",
                        "material = '''\n'''",
                        "temperature = \"-274 C\"",
                        "up = \"40 mm\"",
                        "climate = \"\\u0000\"",
                        "pins.x = 1",
                        "tang.width.x = 1"),
                Arbitraries.strings().ascii().ofMaxLength(30),
                Arbitraries.strings().ofMaxLength(10));
    }

    @Provide
    Arbitrary<Double> places() {
        return Arbitraries.doubles().between(0, true, 1, false);
    }

    @Provide
    Arbitrary<FullTangBuild> fullTangs() {
        return Combinators.combine(
                        orders(),
                        shapes(),
                        words(),
                        Combinators.combine(words(), lengths(0.05, 6))
                                .as(Liner::new)
                                .list()
                                .ofMaxSize(4),
                        words().optional(),
                        Combinators.combine(words(), lengths(0.005, 2)).as(GlueLine::new),
                        states(),
                        states())
                .as((order, shape, steel, liners, bolster, glue, glueUp, made) -> new FullTangBuild(
                        order, shape.tang(steel), shape.scales(), liners, bolster, shape.pins(), glue, glueUp, made));
    }

    @Provide
    Arbitrary<TangStackBuild> stacks() {
        Arbitrary<StackPart> parts = Combinators.combine(
                        words(), Arbitraries.of(Cut.class).optional(), lengths(0.05, 30))
                .as(StackPart::new);
        Arbitrary<StackTang> tangs = Combinators.combine(
                        Arbitraries.of(StackTang.Kind.class),
                        words(),
                        lengths(2, 9.9),
                        lengths(0.5, 9.9),
                        Arbitraries.doubles().between(0, 20_000).ofScale(1).map(Force::new))
                .as(StackTang::new);
        return Combinators.combine(
                        orders(),
                        tangs,
                        Combinators.combine(lengths(10, 90), lengths(10, 80), words())
                                .as(Grip::new),
                        parts.list().ofMinSize(1).ofMaxSize(13),
                        states())
                .as(TangStackBuild::new);
    }

    /** Scales with a tang that they cover and pins in a row that fit. */
    private record Shape(Scales scales, Length tangWidth, Length tangThickness, double taper, List<Pin> pins) {
        Tang tang(String steel) {
            double butt = Math.max(0.5, tangThickness.millimetres() * taper);
            return new Tang(steel, tangWidth, tangThickness, Length.ofMillimetres(butt));
        }
    }

    private static Arbitrary<Shape> shapes() {
        return Combinators.combine(
                        scales(),
                        Arbitraries.doubles().between(0.3, 1),
                        lengths(0.5, 12),
                        Arbitraries.doubles().between(0, 1),
                        Arbitraries.integers().between(0, 8))
                .flatAs((scales, share, tangThickness, taper, count) -> {
                    double[] widths = scales.profile().stream()
                            .mapToDouble(station -> station.width().millimetres())
                            .sorted()
                            .toArray();
                    double tang = Math.min(80, Math.max(5, share * widths[widths.length - 1]));
                    double narrowest = Math.min(tang, widths[0]);
                    double pitch = scales.length().millimetres() / (count + 1);
                    double largest = Math.min(20, Math.min(narrowest / 2.5, pitch / 1.5));
                    return pinRow(count, pitch, largest, narrowest)
                            .map(pins -> new Shape(scales, Length.ofMillimetres(tang), tangThickness, taper, pins));
                });
    }

    private static Arbitrary<List<Pin>> pinRow(int count, double pitch, double largest, double narrowest) {
        Arbitrary<List<Pin>> row = Arbitraries.just(List.of());
        for (int i = 0; i < count; i++) {
            double along = pitch * (i + 1);
            Arbitrary<Pin> pin = Combinators.combine(
                            Arbitraries.of(Pin.Kind.class),
                            words(),
                            between(0.8, Math.max(0.8, largest)),
                            Arbitraries.doubles().between(0, 0.2),
                            between(-narrowest / 5, narrowest / 5),
                            Arbitraries.of(Pin.Fill.class))
                    .as((kind, metal, diameter, ring, up, fill) -> new Pin(
                            kind,
                            metal,
                            Length.ofMillimetres(diameter),
                            Length.ofMillimetres(diameter + ring),
                            Length.ofMillimetres(along),
                            Length.ofMillimetres(up),
                            fill));
            row = Combinators.combine(row, pin).as((before, next) -> {
                List<Pin> longer = new ArrayList<>(before);
                longer.add(next);
                return longer;
            });
        }
        return row;
    }

    private static Arbitrary<Scales> scales() {
        return lengths(60, 400)
                .flatMap(length -> Combinators.combine(
                                words(),
                                Arbitraries.of(Cut.class).optional(),
                                Arbitraries.of(Cut.class).optional(),
                                lengths(5, 40),
                                profiles(length.millimetres()),
                                lengths(0, 5),
                                words())
                        .as((material, left, right, thickness, profile, easing, finish) ->
                                new Scales(material, left, right, thickness, length, profile, easing, finish)));
    }

    private static Arbitrary<List<Station>> profiles(double length) {
        Arbitrary<List<Double>> places =
                between(0.01, length).list().uniqueElements().ofMaxSize(5);
        return places.flatMap(inner -> lengths(10, 90)
                .list()
                .ofSize(inner.size() + 1)
                .map(widths -> {
                    List<Station> profile = new ArrayList<>(List.of(new Station(new Length(0), widths.get(0))));
                    List<Double> ordered = inner.stream().sorted().toList();
                    for (int i = 0; i < ordered.size(); i++) {
                        profile.add(new Station(Length.ofMillimetres(ordered.get(i)), widths.get(i + 1)));
                    }
                    return profile;
                }));
    }

    private static Arbitrary<Order> orders() {
        Arbitrary<Optional<String>> places = words().optional();
        return Combinators.combine(
                        Arbitraries.strings()
                                .ofMinLength(1)
                                .ofMaxLength(20)
                                .filter(name ->
                                        !name.isBlank() && name.chars().noneMatch(c -> Character.isSurrogate((char) c)))
                                .optional(),
                        places,
                        words().optional(),
                        words(),
                        words(),
                        Arbitraries.of(true, false))
                .as((name, place, setting, file, work, kitchen) -> new Order(
                        name,
                        place,
                        setting,
                        place.isPresent() ? Optional.empty() : Optional.of(FOLDER.resolve(file + ".csv")),
                        work,
                        kitchen));
    }

    private static Arbitrary<WorkState> states() {
        Arbitrary<Temperature> temperatures =
                Arbitraries.doubles().between(-30, 60).ofScale(2).map(Temperature::new);
        Arbitrary<WorkState> settled = Combinators.combine(
                        Arbitraries.doubles().between(0.03, 0.99).map(RelativeHumidity::new), temperatures)
                .as(WorkState.SettledAir::new);
        Arbitrary<WorkState> measured = Combinators.combine(
                        Arbitraries.doubles().between(0, 0.4).map(MoistureContent::new), temperatures)
                .as(WorkState.MeasuredMoisture::new);
        return Arbitraries.oneOf(settled, measured);
    }

    private static Arbitrary<String> words() {
        return Arbitraries.strings()
                .withCharRange('a', 'z')
                .withChars('-', '+')
                .ofMinLength(1)
                .ofMaxLength(12);
    }

    private static Arbitrary<Length> lengths(double leastMillimetres, double mostMillimetres) {
        return Arbitraries.doubles()
                .between(leastMillimetres, mostMillimetres)
                .ofScale(3)
                .map(Length::ofMillimetres);
    }

    private static Arbitrary<Double> between(double least, double most) {
        return Arbitraries.doubles()
                .between(0, 1)
                .ofScale(6)
                .map(share -> Math.min(most, least + share * (most - least)));
    }
}
