package hafthold.table;

import hafthold.material.Family;
import hafthold.material.ScaleMaterial;
import hafthold.source.Finding;
import hafthold.source.Message;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
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
                String text = row.required("text");
                String key = row.text("key");
                Message message = key.isEmpty() ? Message.verbatim(text) : file.said("caution." + key, text);
                table.cautions.add(new Finding(Finding.Kind.CAUTION, row.required("applies_to"), message));
            }
        }
        return table;
    }

    /** Every row, in the order of the table. */
    public List<Finding> all() {
        return List.copyOf(cautions);
    }

    /**
     * Everything to mind with some materials, each row once: what holds for everything, then what holds for their
     * families, then what holds for single ones of them.
     */
    public List<Finding> with(Collection<? extends ScaleMaterial> materials) {
        return cautions.stream()
                .filter(caution ->
                        isGeneral(caution) || materials.stream().anyMatch(material -> concerns(caution, material)))
                .sorted(Comparator.comparing(CautionTable::isGeneral)
                        .thenComparing(CautionTable::isOfFamily)
                        .reversed())
                .toList();
    }

    /** Cautions for a material: those of its family and its own; of a treated wood also the wood's own. */
    public List<Finding> about(ScaleMaterial material) {
        return cautions.stream().filter(caution -> concerns(caution, material)).toList();
    }

    /** Cautions for a metal, by its id, that every handle is taken to have because none was named. */
    public List<Finding> taken(String id) {
        return cautions.stream()
                .filter(caution -> caution.subject().equals(id))
                .map(caution -> new Finding(Finding.Kind.CAUTION, EVERYTHING, caution.message()))
                .toList();
    }

    private static boolean concerns(Finding caution, ScaleMaterial material) {
        String subject = caution.subject();
        return subject.equals(material.family().word())
                || subject.equals(material.id())
                || subject.equals(material.id().replaceFirst("\\+.*", ""));
    }

    private static boolean isGeneral(Finding caution) {
        return caution.subject().equals(EVERYTHING);
    }

    private static boolean isOfFamily(Finding caution) {
        return Arrays.stream(Family.values()).anyMatch(family -> family.word().equals(caution.subject()));
    }
}
