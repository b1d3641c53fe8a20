package hafthold.table;

import hafthold.knife.Bond;
import hafthold.knife.WorkState;
import hafthold.quantity.Force;
import hafthold.quantity.Length;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import java.util.List;

/** What is taken where a build file says nothing (common practice, no source). */
public final class UsualBuild {
    static final String STEEL = "steel-stainless-martensitic";
    static final String PIN_METAL = "brass-free-cutting";
    static final String LINER = "vulcanised-fibre";
    static final String ADHESIVE = "epoxy-two-part";
    static final String FINISH = "bare";
    static final String WORK_CLASS = "good-new";

    static final Length TANG_THICKNESS = Length.ofMillimetres(4);
    static final Length SCALE_THICKNESS = Length.ofMillimetres(8);
    static final Length HANDLE_LENGTH = Length.ofMillimetres(110);
    static final Length EASING = Length.ofMillimetres(0.3);
    static final Length LINER_THICKNESS = Length.ofMillimetres(0.8);
    static final Length PIN_DIAMETER = Length.ofMillimetres(6);
    static final Length PIN_RING = Length.ofMillimetres(0.05);
    /** Thickness of a glue line. */
    public static final Length BOND_LINE = Length.ofMillimetres(0.1);

    static final Length STACK_TANG_THICKNESS = Length.ofMillimetres(4);
    static final Length GRIP_WIDTH = Length.ofMillimetres(30);
    static final Length GRIP_THICKNESS = Length.ofMillimetres(22);
    static final Force SNUG = new Force(0);

    /** Two pins usually stand this share of the handle's length apart. */
    static final double PIN_SPACING_SHARE = 0.64;

    static final WorkState AIR = new WorkState.SettledAir(RelativeHumidity.parse("50 %"), Temperature.parse("20 C"));

    private UsualBuild() {}

    /**
     * The tang and glue that are taken where nothing is said of them.
     *
     * @param tangThickness the whole tang
     */
    public static Bond bond(MaterialLibrary library, Length tangThickness) {
        return new Bond(library.plain(STEEL), tangThickness, library.plain(ADHESIVE), BOND_LINE);
    }

    /** As {@link #bond(MaterialLibrary, Length)} on a tang of the usual thickness. */
    public static Bond bond(MaterialLibrary library) {
        return bond(library, TANG_THICKNESS);
    }

    /** Material ids that the defaults rest on; each must have a row in {@code materials.csv}. */
    public static List<String> materialIds() {
        return List.of(STEEL, PIN_METAL, LINER, ADHESIVE);
    }

    /** The finish that the defaults rest on; it must have a row in {@code finishes.csv}. */
    public static String finishId() {
        return FINISH;
    }

    /** The class of work that the defaults rest on; it must have a row in {@code limits.csv}. */
    public static String workClass() {
        return WORK_CLASS;
    }

    /**
     * Where a pin usually stands.
     *
     * @param index which pin, from 0
     * @param count number of pins
     * @param length length of the handle
     */
    static Length pinAlong(int index, int count, Length length) {
        double share = count == 1 ? 0.5 : 0.5 - PIN_SPACING_SHARE / 2 + PIN_SPACING_SHARE * index / (count - 1);
        return new Length(length.metres() * share);
    }
}
