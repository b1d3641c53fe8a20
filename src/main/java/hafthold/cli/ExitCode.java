package hafthold.cli;

/** What the process reports to the shell. */
final class ExitCode {
    static final int DONE = 0;
    static final int INTERNAL_ERROR = 1;
    static final int WRONG_USAGE = 2;
    static final int INVALID_INPUT = 3;
    static final int ADVERSE_VERDICT = 4;
    static final int OUTSIDE_MODELS = 5;

    private ExitCode() {}
}
