package hafthold.cli;

import hafthold.decide.PlaceComparison.Candidate;
import hafthold.material.Cut;
import hafthold.material.ScaleMaterial;
import hafthold.table.MaterialLibrary;
import hafthold.table.MaterialRow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Which materials, and how they are cut. */
final class RackOptions {
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
            description = "flat, rift, quarter, burl or cross, several separated by commas; counts for wood only"
                    + " (default: as it is usually sold)")
    private List<Cut> cuts = List.of();

    /** Every material in every cut asked for; sheet and cast goods once. */
    List<Candidate> candidates(MaterialLibrary library) {
        List<String> ids = materials.isEmpty()
                ? library.listed("scale").stream().map(MaterialRow::id).toList()
                : materials.stream().distinct().toList();
        List<Candidate> candidates = new ArrayList<>();
        for (String id : ids) {
            ScaleMaterial material = library.find(id);
            if (material.usualCut() == Cut.NONE || cuts.isEmpty()) {
                candidates.add(new Candidate(material, material.usualCut()));
            } else {
                cuts.stream().distinct().forEach(cut -> candidates.add(new Candidate(material, cut)));
            }
        }
        return candidates;
    }

    /** The first material that was named, if any. */
    Optional<String> firstNamed(MaterialLibrary library) {
        return materials.stream().findFirst().map(id -> library.find(id).id());
    }
}
