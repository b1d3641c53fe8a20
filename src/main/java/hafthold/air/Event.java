package hafthold.air;

import hafthold.source.Figure;
import hafthold.source.Finding;
import java.util.List;
import java.util.Locale;

/**
 * What happens to a knife besides the weather, phase by phase.
 *
 * @param id kebab-case id, such as dishwasher
 * @param name name for people
 * @param phases one or more, in order
 */
public record Event(String id, String name, List<EventPhase> phases) {
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
        StringBuilder text = new StringBuilder();
        for (EventPhase phase : phases) {
            text.append(text.isEmpty() ? "" : ", then ").append(words(phase));
        }
        Figure weakest = phases.stream()
                .map(EventPhase::celsius)
                .reduce((a, b) -> a.evidence().compareTo(b.evidence()) >= 0 ? a : b)
                .orElseThrow();
        text.append(". Rests on: ")
                .append(weakest.locator().isEmpty() ? weakest.sourceKey() : weakest.locator())
                .append(" (")
                .append(weakest.evidence().word())
                .append(").");
        return new Finding(Finding.Kind.ESTIMATE, id, Character.toUpperCase(text.charAt(0)) + text.substring(1));
    }

    private static String words(EventPhase phase) {
        String time = phase.seconds() < 2 * HOUR
                ? String.format(Locale.ROOT, "%.0f min", phase.seconds() / 60)
                : phase.seconds() < 72 * HOUR
                        ? String.format(Locale.ROOT, "%.0f h", phase.seconds() / HOUR)
                        : String.format(Locale.ROOT, "%.0f days", phase.seconds() / (24 * HOUR));
        double value = phase.temperature().value();
        String warmth = switch (phase.counted()) {
            case OWN -> String.format(Locale.ROOT, "%.0f C", value);
            case KNIFE -> above(value, "the air about the knife");
            case OUTDOORS -> above(value, "the outdoor air");
        };
        String around;
        if (phase.around() instanceof EventPhase.Water) {
            around = "wet at ";
        } else if (phase.around() instanceof EventPhase.HeldHumidity air) {
            around = String.format(Locale.ROOT, "at %.0f %% humidity and ", 100 * air.fraction());
        } else if (phase.around() instanceof EventPhase.ClosedBag bag) {
            around = (bag.gelGrams() > 0
                            ? String.format(Locale.ROOT, "in a tight bag with %.0f g of dry gel", bag.gelGrams())
                            : bag.packHumidityFraction() > 0
                                    ? String.format(
                                            Locale.ROOT,
                                            "in a tight bag with a two-way pack of %.0f %%",
                                            100 * bag.packHumidityFraction())
                                    : "in a tight bag")
                    + " at ";
        } else {
            around = "in air that keeps its vapour at ";
        }
        return phase.ramp() ? time + " on the way to being " + around + warmth : time + " " + around + warmth;
    }

    private static String above(double kelvin, String air) {
        return kelvin == 0 ? "the temperature of " + air : String.format(Locale.ROOT, "%.0f K above %s", kelvin, air);
    }
}
