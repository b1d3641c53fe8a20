package hafthold.report;

import hafthold.material.ScaleMaterial;
import hafthold.source.Finding;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What can hurt, for the error stream: each sentence once, with the materials it is for behind it. */
public final class CautionLines {
    private CautionLines() {}

    /**
     * The sentences that stand among findings; those for everything come first.
     *
     * @param materials whose names are put in place of their ids
     */
    public static List<String> of(
            BenchStyle style, Collection<Finding> findings, Collection<? extends ScaleMaterial> materials) {
        Map<String, String> names = new LinkedHashMap<>();
        for (ScaleMaterial material : materials) {
            names.put(material.family().word(), style.family(material.family()));
            names.put(material.id(), material.name());
        }
        materials.forEach(material -> names.putIfAbsent(untreated(material.id()), untreated(material.id())));
        return FindingDigest.of(style, List.copyOf(findings), names).stream()
                .filter(digest -> digest.kind() == Finding.Kind.CAUTION)
                .map(digest -> style.say("mind", "caution", digest.text()) + about(style, digest, names))
                .toList();
    }

    private static String about(BenchStyle style, FindingDigest digest, Map<String, String> names) {
        return names.values().containsAll(digest.subjects()) ? " (" + digest.subjectWords(style) + ")" : "";
    }

    private static String untreated(String id) {
        return id.replaceFirst("\\+.*", "");
    }
}
