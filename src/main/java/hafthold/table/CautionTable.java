package hafthold.table;

import hafthold.material.Family;
import hafthold.material.ScaleMaterial;
import hafthold.source.Finding;
import hafthold.source.Message;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

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
        Set<String> subjects = new HashSet<>(Set.of(EVERYTHING));
        materials.forEach(material -> subjects.addAll(subjects(material)));
        return cautions.stream()
                .filter(caution -> subjects.contains(caution.subject()))
                .sorted(Comparator.comparing(CautionTable::isGeneral)
                        .thenComparing(CautionTable::isOfFamily)
                        .reversed())
                .toList();
    }

    /** Cautions for a material: those of its family and its own; of a treated wood also the wood's own. */
    public List<Finding> about(ScaleMaterial material) {
        Set<String> subjects = subjects(material);
        return cautions.stream()
                .filter(caution -> subjects.contains(caution.subject()))
                .toList();
    }

    /** Cautions for a metal, by its id, that every handle is taken to have because none was named. */
    public List<Finding> taken(String id) {
        return cautions.stream()
                .filter(caution -> caution.subject().equals(id))
                .map(caution -> new Finding(Finding.Kind.CAUTION, EVERYTHING, caution.message()))
                .toList();
    }

    /** What a caution for a material may apply to: its family, itself, the wood of a treated one. */
    private static Set<String> subjects(ScaleMaterial material) {
        int treatment = material.id().indexOf('+');
        Set<String> subjects = new HashSet<>(List.of(material.family().word(), material.id()));
        subjects.add(treatment < 0 ? material.id() : material.id().substring(0, treatment));
        return subjects;
    }

    private static boolean isGeneral(Finding caution) {
        return caution.subject().equals(EVERYTHING);
    }

    private static boolean isOfFamily(Finding caution) {
        return Arrays.stream(Family.values()).anyMatch(family -> family.word().equals(caution.subject()));
    }
}
