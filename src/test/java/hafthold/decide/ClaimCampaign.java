package hafthold.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.Event;
import hafthold.simulate.Cause;
import hafthold.simulate.ReturnEngine;
import hafthold.simulate.ReturnSample;
import hafthold.simulate.Sampling;
import hafthold.table.EventTable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How often a claim is judged rightly: invented knives, each drawn with other figures, measured with chance errors and
 * judged as the command judges, with events. Takes half an hour: {@code mvn -Pcampaign test}. What is counted goes to
 * {@code target/campaign}, and from there into accuracy.md.
 */
class ClaimCampaign {
    private static final double ERROR = 0.03;
    private static final int SAMPLES = 200;
    private static final int KNIVES = 60;

    /** Knives of each stock and home: 128 of all. */
    private static final int BOTH_OFF = 8;

    private static final Path COUNTED = Path.of("target", "campaign");
    private static final List<Event> EVENTS = EventTable.read(FitOrders.TABLES).all();

    /** Nobody's knife may be blamed on the wrong one more often than one time in twenty. */
    @ParameterizedTest
    @CsvSource({
        "WEATHER, true",
        "WEATHER, false",
        "FINISH, true",
        "FINISH, false",
        "PLACE, true",
        "PLACE, false",
        "FINISH_AND_PLACE, true",
        "FINISH_AND_PLACE, false",
        "USE, true"
    })
    void blamesTheRightOneOrNobody(Cause.Kind kind, boolean alsoAtBench) throws IOException {
        Map<ClaimVerdict, Integer> counts = new EnumMap<>(ClaimVerdict.class);
        List<ReturnSample> knives = knives(kind, alsoAtBench);
        for (ReturnSample knife : knives) {
            counts.merge(verdict(knife, alsoAtBench), 1, Integer::sum);
        }
        List<String> cells = new ArrayList<>(List.of(kind.name(), alsoAtBench ? "home and bench" : "home"));
        for (ClaimVerdict verdict : ClaimVerdict.values()) {
            cells.add(verdict + " " + counts.getOrDefault(verdict, 0));
        }
        Files.createDirectories(COUNTED);
        Files.writeString(
                COUNTED.resolve("claim-" + kind + "-" + alsoAtBench + ".txt"), String.join(", ", cells) + "\n");
        long wrong = counts.entrySet().stream()
                .filter(entry -> entry.getKey() == ClaimVerdict.FINISH
                        || entry.getKey() == ClaimVerdict.PLACE
                        || entry.getKey() == ClaimVerdict.USE)
                .filter(entry -> !entry.getKey().name().equals(kind.name()) && kind != Cause.Kind.FINISH_AND_PLACE)
                .mapToLong(Map.Entry::getValue)
                .sum();
        assertTrue(wrong <= KNIVES / 20, cells::toString);
    }

    /**
     * Stock that was 10 to 25 points too wet and a home 8 to 20 points too dry at once, each piece drawn with other figures:
     * neither is said to be all of it, whatever the readings show of the other.
     */
    @Test
    void neverBlamesOneSurelyWhereTwoActed() throws IOException {
        Map<String, Integer> counts = new TreeMap<>();
        for (int made : new int[] {60, 65, 70, 75}) {
            for (int home : new int[] {-8, -12, -16, -20}) {
                for (ReturnSample knife : ClaimOrders.bothOff(made, home, ERROR, BOTH_OFF)) {
                    Claim claim = judged(knife, true);
                    counts.merge(claim.verdict() + (claim.mayBeInPart() ? " in part" : ""), 1, Integer::sum);
                }
            }
        }
        Files.createDirectories(COUNTED);
        Files.writeString(COUNTED.resolve("claim-both-off.txt"), counts + "\n");
        assertEquals(0, counts.getOrDefault("FINISH", 0) + counts.getOrDefault("PLACE", 0), counts::toString);
        assertEquals(0, counts.getOrDefault("USE", 0), counts::toString);
    }

    /** Knives of which one cause is off; of use, each event in turn, lately and long ago by turns. */
    private static List<ReturnSample> knives(Cause.Kind kind, boolean alsoAtBench) {
        double[] any = alsoAtBench ? new double[2] : new double[1];
        ReturnEngine engine = new ReturnEngine(
                ClaimOrders.walnut(50),
                ClaimOrders.home(0),
                ClaimOrders.history(ERROR, alsoAtBench, any),
                new Sampling(KNIVES, 5));
        if (kind != Cause.Kind.USE) {
            return engine.samples(new Cause(kind, ""), Optional.empty());
        }
        List<ReturnSample> knives = new ArrayList<>();
        for (int i = 0; i < EVENTS.size(); i++) {
            Event event = EVENTS.get(i);
            List<ReturnSample> drawn = engine.samples(new Cause(kind, event.id(), i % 2 == 1), Optional.of(event));
            for (int knife = i; knife < KNIVES; knife += EVENTS.size()) {
                knives.add(drawn.get(knife));
            }
        }
        return knives;
    }

    private static ClaimVerdict verdict(ReturnSample knife, boolean alsoAtBench) {
        return judged(knife, alsoAtBench).verdict();
    }

    private static Claim judged(ReturnSample knife, boolean alsoAtBench) {
        Random chance = new Random(100 + knife.number());
        double[] read = knife.steps().clone();
        for (int i = 0; i < read.length; i++) {
            read[i] = 1000 * read[i] + chance.nextGaussian() * ERROR / 1.645;
        }
        return ClaimOrders.judge(ClaimOrders.history(ERROR, alsoAtBench, read), SAMPLES, EVENTS);
    }
}
