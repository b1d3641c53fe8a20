package hafthold.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine.Command;

/** The launcher finds a command by the name of its class; it must be the one that is told. */
class CommandNamesTest {
    static Iterable<Class<?>> commands() {
        return Hafthold.commands();
    }

    @ParameterizedTest
    @MethodSource("commands")
    void classIsCalledAfterItsCommand(Class<?> command) {
        assertEquals(command.getAnnotation(Command.class).name(), Hafthold.name(command));
    }
}
