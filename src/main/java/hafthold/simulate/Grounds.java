package hafthold.simulate;

import hafthold.source.Evidence;
import hafthold.source.Finding;
import java.util.List;

/**
 * What an answer rests on, and how sure it is.
 *
 * @param restsOn weakest figure that the answer hangs on
 * @param findings choices made for the user
 * @param drivers inputs by their part in the doubt about the edge, largest first
 * @param sampled see {@link #samples}
 */
public record Grounds(RestsOn restsOn, List<Finding> findings, List<Driver> drivers, Once<List<HandleYear>> sampled) {
    private static final Once<List<HandleYear>> NO_SAMPLES = Once.of(List.of());

    /** Keeps its own copies. */
    public Grounds {
        findings = List.copyOf(findings);
        drivers = List.copyOf(drivers);
    }

    /** Grounds of a year whose inputs were all at their value. */
    public Grounds(RestsOn restsOn, List<Finding> findings) {
        this(restsOn, findings, List.of(), NO_SAMPLES);
    }

    /** The same with the samples that the bands were read from. */
    public Grounds with(List<Driver> inputs, List<HandleYear> years) {
        return new Grounds(restsOn, findings, inputs, Once.of(years));
    }

    /** The same without the samples. */
    Grounds withoutSamples() {
        return new Grounds(restsOn, findings, drivers, NO_SAMPLES);
    }

    /**
     * The same year with every input drawn from its range, without days, one a sample; empty where only values were asked
     * for.
     */
    public List<HandleYear> samples() {
        return sampled.get();
    }

    /** How well the weakest figure that the answer hangs on is founded. */
    public Evidence evidence() {
        return restsOn.evidence();
    }
}
