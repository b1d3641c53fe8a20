package hafthold.cli;

import hafthold.knife.Blank;
import hafthold.quantity.Length;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** How the stock is kept until scales are made of it. */
final class BlankOptions {
    private static final String OPEN = "--blank-open";

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @Option(
            names = "--blank-thickness",
            paramLabel = "LENGTH",
            defaultValue = "25 mm",
            description =
                    "thickness of the stock as it is kept, away from the tang to come (default:" + " ${DEFAULT-VALUE})")
    private Length thickness;

    @Option(
            names = "--blank-width",
            paramLabel = "LENGTH",
            defaultValue = "40 mm",
            description = "its width (default: ${DEFAULT-VALUE})")
    private Length width;

    @Option(
            names = "--blank-length",
            paramLabel = "LENGTH",
            defaultValue = "130 mm",
            description = "its length along the handle to come (default: ${DEFAULT-VALUE})")
    private Length length;

    @Option(
            names = OPEN,
            paramLabel = "SIDES",
            split = ",",
            defaultValue = "faces,edges,ends",
            description =
                    "where air gets at it: faces (both; on stickers) or face (one; it lies on a bench), edges, and"
                            + " ends unless they are waxed, separated by commas (default: ${DEFAULT-VALUE})")
    private List<String> open = List.of();

    /** The blank that was described. */
    Blank blank() {
        Set<String> sides = new HashSet<>(open);
        Set<String> unknown = new HashSet<>(sides);
        unknown.removeAll(List.of("faces", "face", "edges", "ends"));
        boolean isTwice = sides.contains("faces") && sides.contains("face");
        boolean hasNoFace = !sides.contains("faces") && !sides.contains("face");
        if (!unknown.isEmpty() || isTwice || hasNoFace) {
            throw new WrongUsageException(
                    OPEN + " '" + String.join(",", open) + "': write faces (both are open) or face"
                            + " (one is), and edges and ends where they are open too, such as faces,edges");
        }
        try {
            return new Blank(
                    thickness,
                    width,
                    length,
                    new Blank.Open(sides.contains("faces"), sides.contains("edges"), sides.contains("ends")));
        } catch (IllegalArgumentException e) {
            throw new WrongUsageException(e.getMessage());
        }
    }

    /** Options that were left to their usual values, as they would be typed. */
    List<String> taken() {
        List<String> taken = new ArrayList<>();
        Stream.of("--blank-thickness", "--blank-width", "--blank-length", OPEN)
                .filter(name -> !spec.commandLine().getParseResult().hasMatchedOption(name))
                .forEach(name -> taken.add(name + " " + spec.findOption(name).defaultValue()));
        return taken;
    }
}
