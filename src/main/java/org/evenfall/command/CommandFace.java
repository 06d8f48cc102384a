package org.evenfall.command;

import java.util.List;
import java.util.Optional;
import org.evenfall.publish.CardFileException;
import org.evenfall.store.InputFileException;
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

    private final CommandContext context;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    private CommandFace(CommandContext context) {
        this.context = context;
    }

    /** Runs one call and returns its exit code. */
    public static int run(CommandContext context, List<String> args) {
        CommandLine line = new CommandLine(new CommandFace(context));
        line.addSubcommand(new AssessCommand(context));
        line.addSubcommand(new CardCommand(context));
        line.addSubcommand(new VerifyCommand(context));
        line.addSubcommand(new SheetCommand(context));
        line.addSubcommand(new ReportCommand(context));
        line.addSubcommand(new MatchCommand(context));
        line.addSubcommand(new AdviseCommand(context));
        line.addSubcommand(SetupCommand.line(context));
        line.addSubcommand(TraysCommand.line(context));
        line.addSubcommand(FlightCommand.line(context));
        line.addSubcommand(FarmCommand.line(context));
        line.addSubcommand(new DemoCommand(context));
        line.setOut(context.out());
        line.setErr(context.err());
        line.setParameterExceptionHandler((problem, rest) -> {
            context.err().println(oneLine(problem));
            context.err().flush();
            return WRONG;
        });
        line.setExecutionExceptionHandler((problem, command, result) -> {
            context.err().println(message(problem));
            context.err().flush();
            return WRONG;
        });
        int code = line.execute(args.toArray(new String[0]));
        context.out().flush();
        return code;
    }

    @Override
    public void run() {
        context.window().open(Optional.empty()).ifPresent(why -> {
            throw new ParameterException(spec.commandLine(), why);
        });
    }

    private static String oneLine(ParameterException problem) {
        String message = String.valueOf(problem.getMessage()).replaceAll("\\s*\\R\\s*", " ");
        return problem.getCommandLine().getCommandSpec().qualifiedName() + ": " + message;
    }

    /** What a file problem says of itself; anything else by its kind, in one line. */
    private static String message(Exception problem) {
        if (problem instanceof InputFileException
                || problem instanceof CardFileException
                || problem instanceof CommandException) {
            return String.valueOf(problem.getMessage());
        }
        String message = String.valueOf(problem.getMessage()).replaceAll("\\s*\\R\\s*", " ");
        return problem.getClass().getSimpleName().replace("Exception", "") + ": " + message;
    }
}
