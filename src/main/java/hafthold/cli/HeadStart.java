package hafthold.cli;

import hafthold.report.Wording;
import hafthold.table.MaterialLibrary;
import hafthold.table.TableSet;

/** Reads what nearly every command wants while the command line is still being taken apart. */
final class HeadStart {
    private HeadStart() {}

    /** Begins, on a thread that nobody waits for: who comes for tables or texts first finds them read, or reads on. */
    static void begin() {
        Thread reader = new Thread(
                () -> {
                    MaterialLibrary.read(TableSet.builtIn());
                    Wording.english();
                },
                "head start");
        reader.setDaemon(true);
        reader.start();
    }
}
