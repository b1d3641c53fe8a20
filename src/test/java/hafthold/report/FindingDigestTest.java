package hafthold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.source.Finding.Kind;
import java.util.List;
import org.junit.jupiter.api.Test;

class FindingDigestTest {

    @Test
    void tellsEqualSentencesOnceForAllTheyConcern() {
        List<FindingDigest> digests = FindingDigest.of(BenchStyle.ENGLISH, InventedComparison.glued());
        FindingDigest drying = digests.stream()
                .filter(digest -> digest.text().startsWith("speed of drying"))
                .findFirst()
                .orElseThrow();
        assertEquals(4, drying.subjects().size());
        assertTrue(drying.lead(BenchStyle.ENGLISH).endsWith(" and 2 more: "), drying.lead(BenchStyle.ENGLISH));
        assertEquals(
                digests.size(),
                digests.stream().map(FindingDigest::text).distinct().count());
    }

    @Test
    void keepsTheOrderOfKinds() {
        List<Kind> kinds = FindingDigest.of(BenchStyle.ENGLISH, InventedComparison.glued()).stream()
                .map(FindingDigest::kind)
                .toList();
        assertEquals(kinds.stream().sorted().toList(), kinds);
    }

    @Test
    void leadsWithNothingWhereAllIsConcerned() {
        assertEquals("", new FindingDigest(Kind.CAUTION, "x", List.of("all")).lead(BenchStyle.ENGLISH));
        assertEquals("teak: ", new FindingDigest(Kind.CAUTION, "x", List.of("teak")).lead(BenchStyle.ENGLISH));
        assertEquals(
                "a; b; c: ", new FindingDigest(Kind.CAUTION, "x", List.of("a", "b", "c")).lead(BenchStyle.ENGLISH));
    }
}
