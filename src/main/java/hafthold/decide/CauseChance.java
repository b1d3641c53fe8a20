package hafthold.decide;

import hafthold.simulate.Cause;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A cause and how likely it is, given what was measured and how often such causes are thought to lie behind a return.
 *
 * @param cause the cause
 * @param before chance before anything was measured, a judgement
 * @param after chance afterwards
 * @param fits whether it explains every step by itself
 */
public record CauseChance(Cause cause, double before, double after, boolean fits) {

    /** Every event by itself, alone or with stock or home, the likeliest first. */
    static List<CauseChance> events(List<CauseChance> chances) {
        Map<Cause, CauseChance> events = new LinkedHashMap<>();
        chances.stream().filter(chance -> chance.cause.hasEvent()).forEach(chance -> {
            Cause event = new Cause(Cause.Kind.USE, chance.cause.event(), chance.cause.longAgo());
            events.merge(event, new CauseChance(event, chance.before, chance.after, chance.fits), CauseChance::plus);
        });
        return events.values().stream()
                .sorted(Comparator.comparingDouble(CauseChance::after).reversed())
                .toList();
    }

    private CauseChance plus(CauseChance other) {
        return new CauseChance(cause, before + other.before, after + other.after, fits || other.fits);
    }
}
