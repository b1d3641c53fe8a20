package hafthold.table;

import hafthold.knife.Coupon;
import hafthold.knife.CouponReading;
import hafthold.knife.CouponSide;
import hafthold.knife.CouponTools;
import hafthold.knife.SizeRange;
import hafthold.knife.StepOutcome;
import hafthold.knife.WorkState;
import hafthold.material.Cut;
import hafthold.quantity.Length;
import hafthold.quantity.Mass;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.quantity.TimeSpan;
import hafthold.source.Finding;
import hafthold.source.Message;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Coupons as their maker wrote them down, and perhaps what became of what was foretold.
 *
 * @param coupons in the order of the file
 * @param outcomes likewise
 * @param findings one for every default that was taken
 */
public record CouponFile(List<Coupon> coupons, List<StepOutcome> outcomes, List<Finding> findings) {
    private static final Length USUAL_CALIPER = Length.ofMillimetres(0.05);
    private static final Mass USUAL_BALANCE = Mass.ofGrams(0.1);
    private static final RelativeHumidity UNCHECKED = new RelativeHumidity(0.05);
    private static final RelativeHumidity CHECKED = new RelativeHumidity(0.02);
    private static final RelativeHumidity WORST = new RelativeHumidity(0.25);
    private static final double FURTHEST_SIZE = 0.25;
    private static final int MOST_PIECES = 200;
    private static final int MOST_READINGS = 40;
    private static final TimeSpan LONGEST = TimeSpan.ofDays(1500);
    private static final String HYGROMETER = "hygrometer";

    /** Keeps its own copies. */
    public CouponFile {
        coupons = List.copyOf(coupons);
        outcomes = List.copyOf(outcomes);
        findings = List.copyOf(findings);
    }

    /**
     * Reads a file. Whether its ids are in the tables is not looked at.
     *
     * @throws InvalidTableException at the first fault, naming file, line, key, value and what would be right
     */
    public static CouponFile read(Path path) {
        List<Finding> findings = new ArrayList<>();
        TomlSection whole = TomlText.parse(path.toString(), TomlText.read(path), findings);
        whole.allows(List.of("coupon", "outcome"));
        List<Coupon> coupons =
                whole.oneOrMore("coupon").stream().map(CouponFile::coupon).toList();
        List<StepOutcome> outcomes =
                whole.oneOrMore("outcome").stream().map(OutcomeKeys::read).toList();
        if (coupons.isEmpty() && outcomes.isEmpty()) {
            throw whole.fault("coupon", "a line [[coupon]] with a strip that was measured, or [[outcome]] with a step");
        }
        return new CouponFile(coupons, outcomes, findings);
    }

    private static Coupon coupon(TomlSection one) {
        one.allows(List.of(
                "name",
                "material",
                "own_name",
                "cut",
                "end_grain_seen",
                "width",
                "thickness",
                "length",
                "pieces",
                "caliper",
                "balance",
                HYGROMETER,
                "checked",
                "oven_dry",
                "reading"));
        String material = one.required("material", one.text("material"), "an id or a name, such as \"walnut-black\"");
        Optional<Cut> cut = one.word(
                "cut",
                Arrays.stream(Cut.values()).filter(any -> any != Cut.NONE).toList(),
                Cut::word);
        Map<CouponSide, Length> about = new EnumMap<>(CouponSide.class);
        for (CouponSide side : CouponSide.values()) {
            about.put(
                    side,
                    one.required(word(side), one.length(word(side), range(side)), "its " + word(side) + ", about"));
        }
        List<CouponReading> readings = readings(one, about);
        boolean isMeasured =
                readings.stream().anyMatch(reading -> !reading.sizes().isEmpty());
        boolean isWeighed =
                readings.stream().anyMatch(reading -> reading.weight().isPresent()) || one.has("oven_dry");
        if (!isMeasured && !isWeighed) {
            throw one.fault("reading", "a weight, or a width, thickness or length in each reading");
        }
        Coupon coupon = new Coupon(
                one.text("name").orElse(material),
                material,
                one.text("own_name"),
                cut,
                one.flag("end_grain_seen").orElse(false),
                about.get(CouponSide.WIDTH),
                about.get(CouponSide.THICKNESS),
                about.get(CouponSide.LENGTH),
                pieces(one),
                tools(one, isMeasured, isWeighed),
                weight(one, "oven_dry"),
                readings);
        if (readings.size() < 2 && coupon.ovenDry().isEmpty()) {
            throw one.fault("reading", "two readings or more in different airs, or one and oven_dry");
        }
        heaviest(one, coupon);
        return coupon;
    }

    /** Nothing weighs less with water in it than dry. */
    private static void heaviest(TomlSection one, Coupon coupon) {
        coupon.ovenDry().ifPresent(dry -> {
            for (int i = 0; i < coupon.readings().size(); i++) {
                Optional<Mass> weight = coupon.readings().get(i).weight();
                if (weight.filter(some -> some.kilograms()
                                < dry.kilograms() - 2 * coupon.tools().balance().kilograms())
                        .isPresent()) {
                    throw one.faultAt(
                            "reading[" + (i + 1) + "].weight",
                            "",
                            "no less than oven_dry: dry it again, or weigh again");
                }
            }
        });
    }

    private static CouponTools tools(TomlSection one, boolean isMeasured, boolean isWeighed) {
        SizeRange range = SizeRange.MEASURING_ERROR;
        Optional<Length> caliper = one.length("caliper", range);
        Optional<Mass> balance = one.quantity(
                "balance",
                QuantityForm.MASS,
                step -> step.grams() >= 0.0001 && step.grams() <= 50,
                "the smallest step that the scale shows, from 0.0001 to 50 g");
        boolean isChecked = one.flag("checked").orElse(false);
        Optional<RelativeHumidity> hygrometer = hygrometer(one);
        return new CouponTools(
                isMeasured
                        ? one.or("caliper", caliper, USUAL_CALIPER, Message.size(USUAL_CALIPER))
                        : caliper.orElse(USUAL_CALIPER),
                isWeighed
                        ? one.or("balance", balance, USUAL_BALANCE, Message.of("taken.pocket-scale"))
                        : balance.orElse(USUAL_BALANCE),
                one.or(
                        HYGROMETER,
                        hygrometer,
                        isChecked ? CHECKED : UNCHECKED,
                        Message.of(isChecked ? "taken.hygrometer-checked" : "taken.hygrometer-unchecked")));
    }

    private static Optional<RelativeHumidity> hygrometer(TomlSection section) {
        return section.quantity(
                HYGROMETER,
                QuantityForm.HUMIDITY,
                error -> error.fraction() >= 0.002 && error.fraction() <= WORST.fraction(),
                "how far it may be off, from 0.2 to 25 %, such as \"3 %\"");
    }

    private static int pieces(TomlSection one) {
        Object value = one.value("pieces");
        if (value == null) {
            return 1;
        }
        if (!(value instanceof Long number) || number < 1 || number > MOST_PIECES) {
            throw one.fault("pieces", "how many alike were weighed together: a whole number from 1 to " + MOST_PIECES);
        }
        return (int) (long) number;
    }

    private static List<CouponReading> readings(TomlSection one, Map<CouponSide, Length> about) {
        List<CouponReading> readings = new ArrayList<>();
        Optional<LocalDate> before = Optional.empty();
        List<TomlSection> sections = one.sections("reading");
        if (sections.isEmpty() || sections.size() > MOST_READINGS) {
            throw one.fault("reading", "1 to " + MOST_READINGS + " readings: a line [[coupon.reading]] for each");
        }
        for (TomlSection section : sections) {
            section.allows(List.of(
                    "on", "lay", "humidity", "temperature", HYGROMETER, "weight", "width", "thickness", "length"));
            Optional<LocalDate> on = section.day("on");
            Optional<TimeSpan> lay = lay(section, on, before, readings.isEmpty());
            Map<CouponSide, Length> sizes = new EnumMap<>(CouponSide.class);
            for (CouponSide side : CouponSide.values()) {
                size(section, side, about.get(side)).ifPresent(size -> sizes.put(side, size));
            }
            readings.add(new CouponReading(
                    on,
                    lay,
                    section.required(
                            "humidity",
                            section.quantity("humidity", QuantityForm.HUMIDITY),
                            "the air it lay in, such as \"35 %\""),
                    section.quantity("temperature", QuantityForm.TEMPERATURE, WorkState::isWorkable, WorkState.WORKABLE)
                            .orElse(new Temperature(20)),
                    hygrometer(section),
                    weight(section, "weight"),
                    sizes));
            before = on.or(() -> Optional.empty());
        }
        return readings;
    }

    /** How long it lay, as told, or else by the days; empty where it is taken to have come to rest. */
    private static Optional<TimeSpan> lay(
            TomlSection section, Optional<LocalDate> on, Optional<LocalDate> before, boolean isFirst) {
        Optional<TimeSpan> told = section.quantity(
                "lay",
                QuantityForm.SPAN,
                span -> span.seconds() >= 60 && span.seconds() <= LONGEST.seconds(),
                "how long it lay in this air, from a minute to four years");
        if (on.isPresent() && before.isPresent()) {
            long days = ChronoUnit.DAYS.between(before.get(), on.get());
            if (days < 0 || days > LONGEST.days()) {
                throw section.fault("on", "a day after the reading before, within four years");
            }
            if (told.isEmpty() && days == 0) {
                throw section.fault("on", "a later day, or lay = \"6 h\" beside it where both were on one day");
            }
            if (told.isEmpty()) {
                return Optional.of(TimeSpan.ofDays((double) days));
            }
            if (Math.abs(told.get().days() - days) > 1.5) {
                throw section.fault("lay", "the time since the reading before, which was " + days + " days earlier");
            }
        }
        return section.orNone("lay", told, Message.of(isFirst ? "taken.at-rest-first" : "taken.at-rest"));
    }

    private static Optional<Length> size(TomlSection section, CouponSide side, Length about) {
        return section.quantity(
                word(side),
                QuantityForm.LENGTH,
                size -> Math.abs(size.metres() / about.metres() - 1) <= FURTHEST_SIZE,
                "near the " + word(side) + " of the coupon, " + SizeRange.millimetres(about));
    }

    private static Optional<Mass> weight(TomlSection section, String key) {
        return section.quantity(
                key,
                QuantityForm.MASS,
                weight -> weight.grams() >= 0.05 && weight.grams() <= 50_000,
                "a weight from 0.05 g to 50 kg");
    }

    private static String word(CouponSide side) {
        return side.name().toLowerCase(Locale.ROOT);
    }

    private static SizeRange range(CouponSide side) {
        return switch (side) {
            case WIDTH -> SizeRange.COUPON_WIDTH;
            case THICKNESS -> SizeRange.COUPON_THICKNESS;
            case LENGTH -> SizeRange.COUPON_LENGTH;
        };
    }

    /** A commented file that is accepted, invented. */
    public static String example() {
        return BuildFile.resource("coupons.toml");
    }
}
