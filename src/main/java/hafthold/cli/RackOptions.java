package hafthold.cli;

import hafthold.decide.PlaceComparison.Candidate;
import hafthold.material.Cut;
import hafthold.material.ScaleMaterial;
import hafthold.table.MaterialLibrary;
import hafthold.table.MaterialRow;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Which materials, and how they are cut. */
final class RackOptions {
    private static final Map<String, String> OTHER_PARTS = Map.of(
            "steel", "a steel for the tang, which 'fit' takes as tang.steel",
            "pin", "for pins and bolsters, which 'fit' takes as the metal of a pin",
            "adhesive", "a glue, which 'fit' takes as glue.adhesive");

    @Option(
            names = "--material",
            paramLabel = "MATERIAL",
            split = ",",
            description = "ids, separated by commas; without it the whole rack. Any wood takes any treatment:"
                    + " walnut-black+lumen-resin. A wood that no table has takes the figures of its nearest class, or"
                    + " of the one you name: tropical-dense:bloodwood")
    private List<String> materials = List.of();

    @Option(
            names = "--cut",
            paramLabel = "CUT",
            split = ",",
            description =
                    "flat (plain-sawn), rift, quarter, burl or cross, several separated by commas; counts for wood only"
                            + " (default: as it is usually sold)")
    private List<Cut> cuts = List.of();

    /** Every material in every cut asked for; sheet and cast goods once. */
    List<Candidate> candidates(MaterialLibrary library) {
        List<Candidate> candidates = new ArrayList<>();
        for (ScaleMaterial material : materials.isEmpty() ? wholeRack(library) : named(library)) {
            if (material.usualCut() != Cut.NONE && cuts.contains(Cut.NONE)) {
                throw new WrongUsageException(
                        "wood always lies in some cut: --cut none is for sheet and cast goods; for " + material.id()
                                + " say flat, rift, quarter, burl or cross");
            }
            if (material.usualCut() == Cut.NONE || cuts.isEmpty()) {
                candidates.add(new Candidate(material, material.usualCut()));
            } else {
                cuts.stream().distinct().forEach(cut -> candidates.add(new Candidate(material, cut)));
            }
        }
        return candidates;
    }

    private static List<ScaleMaterial> wholeRack(MaterialLibrary library) {
        return library.listed("scale").parallelStream()
                .map(row -> library.find(row.id()))
                .toList();
    }

    private List<ScaleMaterial> named(MaterialLibrary library) {
        List<ScaleMaterial> named = new ArrayList<>();
        for (String id : materials.stream().distinct().toList()) {
            requireScale(library, id);
            named.add(library.find(id));
        }
        return named;
    }

    /** Refuses what is made of no scale: the steel of a tang, the metal of a pin, glue. */
    private static void requireScale(MaterialLibrary library, String id) {
        library.row(id).map(MaterialRow::role).filter(OTHER_PARTS::containsKey).ifPresent(role -> {
            throw new WrongUsageException(id + " is no scale material but " + OTHER_PARTS.get(role)
                    + "; 'hafthold materials' lists what scales are made of");
        });
    }

    /** The first material that was named, if any. */
    Optional<String> firstNamed(MaterialLibrary library) {
        return materials.stream().findFirst().map(id -> library.find(id).id());
    }
}
