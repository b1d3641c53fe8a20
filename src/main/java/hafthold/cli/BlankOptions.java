package hafthold.cli;

import hafthold.knife.BenchStock;
import hafthold.knife.Blank;
import hafthold.knife.UnfitBuildException;
import hafthold.material.Family;
import hafthold.material.Material;
import hafthold.material.ScaleMaterial;
import hafthold.quantity.Length;
import hafthold.quantity.MoistureContent;
import hafthold.simulate.HandleEngine;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** How the stock is kept until scales are made of it. */
final class BlankOptions {
    private static final String OPEN = "--blank-open";
    private static final String READING = "--blank-moisture";
    private static final double SATURATED = 1;
    private static final double ROOM_CELSIUS = 20;

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

    @Option(
            names = READING,
            paramLabel = "MOISTURE",
            description = "what your moisture meter reads of the stock today, such as \"9 %%\", or what it holds by"
                    + " weighing and drying; taken to be off by up to a point. Without it the stock holds what your"
                    + " workshop's air makes of it")
    private MoistureContent reading;

    @Option(
            names = "--glued-days",
            paramLabel = "DAYS",
            defaultValue = "0",
            description =
                    "days that a scale lies glued in your workshop before it is sanded flush, 0 to 180: the glue's"
                            + " zero is glue-up, that of the steps is final sanding (default: ${DEFAULT-VALUE}, the same week)")
    private int gluedDays;

    /** The stock that was described. */
    BenchStock stock() {
        try {
            return new BenchStock(blank(), Optional.ofNullable(reading), gluedDays);
        } catch (UnfitBuildException e) {
            throw new WrongUsageException((e.key().equals("moisture") ? READING : "--glued-days") + ": " + e.value()
                    + " is not right: expected " + e.expectation());
        }
    }

    /** Rejects a reading of more than one material, or of one that cannot hold it. */
    void requireReadable(List<ScaleMaterial> materials) {
        if (reading == null) {
            return;
        }
        if (materials.stream().distinct().count() > 1) {
            throw new WrongUsageException(
                    READING + " is the reading of one stock: name one --material with it, in as many cuts as you like");
        }
        double most = mostFraction(materials.get(0));
        if (most == 0) {
            throw new WrongUsageException(READING + ": " + materials.get(0).name()
                    + " takes up no water, so that a meter tells nothing of it; leave the option away");
        }
        if (reading.fraction() > most) {
            throw new WrongUsageException(String.format(
                    Locale.ROOT,
                    "%s: %s holds %.1f %% at most, not %s %%: meters are made for plain wood; weigh it, or leave the option"
                            + " away",
                    READING,
                    materials.get(0).name(),
                    100 * most,
                    reading.percent()));
        }
    }

    /** Most water that it may hold; wood may be wetter than air makes it. */
    private static double mostFraction(ScaleMaterial material) {
        Material leading =
                HandleEngine.partsOf(material, material.usualCut()).get(0).material();
        return leading.water()
                .map(water -> leading.family() == Family.WOOD
                        ? Double.POSITIVE_INFINITY
                        : water.isotherm().moistureFraction(SATURATED, ROOM_CELSIUS))
                .orElse(0.0);
    }

    private Blank blank() {
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
