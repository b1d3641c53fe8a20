package hafthold.table;

import hafthold.material.ScaleMaterial;
import hafthold.source.Finding;
import java.util.ArrayList;
import java.util.List;

/** Reads {@code cautions.csv}: what can hurt, by family or material. */
public final class CautionTable {
    private static final List<String> COLUMNS = List.of("applies_to", "text");
    private static final String EVERYTHING = "all";

    private final List<Finding> cautions = new ArrayList<>();

    private CautionTable() {}

    /** Reads the table. */
    public static CautionTable read(TableSet tables) {
        CautionTable table = new CautionTable();
        for (CsvTable file : tables.read("cautions.csv", COLUMNS)) {
            for (CsvRow row : file.rows()) {
                table.cautions.add(new Finding(Finding.Kind.CAUTION, row.required("applies_to"), row.required("text")));
            }
        }
        return table;
    }

    /** Cautions for everything. */
    public List<Finding> general() {
        return cautions.stream()
                .filter(caution -> caution.subject().equals(EVERYTHING))
                .toList();
    }

    /** Cautions for a material: those of its family and its own; of a treated wood also the wood's own. */
    public List<Finding> about(ScaleMaterial material) {
        String untreated = material.id().replaceFirst("\\+.*", "");
        return cautions.stream()
                .filter(caution -> caution.subject().equals(material.family().word())
                        || caution.subject().equals(material.id())
                        || caution.subject().equals(untreated))
                .toList();
    }
}
