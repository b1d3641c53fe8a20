package hafthold.decide;

import hafthold.knife.FitLimits;
import hafthold.quantity.Band;
import hafthold.simulate.EventYear;
import hafthold.simulate.FitYear;
import hafthold.simulate.HandleYear;
import hafthold.simulate.StackYear;
import hafthold.source.Evidence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Holds a year against the classes of work, strictest first.
 *
 * <p>Every movement falls in the strictest class whose limit its value keeps; the worst of them decides. Keeping the
 * second class (good, new) stays, the third (seasonal) asks for care, the fourth (retouch) for a change of the build;
 * what keeps none is refused. A squeeze that uses up the strength beside a pin asks for a change, two thirds of it for
 * care; the line between the parts of a hybrid is judged in the same way, and the ridge along it like a pin head. A sunk
 * pin head is a comfort like a proud scale and has its limit.
 *
 * <p>A glued scale is judged by its edge at half its thickness, by its glue line and by tension across the grain in the
 * same way, and, where glue or scale would not hold, by the ends of the scale as if it were loose; a whole knife also by
 * what softens in the heat. For fussier or
 * easier work than good-new the verdicts move by a class; what keeps no class is refused all the same.
 *
 * <p>The value decides, not the band: it is the run with every input at its value. How much weight a verdict bears is
 * told beside it, as the share of sampled years that bear it out.
 *
 * <p>Of a material of which nothing is known the verdict is that on its stand-in, unless the ends of its band lie three
 * classes of work apart: then there is none. Nor is there one where the strength that a limit is held against is not
 * known, unless something else already asks for a change.
 */
public final class Judgement {
    private static final int CARE_CLASS = 2;
    private static final int CHANGE_CLASS = 3;
    private static final double CARE_CRACK_USE = 2.0 / 3.0;
    private static final int TOO_MANY_CLASSES = 3;

    private static final int STAYS_CLASS = 1;
    private static final double NARROW_MARGIN_KELVIN = 10;

    private final List<FitLimits> classes;
    private final int shift;

    /** Takes four classes of work, strictest first, and judges for good new work. */
    public Judgement(List<FitLimits> classes) {
        this(classes, STAYS_CLASS);
    }

    /**
     * Judges for a class of work.
     *
     * @param classes four, strictest first
     * @param workClass name of one of them; an unknown one counts as the second
     */
    public static Judgement forWork(List<FitLimits> classes, String workClass) {
        int index = classes.stream().map(FitLimits::name).toList().indexOf(workClass);
        return new Judgement(classes, index < 0 ? STAYS_CLASS : index);
    }

    private Judgement(List<FitLimits> classes, int staysClass) {
        if (classes.size() != CHANGE_CLASS + 1) {
            throw new IllegalArgumentException(
                    "a judgement needs four classes of work, strictest first, got " + classes.size());
        }
        this.classes = List.copyOf(classes);
        this.shift = staysClass - STAYS_CLASS;
    }

    /** The verdict on a year with events: heat counts as well. */
    public Verdict verdict(EventYear year) {
        return answer(year.year(), standings(year));
    }

    /** Everything about a year with events that does not keep the strictest class, the deciding one first. */
    public List<Reason> reasons(EventYear year) {
        return reasons(standings(year));
    }

    /** The largest of all uses of the limits in a year with events: what materials are ranked by. */
    public double seasonalUse(EventYear year) {
        return standings(year).stream().mapToDouble(Standing::use).max().orElseThrow();
    }

    private List<Standing> standings(EventYear year) {
        List<Standing> standings = standings(year.year());
        standings.add(softening(year.softeningMarginKelvin()));
        return standings;
    }

    /** The verdict on a year. */
    public Verdict verdict(HandleYear year) {
        return answer(year, standings(year));
    }

    /** The verdict on a bonded knife. */
    public Verdict verdict(FitYear year) {
        return answer(year.whole(), standings(year));
    }

    /** The verdict on a stack of parts. */
    public Verdict verdict(StackYear year) {
        return answer(year.whole(), standings(year));
    }

    /** Where nothing is known of a material itself, the verdict on its class, unless the band spans three classes. */
    private Verdict answer(HandleYear year, List<Standing> standings) {
        int least = standings.stream().mapToInt(Standing::leastIndex).max().orElseThrow();
        int most = standings.stream().mapToInt(Standing::mostIndex).max().orElseThrow();
        boolean open = year.grounds().evidence() == Evidence.UNKNOWN && most - least + 1 >= TOO_MANY_CLASSES;
        return open ? Verdict.UNKNOWN : verdict(standings);
    }

    /** How often the verdict on a year holds. */
    public Likelihood likelihood(HandleYear year) {
        return likelihood(
                standings(year),
                year.grounds().samples().stream().map(this::standings).toList());
    }

    /** How often the verdict on a bonded knife holds. */
    public Likelihood likelihood(FitYear year) {
        return likelihood(
                standings(year), year.samples().stream().map(this::standings).toList());
    }

    /** How often the verdict on a stack holds. */
    public Likelihood likelihood(StackYear year) {
        return likelihood(
                standings(year), year.samples().stream().map(this::standings).toList());
    }

    private Likelihood likelihood(List<Standing> value, List<List<Standing>> samples) {
        if (samples.isEmpty()) {
            return Likelihood.NONE;
        }
        Verdict stated = verdict(value);
        if (Stream.concat(Stream.of(value), samples.stream()).anyMatch(year -> verdict(year) == Verdict.UNKNOWN)) {
            return Likelihood.open(samples.size());
        }
        boolean isGood = stated.compareTo(Verdict.CARE) <= 0;
        double all = samples.size();
        long holds = samples.stream()
                .mapToInt(sample -> verdict(sample).compareTo(stated))
                .filter(worse -> isGood ? worse <= 0 : worse >= 0)
                .count();
        List<Likelihood.ClassShare> shares = new ArrayList<>();
        for (int i = 0; i < classes.size(); i++) {
            int index = i;
            long keeps = samples.stream()
                    .filter(sample -> sample.stream().allMatch(standing -> standing.index() <= index))
                    .count();
            shares.add(new Likelihood.ClassShare(classes.get(i), keeps / all));
        }
        boolean open = samples.stream().flatMap(List::stream).anyMatch(Standing::isOpen);
        return new Likelihood(samples.size(), OptionalDouble.of(holds / all), open ? List.of() : shares);
    }

    /** The verdict by the worst of all; a limit that could not be judged may be anything up to a change of the build. */
    private Verdict verdict(List<Standing> standings) {
        if (standings.stream().anyMatch(standing -> standing.index() > CHANGE_CLASS)) {
            return Verdict.REFUSE;
        }
        int worst = standings.stream().mapToInt(this::forWork).max().orElseThrow();
        if (worst >= CHANGE_CLASS) {
            return Verdict.CHANGE;
        }
        if (standings.stream().anyMatch(Standing::isOpen)) {
            return Verdict.UNKNOWN;
        }
        return worst == CARE_CLASS ? Verdict.CARE : Verdict.STAYS;
    }

    /** Class as the work asks for it; what breaks or softens is no matter of fussiness. */
    private int forWork(Standing standing) {
        boolean moves = !standing.kind().isUse() && standing.kind() != Reason.Kind.SOFTENING;
        return moves ? standing.index() - shift : standing.index();
    }

    /** Everything that does not keep the strictest class, the deciding one first. */
    public List<Reason> reasons(HandleYear year) {
        return reasons(standings(year));
    }

    /** Everything about a bonded knife that does not keep the strictest class, the deciding one first. */
    public List<Reason> reasons(FitYear year) {
        return reasons(standings(year));
    }

    /** Everything about a stack that does not keep the strictest class, the deciding one first. */
    public List<Reason> reasons(StackYear year) {
        return reasons(standings(year));
    }

    private List<Reason> reasons(List<Standing> standings) {
        return standings.stream()
                .filter(standing -> standing.isOpen() || standing.index() > 0)
                .sorted(Comparator.comparingInt(Standing::weight)
                        .thenComparingDouble(Standing::use)
                        .reversed())
                .map(this::reason)
                .toList();
    }

    /** The larger use of a stack's limits: what changes of its build are ranked by. */
    public double seasonalUse(StackYear year) {
        return standings(year).stream().mapToDouble(Standing::use).max().orElseThrow();
    }

    /** The largest of all uses of a bonded knife's limits: what changes of its build are ranked by. */
    public double seasonalUse(FitYear year) {
        return standings(year).stream().mapToDouble(Standing::use).max().orElseThrow();
    }

    /** Ranks materials: by the largest use of the seasonal limits, those with a limit that could not be judged last. */
    public Comparator<HandleYear> bestFirst() {
        return Comparator.comparing(
                        (HandleYear year) -> standings(year).stream().anyMatch(Standing::isOpen))
                .thenComparingDouble(this::seasonalUse);
    }

    /** The same with events. */
    public Comparator<EventYear> bestFirstWithEvents() {
        return Comparator.comparing((EventYear year) -> standings(year).stream().anyMatch(Standing::isOpen))
                .thenComparingDouble(this::seasonalUse);
    }

    /** The largest movement over its seasonal limit: what materials are ranked by. */
    public double seasonalUse(HandleYear year) {
        return standings(year).stream().mapToDouble(Standing::use).max().orElseThrow();
    }

    private Reason reason(Standing standing) {
        boolean keeps = standing.index() < classes.size();
        FitLimits heldTo = classes.get(Math.min(standing.index(), classes.size() - 1));
        return new Reason(standing.kind(), standing.size(), heldTo, keeps);
    }

    private List<Standing> standings(FitYear year) {
        List<Standing> standings = standings(year.whole());
        standings.add(softening(year.softeningMarginKelvin()));
        standings.addAll(held(year.whole(), year.glueUse(), larger(year.middleUse(), year.tearUse())));
        return standings;
    }

    /** What glue and scale bear; where one of them gives way the ends count as loose. */
    private List<Standing> held(HandleYear year, Band glueUse, Optional<Band> splitUse) {
        List<Standing> standings = new ArrayList<>();
        standings.add(use(Reason.Kind.GLUE_LINE, Optional.of(glueUse)));
        standings.add(use(Reason.Kind.SCALE_SPLIT, splitUse));
        if (glueUse.value() > 1 || splitUse.filter(use -> use.value() > 1).isPresent()) {
            standings.add(standing(
                    Reason.Kind.END_LETS_GO,
                    year.ends().lengthMismatch().times(0.5),
                    limits -> limits.gap().metres()));
        }
        return standings;
    }

    private List<Standing> standings(StackYear year) {
        List<Standing> standings = new ArrayList<>();
        standings.add(standing(
                Reason.Kind.STACK_GAP, year.gap(), limits -> limits.gap().metres()));
        standings.add(standing(
                Reason.Kind.STACK_SET, year.set(), limits -> limits.gap().metres()));
        return standings;
    }

    /** The larger by its value; not known where either is not. */
    private static Optional<Band> larger(Optional<Band> one, Optional<Band> other) {
        return one.flatMap(a -> other.map(b -> a.value() >= b.value() ? a : b));
    }

    private static Standing softening(Band margin) {
        int index = margin.value() < 0 ? CHANGE_CLASS : margin.value() < NARROW_MARGIN_KELVIN ? CARE_CLASS : 0;
        return new Standing(
                Reason.Kind.SOFTENING,
                Optional.of(margin),
                index,
                index,
                index,
                Math.max(0, 1 - margin.value() / (2 * NARROW_MARGIN_KELVIN)));
    }

    private List<Standing> standings(HandleYear year) {
        List<Standing> standings = new ArrayList<>();
        standings.add(standing(
                Reason.Kind.EDGE_SHY,
                year.edge().bonded().shy(),
                limits -> limits.shy().metres()));
        standings.add(standing(
                Reason.Kind.EDGE_PROUD,
                year.edge().bonded().proud(),
                limits -> limits.proud().metres()));
        standings.add(standing(
                Reason.Kind.PIN_HEAD_PROUD,
                year.pins().headProud(),
                limits -> limits.pinHead().metres()));
        standings.add(standing(
                Reason.Kind.PIN_HEAD_SUNK,
                year.pins().headSunk(),
                limits -> limits.proud().metres()));
        standings.add(standing(
                Reason.Kind.PIN_GAP, year.pins().gap(), limits -> limits.gap().metres()));
        standings.add(standing(
                Reason.Kind.END_GAP,
                year.ends().shortBy(),
                limits -> limits.gap().metres()));
        standings.add(standing(
                Reason.Kind.END_PROUD,
                year.ends().longBy(),
                limits -> limits.proud().metres()));
        standings.add(use(Reason.Kind.PIN_CRACK, year.pins().crackUse()));
        standings.add(standing(
                Reason.Kind.RIDGE,
                year.joint().ridge(),
                limits -> limits.pinHead().metres()));
        year.joint().use().ifPresent(use -> standings.add(use(Reason.Kind.PARTS_JOINT, Optional.of(use))));
        year.load().ifPresent(load -> standings.addAll(held(year, load.glueUse(), load.splitUse())));
        return standings;
    }

    private Standing standing(Reason.Kind kind, Band size, Function<FitLimits, Double> limit) {
        return new Standing(
                kind,
                Optional.of(size),
                index(size.low(), limit),
                index(size.value(), limit),
                index(size.high(), limit),
                size.value() / limit.apply(classes.get(CARE_CLASS)));
    }

    private int index(double size, Function<FitLimits, Double> limit) {
        int index = 0;
        while (index < classes.size() && size > limit.apply(classes.get(index))) {
            index++;
        }
        return index;
    }

    private static Standing use(Reason.Kind kind, Optional<Band> use) {
        return use.map(known -> new Standing(
                        kind, use, index(known.low()), index(known.value()), index(known.high()), known.value()))
                .orElseGet(() -> new Standing(kind, use, 0, 0, CHANGE_CLASS, 0));
    }

    private static int index(double use) {
        return use > 1 ? CHANGE_CLASS : use > CARE_CRACK_USE ? CARE_CLASS : 0;
    }

    /**
     * Where one movement stands.
     *
     * @param leastIndex as {@code index}, for the low end of a movement
     * @param size how far; empty where it could not be judged
     * @param index strictest class kept, the number of classes where none is
     * @param mostIndex as {@code index}, for the high end of a movement
     * @param use size over the seasonal limit
     */
    private record Standing(
            Reason.Kind kind, Optional<Band> size, int leastIndex, int index, int mostIndex, double use) {

        /** True where the strength is not known that it would be held against. */
        boolean isOpen() {
            return size.isEmpty();
        }

        /** What is open comes after what asks for a change and before what asks for care, as it does in the verdict. */
        int weight() {
            return isOpen() ? 2 * CHANGE_CLASS - 1 : 2 * index;
        }
    }
}
