package hafthold.report;

import hafthold.decide.CauseChance;
import hafthold.decide.Claim;
import hafthold.decide.ClaimVerdict;
import hafthold.knife.MeasuredStep;
import hafthold.quantity.Band;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * What to write to the customer: a short paragraph without a word of the workshop.
 *
 * @param style language and units
 * @param claim the knife, judged
 */
record ClaimForCustomer(BenchStyle style, Claim claim) {
    private static final Set<String> HOT = Set.of("dishwasher", "hot-car", "dashboard", "radiator");
    private static final Set<String> WET = Set.of("hand-wash", "soak", "rain-day", "wet-sheath");

    /** The paragraph. */
    String words() {
        List<String> said = new ArrayList<>(claim.isFlush() ? List.of(say("flush")) : List.of(found(), why()));
        if (!claim.isFlush() && !claim.isStill() && claim.retrue().restDays().isPresent()) {
            said.add(say("wait"));
        }
        said.add(say("loose"));
        return String.join(" ", said);
    }

    private MeasuredStep main() {
        return claim.main().measured();
    }

    private String found() {
        if (!main().point().isEdge() || main().step().metres() == 0 || claim.verdict() == ClaimVerdict.TOO_COARSE) {
            return say("other");
        }
        double metres = main().step().metres();
        return say(
                metres < 0 ? "shy" : "proud",
                "size",
                new CardLength(Band.exact(Math.abs(metres)), style.units(), style.words()).words());
    }

    private String why() {
        ClaimWords words = new ClaimWords(style, claim);
        String town = style.tell(claim.home().name());
        return switch (claim.verdict()) {
            case WEATHER -> say(weather(), "town", town);
            case FINISH -> say("finish");
            case PLACE -> place(words, town);
            case FINISH_AND_PLACE -> say("both", "town", town);
            case FINISH_AND_USE -> String.join(" ", say("finish"), say("also"), use());
            case PLACE_AND_USE -> String.join(" ", place(words, town), say("also"), use());
            case USE -> use();
            case OPEN -> say(isHere() ? "open.here" : "open");
            case TOO_COARSE -> say(isHere() ? "too-coarse.here" : "too-coarse");
            case NOT_EXPLAINED -> say(isHere() ? "not-explained.here" : "not-explained");
        };
    }

    private String place(ClaimWords words, String town) {
        return say(words.drierPlace() ? "place.drier" : "place.damper", "town", town);
    }

    private String use() {
        return say(isLikely(HOT) ? "use.hot" : isLikely(WET) ? "use.wet" : "use.other");
    }

    /** Whether the knife is back already. */
    private boolean isHere() {
        return claim.history().measured().stream().anyMatch(claim.history()::isAtBench);
    }

    /** Air that is dry or damp all year round leaves the edge where it is; else it comes and goes. */
    private String weather() {
        boolean shy = main().step().metres() < 0 == main().point().risesWithDamp();
        double half = main().step().metres() / 2;
        boolean stays = main().point().isEdge()
                && claim.course().stream().allMatch(day -> shy ? day.value() < half : day.value() > half);
        return (stays ? "weather.stays." : "weather.") + (shy ? "shy" : "proud");
    }

    private boolean isLikely(Set<String> events) {
        return claim.events().stream()
                .findFirst()
                .map(CauseChance::cause)
                .filter(cause -> events.contains(cause.event()))
                .isPresent();
    }

    private String say(String key, String... filling) {
        return style.words().say("claim.customer." + key, filling);
    }
}
