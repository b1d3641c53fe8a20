package hafthold.simulate;

import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.knife.StockBlock.SoldAs;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

/**
 * How often blocks are judged rightly: invented ones, their truth worked out on a grid of 8 x 8 x 8 cells, read with the
 * errors of a bench, judged with as many draws as the command takes: {@code mvn -Pcampaign test}. What is counted goes to
 * {@code target/campaign}, and from there into accuracy.md.
 */
class StockCampaign {
    private static final int BLOCKS = 400;
    private static final int SEED = 5;
    private static final int CELLS = 8;
    private static final int SAMPLES = 2000;
    private static final Path COUNTED = Path.of("target", "campaign");

    /** Ready wrongly one time in ten at most, and ready later than the late end of the band one time in ten, or little more. */
    @Test
    void saysReadyNoOftenerThanItIs() throws IOException {
        List<StockTrial> trials = StockTally.trials(BLOCKS, SEED, CELLS, SAMPLES);
        List<String> lines = new ArrayList<>();
        lines.add(line("all", trials, trial -> true));
        for (SoldAs soldAs : SoldAs.values()) {
            lines.add(line(soldAs.word(), trials, trial -> trial.block().soldAs() == soldAs));
        }
        lines.add(line("one weight", trials, trial -> trial.block().weighings() == 1));
        lines.add(line("two or three", trials, trial -> trial.block().weighings() / 2 == 1));
        lines.add(line("four to six", trials, trial -> trial.block().weighings() > 3));
        Files.createDirectories(COUNTED);
        Files.write(COUNTED.resolve("stock.txt"), lines);
        StockTally all = StockTally.of(trials);
        assertTrue(all.readyWrongly() <= 0.1 * all.ready() + 2, all::toString);
        assertTrue(all.later() <= 0.13 * BLOCKS, all::toString);
        assertTrue(all.toldRight() >= 0.87 * BLOCKS, all::toString);
    }

    private static String line(String name, List<StockTrial> trials, Predicate<StockTrial> which) {
        return name + ": " + StockTally.of(trials.stream().filter(which).toList());
    }
}
