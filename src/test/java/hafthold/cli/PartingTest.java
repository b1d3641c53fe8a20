package hafthold.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What parts inside a scale is told with a number. */
class PartingTest {

    @ParameterizedTest
    @CsvSource({
        "hybrid-maple-burl-epoxy, yakutsk, heated-home, 'a ridge of '",
        "hybrid-maple-burl-epoxy, yakutsk, heated-home, 'of the strength across the weaker part'",
        "horn-buffalo, singapore, uncooled-home, 'trim-2011) and keeps a set: '",
        "molar-mammoth, yakutsk, heated-home, '16 times as much as enamel'"
    })
    void aFindingGivesTheNumber(String material, String place, String setting, String part) {
        Bench bench = Bench.run(
                "compare", "--place", place, "--setting", setting, "--material", material, "--format", "json");
        assertTrue(bench.out().contains(part), bench.out());
    }
}
