package hafthold.cli;

import hafthold.table.BuildFile;
import hafthold.table.ClaimFile;
import hafthold.table.CouponFile;
import hafthold.table.StockFile;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Runs the main commands once and throws their answers away: the build records the classes that they load. */
public final class Rehearsal {
    private Rehearsal() {}

    /** Runs them; takes no arguments. */
    public static void main(String[] args) throws IOException {
        HeadStart.begin();
        Path folder = Files.createTempDirectory("hafthold");
        try {
            Path knife = Files.writeString(folder.resolve("knife.toml"), BuildFile.example());
            Path returned = Files.writeString(folder.resolve("returned.toml"), ClaimFile.example());
            Path shelf = Files.writeString(folder.resolve("stock.toml"), StockFile.example());
            Path strips = Files.writeString(folder.resolve("coupons.toml"), CouponFile.example());
            String out = folder.resolve("report").toString();
            PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
            for (List<String> command : List.of(
                    List.of("compare", "--place", "oslo", "--samples", "30"),
                    List.of("compare", "--place", "singapore", "--material", "walnut-black,acrylic-cast", "--out", out),
                    List.of("card", "--place", "singapore", "--material", "walnut-black", "--out", out),
                    List.of("fit", knife.toString()),
                    List.of("claim", returned.toString(), "--samples", "30"),
                    List.of(
                            "season",
                            "--place",
                            "oslo",
                            "--shop-place",
                            "oslo",
                            "--material",
                            "walnut-black",
                            "--samples",
                            "30"),
                    List.of("stock", shelf.toString(), "--samples", "100"),
                    List.of("coupon", strips.toString(), "--samples", "500"),
                    List.of("places"))) {
                Hafthold.run(nowhere, nowhere, command.toArray(String[]::new));
            }
        } finally {
            delete(folder);
        }
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
