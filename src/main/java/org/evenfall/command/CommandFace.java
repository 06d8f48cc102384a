package org.evenfall.command;

import java.util.List;
import java.util.Optional;
import org.evenfall.store.SetupFileException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/**
 * The command-line face. Exit codes: 0 done; 1 done, and there is a stop finding (assess), or the card is not as signed
 * (verify, which has more of its own); 2 the call or a file is wrong, nothing was written.
 */
@Command(
        name = "evenfall",
        mixinStandardHelpOptions = true,
        version = "Evenfall 0.1.0",
        description = "From an unknown bag of urea to a signed cab card. Without a command the wizard opens.",
        footer = {
            "",
            "Exit codes: 0 done; 1 a stop finding, or a card that is not as signed; 2 the call or a file is wrong."
        })
public final class CommandFace implements Runnable {

    static final int OK = 0;
    static final int FOUND = 1;
    static final int WRONG = 2;

    private final Surroundings around;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    private CommandFace(Surroundings around) {
        this.around = around;
    }

    /** Runs one call and returns its exit code. */
    public static int run(Surroundings around, List<String> args) {
        CommandLine line = new CommandLine(new CommandFace(around));
        line.addSubcommand(new AssessCommand(around));
        line.addSubcommand(new CardCommand(around));
        line.addSubcommand(new VerifyCommand(around));
        line.addSubcommand(new MatchCommand(around));
        line.addSubcommand(new AdviseCommand(around));
        line.addSubcommand(TraysCommand.line(around));
        line.addSubcommand(FlightCommand.line(around));
        line.addSubcommand(new DemoCommand(around));
        line.setOut(around.out());
        line.setErr(around.err());
        line.setParameterExceptionHandler((problem, rest) -> {
            around.err().println(oneLine(problem));
            around.err().flush();
            return WRONG;
        });
        line.setExecutionExceptionHandler((problem, command, result) -> {
            around.err().println(told(problem));
            around.err().flush();
            return WRONG;
        });
        int code = line.execute(args.toArray(new String[0]));
        around.out().flush();
        return code;
    }

    @Override
    public void run() {
        around.window().open(Optional.empty()).ifPresent(why -> {
            throw new ParameterException(spec.commandLine(), why);
        });
    }

    private static String oneLine(ParameterException problem) {
        String message = String.valueOf(problem.getMessage()).replaceAll("\\s*\\R\\s*", " ");
        return problem.getCommandLine().getCommandSpec().qualifiedName() + ": " + message;
    }

    /** What a file problem says of itself; anything else by its kind, in one line. */
    private static String told(Exception problem) {
        if (problem instanceof SetupFileException) {
            return String.valueOf(problem.getMessage());
        }
        String message = String.valueOf(problem.getMessage()).replaceAll("\\s*\\R\\s*", " ");
        return problem.getClass().getSimpleName().replace("Exception", "") + ": " + message;
    }
}
