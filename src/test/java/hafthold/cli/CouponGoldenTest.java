package hafthold.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hafthold.report.Golden;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the example's coupons tell, as before. */
class CouponGoldenTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({"coupon.txt, text", "coupon.csv, csv"})
    void isToldAsBefore(String name, String format) throws IOException {
        Path file = Files.writeString(
                folder.resolve("coupons.toml"), Bench.run("coupon", "--example").out());
        Bench coupon = Bench.run("coupon", file.toString(), "--format", format);
        assertEquals(ExitCode.DONE, coupon.code(), coupon.err());
        assertEquals(Golden.text(name, coupon.out()), coupon.out());
    }
}
