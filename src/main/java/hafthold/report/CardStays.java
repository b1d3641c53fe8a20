package hafthold.report;

import hafthold.report.CardSheet.Section;
import hafthold.simulate.StaySpan;
import java.util.List;
import java.util.Optional;

/**
 * What a card says of a knife that goes from place to place before it stays.
 *
 * @param handle the handle and its year
 */
record CardStays(CardHandle handle) {

    /** Whether the knife goes to more than one place. */
    boolean isGiven() {
        return !handle.year().stays().isEmpty();
    }

    /** The place it stays in; empty where it goes to one place only. */
    Optional<String> last() {
        List<StaySpan> stays = handle.year().stays();
        return stays.isEmpty()
                ? Optional.empty()
                : Optional.of(stays.get(stays.size() - 1).name());
    }

    /** The customer's number: day and place, size, and a thing as thick. */
    String worst() {
        StaySpan worst = StayWords.worst(handle.year());
        return say(
                "stays.worst." + handle.worst().side().word(),
                "date",
                wording().date(worst.worstOn()),
                "place",
                worst.name(),
                "size",
                handle.size().number(),
                "thing",
                handle.size().thing());
    }

    /** A line a stay: how long, and what it does there. */
    Section section() {
        return Section.of(
                "stays",
                say("stays.heading"),
                List.of(),
                handle.year().stays().stream().map(this::line).toList());
    }

    private String line(StaySpan stay) {
        String lowest = step(stay.lowestMetres());
        String highest = step(stay.highestMetres());
        String steps = lowest.equals(highest) ? lowest : say("stays.between", "lowest", lowest, "highest", highest);
        return stay.repeats()
                ? say("stays.from-then", "place", stay.name(), "steps", steps)
                : say("stays.until", "place", stay.name(), "date", wording().date(stay.to()), "steps", steps);
    }

    private String step(double metres) {
        CardLength size = CardLength.exact(Math.abs(metres), handle.order().units(), wording());
        return size.isNothing()
                ? say("stays.level")
                : say(metres < 0 ? "stays.steel" : "stays.handle", "size", size.number());
    }

    private Wording wording() {
        return handle.order().wording();
    }

    private String say(String key, String... filling) {
        return wording().say(key, filling);
    }
}
