package loftcoil.runner.cli;

import java.io.PrintWriter;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.Refusal;
import picocli.CommandLine;

/** Turns what was thrown into lines a person can act on, and an exit status. */
final class Refusals {

    /** All went well. */
    static final int FINE = 0;

    /** The program itself is at fault. */
    static final int OWN_FAULT = 1;

    /** An input was refused. */
    static final int REFUSED = 2;

    private Refusals() {}

    static int handle(Exception thrown, CommandLine commandLine, CommandLine.ParseResult parsed) {
        PrintWriter err = commandLine.getErr();
        if (thrown instanceof StandardOutput.LostException) {
            return REFUSED;
        }
        if (thrown instanceof Refusal) {
            err.println(thrown.getMessage());
            return REFUSED;
        }
        return ownFault(thrown, err);
    }

    /** For what is no exception: a class that a small Java lacks is no fault of the program. */
    static int error(Error failure, PrintWriter err) {
        String missing = String.valueOf(failure.getMessage());
        if (failure instanceof NoClassDefFoundError && missing.matches("(java|javax|jdk|com/sun|sun)/.*")) {
            err.println(smallJava(missing.replace('/', '.')).line());
            return REFUSED;
        }
        return ownFault(failure, err);
    }

    /** What is to be said where this Java lacks something. */
    static Fault smallJava(String lacking) {
        String java = "this Java at " + System.getProperty("java.home");
        return new Fault(java, "it lacks " + lacking, "a whole JDK, 17 or newer", "");
    }

    private static int ownFault(Throwable thrown, PrintWriter err) {
        err.println("This is a fault of Loftcoil, not yours: " + thrown);
        thrown.printStackTrace(err);
        err.flush();
        return OWN_FAULT;
    }

    static int badArguments(CommandLine.ParameterException bad, String[] args) {
        PrintWriter err = bad.getCommandLine().getErr();
        // The parser of arguments speaks of Java's own types here.
        err.println(String.valueOf(bad.getMessage())
                .replace("is not a double", "is not a number")
                .replaceFirst("is not an? (?:int|long)", "is not a whole number"));
        CommandLine.UnmatchedArgumentException.printSuggestions(bad, err);
        err.println("'" + bad.getCommandLine().getCommandSpec().qualifiedName() + " --help' says what is allowed.");
        return REFUSED;
    }
}
