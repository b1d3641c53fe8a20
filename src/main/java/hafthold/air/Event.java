package hafthold.air;

import hafthold.source.Evidence;
import hafthold.source.Finding;
import hafthold.source.Message;
import java.util.List;
import java.util.Map;

/**
 * What happens to a knife besides the weather, phase by phase.
 *
 * @param id kebab-case id, such as dishwasher
 * @param name name for people
 * @param basis what its temperatures rest on
 * @param phases one or more, in order
 */
public record Event(String id, Message name, Message basis, List<EventPhase> phases) {
    private static final double HOUR = 3600;
    private static final double HOT = 50;
    private static final double WARM_AIR = 25;

    /** Keeps its own copy. */
    public Event {
        phases = List.copyOf(phases);
        if (phases.isEmpty()) {
            throw new IllegalArgumentException("event " + id + " has no phase");
        }
    }

    /** How long all of it takes, seconds. */
    public double seconds() {
        return phases.stream().mapToDouble(EventPhase::seconds).sum();
    }

    /** True where liquid water touches the scale. */
    public boolean isWet() {
        return phases.stream().anyMatch(phase -> phase.around() instanceof EventPhase.Water);
    }

    /** True where it may bring more than 50 C to the handle, in outdoor air or rooms of 25 C where it adds to these. */
    public boolean isHot() {
        return phases.stream()
                .anyMatch(phase ->
                        phase.temperature().high() + (phase.counted() == EventPhase.Counted.OWN ? 0 : WARM_AIR) > HOT);
    }

    /** True where it holds the handle below freezing. */
    public boolean isFreezing() {
        return phases.stream()
                .anyMatch(phase -> phase.counted() == EventPhase.Counted.OWN
                        && phase.temperature().value() < 0);
    }

    /** The rule in one sentence, and how well it is founded. */
    public Finding finding() {
        Message rule =
                Message.list("phase.then", phases.stream().map(Event::words).toList());
        return new Finding(
                Finding.Kind.ESTIMATE,
                id,
                Message.of(
                        "note.event",
                        Map.of(
                                "phases",
                                rule,
                                "basis",
                                basis,
                                "evidence",
                                Message.of("evidence." + evidence().word()))));
    }

    private Evidence evidence() {
        return phases.stream()
                .map(phase -> phase.celsius().evidence())
                .reduce(Evidence::weaker)
                .orElseThrow();
    }

    private static Message words(EventPhase phase) {
        return Message.of(
                phase.ramp() ? "phase.ramp" : "phase.step",
                Map.of("time", time(phase.seconds()), "around", around(phase)));
    }

    private static Message time(double seconds) {
        if (seconds < 2 * HOUR) {
            return Message.of("phase.minutes", Map.of("count", Message.number(seconds / 60, 0)));
        }
        return seconds < 72 * HOUR
                ? Message.of("phase.hours", Map.of("count", Message.number(seconds / HOUR, 0)))
                : Message.of("phase.days", Map.of("count", Message.number(seconds / (24 * HOUR), 0)));
    }

    private static Message around(EventPhase phase) {
        Message warmth = warmth(phase);
        if (phase.around() instanceof EventPhase.Water) {
            return Message.of("phase.water", Map.of("warmth", warmth));
        }
        if (phase.around() instanceof EventPhase.HeldHumidity air) {
            return Message.of(
                    "phase.air", Map.of("humidity", Message.number(100 * air.fraction(), 0), "warmth", warmth));
        }
        if (phase.around() instanceof EventPhase.ClosedBag bag) {
            return Message.of("phase.bag", Map.of("bag", bag(bag), "warmth", warmth));
        }
        return Message.of("phase.vapour", Map.of("warmth", warmth));
    }

    private static Message bag(EventPhase.ClosedBag bag) {
        if (bag.gelGrams() > 0) {
            return Message.of("phase.bag.gel", Map.of("grams", Message.number(bag.gelGrams(), 0)));
        }
        return bag.packHumidityFraction() > 0
                ? Message.of("phase.bag.pack", Map.of("humidity", Message.number(100 * bag.packHumidityFraction(), 0)))
                : Message.of("phase.bag.empty");
    }

    private static Message warmth(EventPhase phase) {
        double value = phase.temperature().value();
        Map<String, Message> degrees = Map.of("degrees", Message.number(value, 0));
        return switch (phase.counted()) {
            case OWN -> Message.of("phase.own", degrees);
            case KNIFE -> value == 0 ? Message.of("phase.knife") : Message.of("phase.knife.above", degrees);
            case OUTDOORS -> value == 0 ? Message.of("phase.outdoors") : Message.of("phase.outdoors.above", degrees);
        };
    }
}
