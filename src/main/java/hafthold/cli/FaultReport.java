package hafthold.cli;

import hafthold.knife.UnfitBuildException;
import hafthold.quantity.QuantityFormatException;
import hafthold.simulate.OutsideModelsException;
import hafthold.table.InvalidTableException;
import hafthold.table.UnknownEventWordsException;
import hafthold.table.UnknownIdException;
import java.io.UncheckedIOException;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** Turns what went wrong into one line for the person at the bench and an exit code for the shell. */
final class FaultReport implements IExecutionExceptionHandler, IParameterExceptionHandler {

    @Override
    public int handleParseException(ParameterException fault, String[] args) {
        CommandLine command = fault.getCommandLine();
        command.getErr().println("hafthold: " + fault.getMessage());
        CommandLine.UnmatchedArgumentException.printSuggestions(fault, command.getErr());
        command.getErr()
                .println("'" + command.getCommandSpec().qualifiedName() + " --help' lists what it understands.");
        return ExitCode.WRONG_USAGE;
    }

    @Override
    public int handleExecutionException(Exception fault, CommandLine command, ParseResult parsed) {
        int code = codeOf(fault);
        if (code == ExitCode.INTERNAL_ERROR) {
            command.getErr().println("hafthold: something went wrong inside the program; please report this:");
            fault.printStackTrace(command.getErr());
        } else {
            command.getErr().println("hafthold: " + fault.getMessage());
        }
        return code;
    }

    private static int codeOf(Exception fault) {
        if (fault instanceof UnknownIdException
                || fault instanceof UnknownEventWordsException
                || fault instanceof QuantityFormatException
                || fault instanceof UnfitBuildException
                || fault instanceof WrongUsageException) {
            return ExitCode.WRONG_USAGE;
        }
        if (fault instanceof InvalidTableException || fault instanceof UncheckedIOException) {
            return ExitCode.INVALID_INPUT;
        }
        if (fault instanceof OutsideModelsException) {
            return ExitCode.OUTSIDE_MODELS;
        }
        return ExitCode.INTERNAL_ERROR;
    }
}
