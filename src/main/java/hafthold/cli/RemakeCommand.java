package hafthold.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes reports anew, each from the order that lies in its folder. */
@Command(
        name = "remake",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Makes the reports of a folder again, each from the order in its own folder.",
            "An order is a text file order.args: one command as it would be typed after 'hafthold', without --out;"
                    + " lines that begin with # are notes. 'hafthold @FOLDER/order.args' runs one of them on the screen."
        })
final class RemakeCommand implements Callable<Integer> {
    private static final String ORDER = "order.args";

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "DIR", description = "folder whose subfolders hold an order.args each")
    private Path orders;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "write the reports into subfolders of this folder instead of beside their orders")
    private Path folder;

    @Override
    public Integer call() {
        PrintWriter err = spec.commandLine().getErr();
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        for (Path order : orders()) {
            Path place = folder == null
                    ? order.getParent()
                    : folder.resolve(order.getParent().getFileName());
            int code = Hafthold.run(nowhere, err, "@" + order, "--out", place.toString());
            if (code != ExitCode.DONE) {
                err.println("hafthold: " + order + " could not be carried out; the reports before it are made anew,"
                        + " it and those after it are as they were");
                return code;
            }
            spec.commandLine().getOut().println(place);
        }
        return ExitCode.DONE;
    }

    private List<Path> orders() {
        if (!Files.isDirectory(orders)) {
            throw new WrongUsageException(
                    orders + " is not a folder; name one whose subfolders hold an " + ORDER + " each");
        }
        try (Stream<Path> inside = Files.list(orders)) {
            List<Path> found = inside.map(place -> place.resolve(ORDER))
                    .filter(Files::isRegularFile)
                    .sorted()
                    .toList();
            if (found.isEmpty()) {
                throw new WrongUsageException(
                        "no subfolder of " + orders + " holds an " + ORDER + ", so there is nothing to make");
            }
            return found;
        } catch (IOException e) {
            throw new UncheckedIOException(orders + " cannot be read: " + e.getMessage(), e);
        }
    }
}
