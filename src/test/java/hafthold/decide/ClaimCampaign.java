package hafthold.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.decide.ClaimTrials.Truth;
import hafthold.simulate.Cause;
import hafthold.simulate.Cause.Kind;
import hafthold.simulate.ReturnEngine;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How often a claim is judged rightly: invented knives, each drawn with other figures, measured with chance errors and
 * judged as the command judges, with events: {@code mvn -Pcampaign -Dtest=ClaimCampaign test}. What is counted goes to
 * {@code target/campaign}, and from there into accuracy.md.
 */
class ClaimCampaign {
    private static final int KNIVES = 120;
    private static final int MIXED = 1000;
    /** Knives of each stock and home: 128 of all. */
    private static final int BOTH_OFF = 8;

    private static final Path COUNTED = Path.of("target", "campaign");

    /** Nobody's knife may be blamed on the wrong one more often than one time in twenty. */
    @ParameterizedTest
    @CsvSource({
        "WEATHER, true",
        "WEATHER, false",
        "FINISH, true",
        "FINISH, false",
        "PLACE, true",
        "PLACE, false",
        "USE, true",
        "USE, false",
        "FINISH+PLACE, true",
        "FINISH+PLACE, false",
        "FINISH+USE, true",
        "FINISH+USE, false",
        "PLACE+USE, true"
    })
    void blamesTheRightOneOrNobody(String kinds, boolean alsoAtBench) throws IOException {
        Set<Kind> acted = EnumSet.noneOf(Kind.class);
        for (Kind kind : List.of(Kind.FINISH, Kind.PLACE, Kind.USE)) {
            if (kinds.contains(kind.name())) {
                acted.add(kind);
            }
        }
        ClaimTrials trials = new ClaimTrials(alsoAtBench);
        ReturnEngine truths = trials.truths(ClaimOrders.walnut(50), 0, KNIVES);
        ClaimTally tally = trials.judged(ClaimTrials.far(truths, acted, KNIVES));
        counted("claim-" + kinds + (alsoAtBench ? "-bench" : "-home"), tally);
        assertTrue(tally.wrong() <= KNIVES / 20, tally::toString);
    }

    /**
     * Knives as they come, causes as often at work as the judge takes them to be: what is named is at work as often as the
     * verdict says, and the same of wood at half and at twice the speed of the tables, all of it, where boards were seen to
     * dry at half (see {@code DryingSpeed}).
     */
    @ParameterizedTest
    @CsvSource({"true, 1", "false, 1", "true, 0.5", "false, 0.5", "true, 2"})
    void whatIsSaidToBeCertainIs(boolean alsoAtBench, double speed) throws IOException {
        ClaimTrials trials = new ClaimTrials(alsoAtBench);
        ReturnEngine truths =
                trials.truths(speed == 1 ? ClaimOrders.walnut(50) : ClaimOrders.walnut(50, speed), 0, MIXED);
        ClaimTally tally = trials.judged(ClaimTrials.mixed(truths, MIXED));
        counted("claim-mixed-" + speed + (alsoAtBench ? "-bench" : "-home"), tally);
        assertTrue(tally.wrongAndAsGoodAsCertain() <= 1 + 0.05 * tally.asGoodAsCertain(), tally::toString);
        double chance = 2 * Math.sqrt(tally.foretoldWrong() + 1);
        assertTrue(tally.wrong() <= tally.foretoldWrong() + chance, tally::toString);
    }

    /**
     * Stock that was 10 to 25 points too wet and a home 8 to 20 points too dry at once, each piece drawn with other figures:
     * neither is said to be all of it, whatever the readings show of the other.
     */
    @Test
    void neverBlamesOneSurelyWhereTwoActed() throws IOException {
        ClaimTrials trials = new ClaimTrials(true);
        List<Truth> truths = new ArrayList<>();
        for (int made : new int[] {60, 65, 70, 75}) {
            for (int home : new int[] {-8, -12, -16, -20}) {
                trials.truths(ClaimOrders.walnut(made), home, 30)
                        .samples(Cause.WEATHER, Optional.empty())
                        .subList(0, BOTH_OFF)
                        .forEach(knife -> truths.add(new Truth(EnumSet.of(Kind.FINISH, Kind.PLACE), knife.steps())));
            }
        }
        ClaimTally tally = trials.judged(truths);
        counted("claim-both-off", tally);
        assertEquals(0, tally.tooFew(), tally::toString);
        assertEquals(0, tally.of(ClaimVerdict.USE), tally::toString);
    }

    /** Stock that was 10 to 25 points too wet or too dry, and each event of the table besides, lately and long ago. */
    @ParameterizedTest
    @CsvSource({"1", "-1"})
    void neverBlamesTheMakerAloneWhereSomethingHappenedToo(int side) throws IOException {
        ClaimTrials trials = new ClaimTrials(true);
        List<Truth> truths = new ArrayList<>();
        for (int points : new int[] {10, 15, 20, 25}) {
            ReturnEngine off = trials.truths(ClaimOrders.walnut(50 + side * points), 0, 4 * ClaimTrials.EVENTS.size());
            ClaimTrials.far(off, EnumSet.of(Kind.USE), 4 * ClaimTrials.EVENTS.size())
                    .forEach(knife -> truths.add(new Truth(EnumSet.of(Kind.FINISH, Kind.USE), knife.steps())));
        }
        ClaimTally tally = trials.judged(truths);
        counted("claim-event-on-" + (side > 0 ? "wet" : "dry"), tally);
        assertTrue(tally.wrong() <= truths.size() / 20, tally::toString);
    }

    private static void counted(String name, ClaimTally tally) throws IOException {
        Files.createDirectories(COUNTED);
        Files.writeString(COUNTED.resolve(name + ".txt"), tally + "\n");
    }
}
