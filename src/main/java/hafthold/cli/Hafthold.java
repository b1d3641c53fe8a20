package hafthold.cli;

/** Entry point of the command line. */
public final class Hafthold {
    private Hafthold() {}

    /** Runs one command. */
    public static void main(String[] args) {
        System.out.println("hafthold");
    }
}
