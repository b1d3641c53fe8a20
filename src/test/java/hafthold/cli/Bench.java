package hafthold.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/** Runs a command as a maker would, and keeps what it said. */
record Bench(int code, String out, String err) {
    static Bench run(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Hafthold.run(new PrintWriter(out), new PrintWriter(err), args);
        return new Bench(code, out.toString(), err.toString());
    }
}
