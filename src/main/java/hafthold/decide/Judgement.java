package hafthold.decide;

import hafthold.knife.FitLimits;
import hafthold.simulate.EventYear;
import hafthold.simulate.FitYear;
import hafthold.simulate.HandleYear;
import hafthold.simulate.StackYear;
import hafthold.source.Evidence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
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
 * <p>A stack that comes loose by a gap large enough to be told asks for care at least, for whatever work: a loose handle is
 * a hazard.
 *
 * <p>The value decides, not the band: it is the run with every input at its value. How much weight a verdict bears is
 * told beside it, as the share of sampled years that bear it out.
 *
 * <p>Of a material of which nothing is known the verdict is that on its stand-in, unless the ends of its band lie three
 * classes of work apart: then there is none. Nor is there one where the strength that a limit is held against is not
 * known, unless something else already asks for a change.
 */
public final class Judgement {
    private static final int TOO_MANY_CLASSES = 3;

    private static final int STAYS_CLASS = 1;

    private final List<FitLimits> classes;
    private final Standings standings;
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
        if (classes.size() != Standing.CHANGE_CLASS + 1) {
            throw new IllegalArgumentException(
                    "a judgement needs four classes of work, strictest first, got " + classes.size());
        }
        this.classes = List.copyOf(classes);
        this.standings = new Standings(this.classes);
        this.shift = staysClass - STAYS_CLASS;
    }

    /** The verdict on a year with events: heat counts as well. */
    public Verdict verdict(EventYear year) {
        return answer(year.year(), standings.of(year));
    }

    /** Everything about a year with events that does not keep the strictest class, the deciding one first. */
    public List<Reason> reasons(EventYear year) {
        return reasons(standings.of(year));
    }

    /** The largest of all uses of the limits in a year with events but for the heat of the glue: what materials are ranked by. */
    public double seasonalUse(EventYear year) {
        return standings.ofScale(year).stream().mapToDouble(Standing::use).max().orElseThrow();
    }

    /** The verdict on a year. */
    public Verdict verdict(HandleYear year) {
        return answer(year, standings.of(year));
    }

    /** The verdict on a bonded knife. */
    public Verdict verdict(FitYear year) {
        return answer(year.whole(), standings.of(year));
    }

    /** The verdict on a stack of parts. */
    public Verdict verdict(StackYear year) {
        return answer(year.whole(), standings.of(year));
    }

    /** Where nothing is known of a material itself, the verdict on its class, unless the band spans three classes. */
    private Verdict answer(HandleYear year, List<Standing> all) {
        int least = all.stream().mapToInt(Standing::leastIndex).max().orElseThrow();
        int most = all.stream().mapToInt(Standing::mostIndex).max().orElseThrow();
        boolean open = year.grounds().evidence() == Evidence.UNKNOWN && most - least + 1 >= TOO_MANY_CLASSES;
        return open ? Verdict.UNKNOWN : verdict(all);
    }

    /** How often the verdict on a year holds. */
    public Likelihood likelihood(HandleYear year) {
        return likelihood(standings.of(year), year.grounds().samples().stream().map(standings::of));
    }

    /** Share of the sampled years that ask for no change of the build; empty where that is not known. */
    OptionalDouble asksForNoChange(HandleYear year) {
        List<Verdict> samples = year.grounds().samples().stream()
                .map(standings::of)
                .map(this::verdict)
                .toList();
        return samples.contains(Verdict.UNKNOWN)
                ? OptionalDouble.empty()
                : samples.stream()
                        .mapToDouble(verdict -> verdict.compareTo(Verdict.CARE) <= 0 ? 1 : 0)
                        .average();
    }

    /** How often the verdict on a bonded knife holds. */
    public Likelihood likelihood(FitYear year) {
        return likelihood(standings.of(year), year.samples().stream().map(standings::of));
    }

    /** How often the verdict on a stack holds. */
    public Likelihood likelihood(StackYear year) {
        return likelihood(standings.of(year), year.samples().stream().map(standings::of));
    }

    private Likelihood likelihood(List<Standing> value, Stream<List<Standing>> sampled) {
        List<Outcome> samples = sampled.map(this::outcome).toList();
        if (samples.isEmpty()) {
            return Likelihood.NONE;
        }
        Verdict stated = verdict(value);
        if (stated == Verdict.UNKNOWN || samples.stream().anyMatch(sample -> sample.verdict == Verdict.UNKNOWN)) {
            return Likelihood.open(samples.size());
        }
        boolean isGood = stated.compareTo(Verdict.CARE) <= 0;
        double all = samples.size();
        long holds = samples.stream()
                .mapToInt(sample -> sample.verdict.compareTo(stated))
                .filter(worse -> isGood ? worse <= 0 : worse >= 0)
                .count();
        List<Likelihood.ClassShare> shares = new ArrayList<>();
        if (samples.stream().noneMatch(Outcome::isOpen)) {
            for (int i = 0; i < classes.size(); i++) {
                int index = i;
                long keeps =
                        samples.stream().filter(sample -> sample.index <= index).count();
                shares.add(new Likelihood.ClassShare(classes.get(i), keeps / all));
            }
        }
        return new Likelihood(samples.size(), OptionalDouble.of(holds / all), shares);
    }

    /**
     * What a sampled year comes to.
     *
     * @param index strictest class that all of it keeps, the number of classes where none is
     * @param isOpen whether a limit could not be judged
     */
    private record Outcome(Verdict verdict, int index, boolean isOpen) {}

    private Outcome outcome(List<Standing> all) {
        int index = 0;
        boolean isOpen = false;
        for (Standing standing : all) {
            index = Math.max(index, standing.index());
            isOpen |= standing.isOpen();
        }
        return new Outcome(verdict(all), index, isOpen);
    }

    /** The verdict by the worst of all; a limit that could not be judged may be anything up to a change of the build. */
    private Verdict verdict(List<Standing> all) {
        int worst = Integer.MIN_VALUE;
        boolean isRefused = false;
        boolean isOpen = false;
        for (Standing standing : all) {
            worst = Math.max(worst, forWork(standing));
            isRefused |= standing.index() > Standing.CHANGE_CLASS;
            isOpen |= standing.isOpen();
        }
        if (isRefused) {
            return Verdict.REFUSE;
        }
        if (worst >= Standing.CHANGE_CLASS) {
            return Verdict.CHANGE;
        }
        if (isOpen) {
            return Verdict.UNKNOWN;
        }
        return worst == Standing.CARE_CLASS ? Verdict.CARE : Verdict.STAYS;
    }

    /** Class as the work asks for it; what breaks or softens is no matter of fussiness. */
    private int forWork(Standing standing) {
        boolean moves = !standing.kind().isUse() && standing.kind() != Reason.Kind.SOFTENING;
        if (standing.kind() == Reason.Kind.STACK_GAP && standing.index() >= Standing.CARE_CLASS) {
            return Math.max(Standing.CARE_CLASS, standing.index() - shift);
        }
        return moves ? standing.index() - shift : standing.index();
    }

    /** Everything that does not keep the strictest class, the deciding one first. */
    public List<Reason> reasons(HandleYear year) {
        return reasons(standings.of(year));
    }

    /** Everything about a bonded knife that does not keep the strictest class, the deciding one first. */
    public List<Reason> reasons(FitYear year) {
        return reasons(standings.of(year));
    }

    /** Everything about a stack that does not keep the strictest class, the deciding one first. */
    public List<Reason> reasons(StackYear year) {
        return reasons(standings.of(year));
    }

    private List<Reason> reasons(List<Standing> all) {
        return all.stream()
                .filter(standing -> standing.isOpen() || standing.index() > 0)
                .sorted(Comparator.comparingInt(Standing::weight)
                        .thenComparingDouble(Standing::use)
                        .reversed())
                .map(standing -> standing.reason(classes, forWork(standing) >= Standing.CHANGE_CLASS))
                .toList();
    }

    /** The larger use of a stack's limits: what changes of its build are ranked by. */
    public double seasonalUse(StackYear year) {
        return standings.of(year).stream().mapToDouble(Standing::use).max().orElseThrow();
    }

    /** The largest of all uses of a bonded knife's limits: what changes of its build are ranked by. */
    public double seasonalUse(FitYear year) {
        return standings.of(year).stream().mapToDouble(Standing::use).max().orElseThrow();
    }

    /** Ranks materials: by the largest use of the seasonal limits, those with a limit that could not be judged last. */
    public Comparator<HandleYear> bestFirst() {
        return Comparator.comparing(
                        (HandleYear year) -> standings.of(year).stream().anyMatch(Standing::isOpen))
                .thenComparingDouble(this::seasonalUse);
    }

    /** The same with events. */
    public Comparator<EventYear> bestFirstWithEvents() {
        return Comparator.comparing(
                        (EventYear year) -> standings.of(year).stream().anyMatch(Standing::isOpen))
                .thenComparingDouble(this::seasonalUse);
    }

    /** The largest movement over its seasonal limit: what materials are ranked by. */
    public double seasonalUse(HandleYear year) {
        return standings.of(year).stream().mapToDouble(Standing::use).max().orElseThrow();
    }
}
