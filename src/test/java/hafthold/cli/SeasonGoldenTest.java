package hafthold.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hafthold.report.Golden;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A season as it was told before, and as a script reads it: an invented order. */
class SeasonGoldenTest {
    private static final List<String> ORDER = List.of(
            "season",
            "--place",
            "oslo",
            "--material",
            "walnut-black",
            "--shop-rh-january",
            "35 %",
            "--shop-rh-july",
            "72 %",
            "--today",
            "2026-10-15",
            "--samples",
            "30");

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "season.txt, text, -, 0",
                "season-read.txt, text, 9 %, 0",
                "season-glued.txt, text, -, 28",
                "season.csv, csv, -, 0",
                "season-read.csv, csv, 9 %, 28"
            })
    void isToldAsBefore(String name, String format, String reading, String gluedDays) throws IOException {
        List<String> read = reading == null ? List.of() : List.of("--blank-moisture", reading);
        Bench season = Bench.run(Stream.of(ORDER, read, List.of("--glued-days", gluedDays, "--format", format))
                .flatMap(List::stream)
                .toArray(String[]::new));
        assertEquals(ExitCode.DONE, season.code(), season.err());
        assertEquals(Golden.text(name, season.out()), season.out());
    }
}
