package hafthold.table;

import hafthold.knife.FillTrial;
import hafthold.knife.RoomAir;
import hafthold.knife.StockBlock;
import hafthold.knife.StockBlock.Sealed;
import hafthold.knife.StockBlock.SoldAs;
import hafthold.knife.StockCoupon;
import hafthold.knife.StockReading;
import hafthold.material.Cut;
import hafthold.material.Family;
import hafthold.material.Material;
import hafthold.material.ScaleMaterial;
import hafthold.quantity.Length;
import hafthold.quantity.Mass;
import hafthold.quantity.Temperature;
import hafthold.source.Finding;
import hafthold.source.Message;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** One table {@code [[block]]} of a stock file. */
final class BlockKeys {
    private static final String MATERIAL = "material";
    private static final String READING = "reading";
    private static final String COUPON = "coupon";
    private static final String STABILISED = "stabilised";
    private static final String ON = "on";
    private static final String DAY = "a day such as 2026-03-01";
    private static final double HEAVIEST_GRAMS = 20_000;
    private static final String TREATED = "+";
    private static final String USUAL_TREATMENT = "lumen-resin";
    private static final double USUAL_CELSIUS = 20;

    private final MaterialLibrary library;
    private final List<Finding> findings;

    /**
     * A reader.
     *
     * @param findings takes up every default that is used
     */
    BlockKeys(MaterialLibrary library, List<Finding> findings) {
        this.library = library;
        this.findings = findings;
    }

    /** What a block is of: as it is, and as it was before anything was put into it. */
    private record Woods(Material material, Material plain) {}

    StockBlock read(TomlSection block, int number) {
        block.allows(List.of(
                "name",
                MATERIAL,
                "cut",
                "length",
                "width",
                "thickness",
                "sealed",
                "bought",
                "sold_as",
                READING,
                COUPON,
                STABILISED));
        Woods woods = woods(block);
        StockBlock.Size size = new StockBlock.Size(
                size(block, "length", 20, 1000), size(block, "width", 8, 400), size(block, "thickness", 4, 200));
        List<StockReading> readings = new ArrayList<>();
        for (TomlSection one : block.oneOrMore(READING)) {
            readings.add(reading(one));
        }
        Optional<StockCoupon> coupon =
                block.has(COUPON) ? Optional.of(coupon(block.section(COUPON))) : Optional.empty();
        Optional<FillTrial> tests =
                block.has(STABILISED) ? Optional.of(StabilisedKeys.read(block.section(STABILISED))) : Optional.empty();
        Optional<LocalDate> first = Stream.concat(
                        readings.stream().map(StockReading::on), coupon.stream().map(StockCoupon::on))
                .min(Comparator.naturalOrder());
        Optional<LocalDate> bought = block.day("bought");
        if (bought.isEmpty()) {
            if (first.isEmpty() && tests.isEmpty()) {
                throw block.problem(
                        READING,
                        "nothing is known of it: add [[block.reading]] with on = 2026-03-01 and weight = \"143 g\","
                                + " or bought = 2026-03-01");
            }
            note("note.stock.bought", woods.material().id());
        }
        return block.build(() -> new StockBlock(
                block.text("name").orElse(woods.material().name() + " " + number),
                woods.material(),
                woods.plain(),
                cut(block, woods.material()),
                size,
                or(block, "sealed", Sealed.values(), Sealed::word, Sealed.NONE, woods, "note.stock.sealed"),
                bought.or(() -> first).orElse(LocalDate.EPOCH),
                or(block, "sold_as", SoldAs.values(), SoldAs::word, SoldAs.UNKNOWN, woods, "note.stock.sold-as"),
                readings,
                coupon,
                tests));
    }

    private <T> T or(
            TomlSection block,
            String key,
            T[] words,
            java.util.function.Function<T, String> word,
            T usual,
            Woods woods,
            String note) {
        return block.word(key, Arrays.asList(words), word).orElseGet(() -> {
            note(note, woods.material().id());
            return usual;
        });
    }

    private Woods woods(TomlSection block) {
        String id = block.required(
                MATERIAL,
                block.text(MATERIAL),
                "what the block is of, such as \"walnut-black\" or \"stabilised maple\"");
        ScaleMaterial found = find(block, id);
        if (!(found instanceof Material material)) {
            throw block.fault(MATERIAL, "one material; give the parts of a hybrid one by one");
        }
        if (material.water().isEmpty()) {
            throw block.fault(MATERIAL, "a material that takes up water; " + material.name() + " needs no drying");
        }
        if (material.family() == Family.WOOD && block.has(STABILISED)) {
            return new Woods((Material) find(block, material.id() + TREATED + USUAL_TREATMENT), material);
        }
        int plus = material.id().indexOf(TREATED);
        Material plain = plus < 0 ? material : library.plain(material.id().substring(0, plus));
        if (block.has(STABILISED) && plain.family() != Family.WOOD) {
            throw block.fault(MATERIAL, "a wood, since [block.stabilised] asks how resin has filled it");
        }
        return new Woods(material, plain);
    }

    private ScaleMaterial find(TomlSection block, String id) {
        try {
            return library.find(id);
        } catch (UnknownIdException e) {
            throw block.fault(MATERIAL, e.expectation());
        }
    }

    private Cut cut(TomlSection block, Material material) {
        return block.text("cut")
                .map(typed -> Cut.ofWord(typed)
                        .orElseThrow(() -> block.fault(
                                "cut",
                                NearestWord.oneOf(
                                        typed,
                                        Arrays.stream(Cut.values())
                                                .map(Cut::word)
                                                .toList()))))
                .orElseGet(() -> {
                    findings.add(new Finding(
                            Finding.Kind.DEFAULT,
                            material.id(),
                            Message.of(
                                    "note.stock.cut",
                                    Map.of(
                                            "cut",
                                            Message.verbatim(material.usualCut().word())))));
                    return material.usualCut();
                });
    }

    private static Length size(TomlSection block, String key, double least, double most) {
        return block.required(
                key,
                block.quantity(
                        key,
                        QuantityForm.LENGTH,
                        length -> length.millimetres() >= least && length.millimetres() <= most,
                        "a length from " + (int) least + " mm to " + (int) most + " mm"),
                "the " + key + " of the block, such as \"32 mm\"");
    }

    private static StockReading reading(TomlSection one) {
        one.allows(List.of(ON, "weight", "width", "thickness", "meter", "humidity", "temperature"));
        LocalDate on = one.required(ON, one.day(ON), DAY);
        StockReading reading = new StockReading(
                on,
                weight(one, "weight"),
                one.quantity("width", QuantityForm.LENGTH),
                one.quantity("thickness", QuantityForm.LENGTH),
                one.quantity(
                        "meter",
                        QuantityForm.MOISTURE,
                        moisture -> moisture.fraction() <= 1,
                        "what the meter showed, up to 100 %"),
                one.quantity("humidity", QuantityForm.HUMIDITY)
                        .map(humidity -> new RoomAir(
                                humidity,
                                one.quantity("temperature", QuantityForm.TEMPERATURE)
                                        .orElse(new Temperature(USUAL_CELSIUS)))));
        boolean isEmpty = Stream.of(reading.weight(), reading.width(), reading.thickness(), reading.meter())
                .allMatch(Optional::isEmpty);
        if (isEmpty) {
            throw one.problem(ON, "nothing was read on that day; add weight = \"143.2 g\", width, thickness or meter");
        }
        return reading;
    }

    private static StockCoupon coupon(TomlSection coupon) {
        coupon.allows(List.of(ON, "wet", "dry"));
        LocalDate on = coupon.required(ON, coupon.day(ON), DAY);
        Mass wet = coupon.required("wet", weight(coupon, "wet"), "its weight as sawn, such as \"21.4 g\"");
        Mass dry = coupon.required("dry", weight(coupon, "dry"), "its weight out of the oven, such as \"19.5 g\"");
        return coupon.build(() -> new StockCoupon(on, wet, dry));
    }

    /** A weight that a balance of a bench shows. */
    static Optional<Mass> weight(TomlSection section, String key) {
        return section.quantity(
                key,
                QuantityForm.MASS,
                mass -> mass.grams() > 0 && mass.grams() <= HEAVIEST_GRAMS,
                "a weight of more than 0 and at most 20 kg");
    }

    private void note(String key, String subject) {
        findings.add(new Finding(Finding.Kind.DEFAULT, subject, Message.of(key)));
    }
}
