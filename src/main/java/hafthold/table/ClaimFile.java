package hafthold.table;

import hafthold.knife.FullTangBuild;
import hafthold.knife.KnifeHistory;
import hafthold.knife.MeasuredStep;
import hafthold.knife.MeasuringPoint;
import hafthold.source.Finding;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A returned knife as its maker wrote it down: the tables of a build file, and what became of it since.
 *
 * @param build the knife; its findings are those of the whole file
 * @param history what became of it
 */
public record ClaimFile(BuildFile build, KnifeHistory history) {

    /**
     * Reads a file. Whether its ids are in the tables is not looked at.
     *
     * @throws InvalidTableException at the first fault, naming file, line, key, value and what would be right
     */
    public static ClaimFile read(Path path) {
        String file = path.toString();
        String text = TomlText.read(path);
        BuildFile.requireTables(file, text);
        List<Finding> findings = new ArrayList<>();
        TomlSection whole = TomlText.parse(file, text, findings);
        BuildFile build = BuildFile.of(whole, path.toAbsolutePath().getParent(), HistoryKeys.TABLES, findings);
        KnifeHistory history = HistoryKeys.read(whole, build.build().made());
        hasNone(build, history).ifPresent(point -> {
            throw whole.faultAt("measured", point.word(), "a point that this knife has; it has no " + thing(point));
        });
        return new ClaimFile(new BuildFile(build.build(), findings), history);
    }

    /** The first point that was measured on a part the knife does not have. */
    private static Optional<MeasuringPoint> hasNone(BuildFile read, KnifeHistory history) {
        return history.measured().stream()
                .map(MeasuredStep::point)
                .filter(point -> switch (point) {
                    case PIN_HEADS, PIN_GAP ->
                        read.build() instanceof FullTangBuild full
                                && full.pins().isEmpty();
                    case BOLSTER ->
                        read.build() instanceof FullTangBuild full
                                && full.bolsterId().isEmpty();
                    default -> false;
                })
                .findFirst();
    }

    private static String thing(MeasuringPoint point) {
        return point == MeasuringPoint.BOLSTER ? "bolster" : "pins";
    }

    /** A commented file that is accepted, invented. */
    public static String example() {
        return BuildFile.resource("returned.toml");
    }
}
