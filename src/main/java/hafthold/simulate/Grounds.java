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
 * @param samples the same year with every input drawn from its range, without days, one a sample; empty where only
 *     values were asked for
 */
public record Grounds(RestsOn restsOn, List<Finding> findings, List<Driver> drivers, List<HandleYear> samples) {

    /** Keeps its own copies. */
    public Grounds {
        findings = List.copyOf(findings);
        drivers = List.copyOf(drivers);
        samples = List.copyOf(samples);
    }

    /** Grounds of a year whose inputs were all at their value. */
    public Grounds(RestsOn restsOn, List<Finding> findings) {
        this(restsOn, findings, List.of(), List.of());
    }

    /** The same with the samples that the bands were read from. */
    public Grounds with(List<Driver> inputs, List<HandleYear> years) {
        return new Grounds(restsOn, findings, inputs, years);
    }

    /** The same without the samples. */
    Grounds withoutSamples() {
        return new Grounds(restsOn, findings, drivers, List.of());
    }

    /** How well the weakest figure that the answer hangs on is founded. */
    public Evidence evidence() {
        return restsOn.evidence();
    }
}
