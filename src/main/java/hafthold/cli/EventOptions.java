package hafthold.cli;

import hafthold.air.Event;
import hafthold.air.EventSchedule;
import hafthold.simulate.Destination;
import hafthold.source.Finding;
import hafthold.source.Message;
import hafthold.table.EventTable;
import hafthold.table.EventWords;
import hafthold.table.TableSet;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;

/** What happens to the knife besides the weather. */
final class EventOptions {
    private static final int MOST_YEARS = 20;

    @Option(
            names = "--event",
            paramLabel = "EVENT",
            description = "what happens besides the weather, in words: EVENT [from DATE [TIME]] [every N min|h|d|weeks]"
                    + " [N times], such as \"dishwasher from 2026-02-10 20:00 every 7 d\"; may be given several times."
                    + " Without a date heat is taken in the hottest week of the outdoor year, frost in the coldest, all"
                    + " else on 15 January;"
                    + " 'hafthold materials --events' lists ids")
    private List<String> typed = List.of();

    @Option(
            names = "--event-years",
            paramLabel = "N",
            defaultValue = "1",
            description =
                    "repeat the events for so many years in a row, to see what builds up (default: ${DEFAULT-VALUE})")
    private int years;

    /** What was asked for; no events where nothing was. */
    EventSchedule schedule(TableSet tables, Destination destination) {
        if (years < 1 || years > MOST_YEARS) {
            throw new WrongUsageException("--event-years takes 1 to " + MOST_YEARS + ", got " + years);
        }
        if (typed.isEmpty()) {
            return EventSchedule.none();
        }
        EventTable events = EventTable.read(tables);
        return new EventSchedule(
                typed.stream()
                        .map(words -> EventWords.read(words, events, destination.outdoors()))
                        .toList(),
                years);
    }

    /** The rules of the events, what the sums leave out, and what can hurt. */
    static List<Finding> findings(EventSchedule schedule) {
        List<Finding> findings = new ArrayList<>();
        findings.addAll(schedule.taken());
        schedule.events().forEach(event -> findings.add(event.finding()));
        if (schedule.isEmpty()) {
            return findings;
        }
        findings.add(new Finding(Finding.Kind.ESTIMATE, "events", Message.of("note.events")));
        if (schedule.events().stream().anyMatch(Event::isWet)) {
            findings.add(new Finding(Finding.Kind.ESTIMATE, "water", Message.of("note.events.water")));
            findings.add(new Finding(Finding.Kind.CAUTION, "water", Message.of("note.events.wet")));
        }
        if (schedule.events().stream().anyMatch(Event::isHot)) {
            findings.add(new Finding(Finding.Kind.CAUTION, "heat", Message.of("note.events.heat")));
        }
        return findings;
    }

    /** Events are told of one place; on the way there they are not. */
    static void requireOnePlace(EventSchedule schedule, Destination destination) {
        if (!schedule.isEmpty() && !destination.repeatsFromStart()) {
            throw new WrongUsageException(
                    "--event and --stays do not go together, for events are worked out in one place:"
                            + " name it with --place or --climate and its --setting, instead of --stays");
        }
    }

    /** What can hurt, of these. */
    static List<Finding> cautions(EventSchedule schedule) {
        return findings(schedule).stream()
                .filter(finding -> finding.kind() == Finding.Kind.CAUTION)
                .toList();
    }
}
