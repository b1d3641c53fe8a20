package hafthold.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** Entry point: how knife handle scales move in the customer's climate. */
@Command(
        name = "hafthold",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "How the scales of a knife handle swell, shrink and open in the customer's climate.")
public final class Hafthold {
    private static final List<Class<?>> COMMANDS = List.of(
            CompareCommand.class,
            AtlasCommand.class,
            FitCommand.class,
            ClaimCommand.class,
            SeasonCommand.class,
            StockCommand.class,
            CouponCommand.class,
            CardCommand.class,
            TraceCommand.class,
            DemoCommand.class,
            RemakeCommand.class,
            PlacesCommand.class,
            MaterialsCommand.class,
            SourcesCommand.class);

    /** Runs one command; exits with its code unless that is 0. */
    public static void main(String[] args) {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        settle();
        if (!called(args).isEmpty()) {
            HeadStart.begin();
        }
        int code = run(out, err, args);
        if (code != ExitCode.DONE) {
            System.exit(code);
        }
    }

    /**
     * Runs one command in this process.
     *
     * @param out takes the result
     * @param err takes notes, progress and faults
     * @param args command line
     * @return exit code: 0 done, 1 internal error, 2 wrong usage, 3 invalid input, 4 adverse verdict with
     *     {@code --check}, 5 outside the models
     */
    public static int run(PrintWriter out, PrintWriter err, String... args) {
        settle();
        FaultReport faults = new FaultReport();
        CommandLine commandLine = commandLine(args)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setExecutionExceptionHandler(faults)
                .setParameterExceptionHandler(faults)
                .setOut(out)
                .setErr(err);
        QuantityConverters.register(commandLine);
        int code = commandLine.execute(args);
        out.flush();
        err.flush();
        return code;
    }

    /** Makes the process alike on every machine. */
    private static void settle() {
        Locale.setDefault(Locale.ROOT);
        System.setProperty("java.awt.headless", "true");
    }

    /** With the command that is called, or all of them where that is not plain: reading the others would take time. */
    private static CommandLine commandLine(String... args) {
        CommandLine commandLine = new CommandLine(new Hafthold());
        List<Class<?>> called = called(args);
        for (Class<?> command : called.isEmpty() ? COMMANDS : called) {
            commandLine.addSubcommand(command);
        }
        return commandLine;
    }

    private static List<Class<?>> called(String... args) {
        return COMMANDS.stream()
                .filter(command -> args.length > 0 && name(command).equals(args[0]))
                .toList();
    }

    /** Name of a command, by which its class is called too: to read it off the annotations of all would take long. */
    static String name(Class<?> command) {
        return command.getSimpleName().replace("Command", "").toLowerCase(Locale.ROOT);
    }

    /** All commands, in the order in which help lists them. */
    static List<Class<?>> commands() {
        return COMMANDS;
    }
}
