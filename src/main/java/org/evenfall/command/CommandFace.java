package org.evenfall.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.evenfall.quantity.PlainText;
import org.evenfall.quantity.Quoted;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;

/**
 * The command-line face. Exit codes: 0 done; 1 done, and there is a stop finding (assess), or the card is not as signed
 * (verify, which has more of its own); 2 the call or a file is wrong, or the result cannot be written; files that were
 * written before are named.
 */
@Command(
        name = "evenfall",
        mixinStandardHelpOptions = true,
        version = "Evenfall 0.1.0",
        description = "From an unknown bag of urea to a signed cab card. Without a command the wizard opens.",
        footer = {
            "",
            "Exit codes: 0 done; 1 a stop finding, or a card that is not as signed; 2 the call or a file is wrong,",
            "or the result cannot be written; files that were written before are named."
        })
public final class CommandFace implements Runnable {

    static final int OK = 0;
    static final int FOUND = 1;
    static final int WRONG = 2;

    private static final String VERSION = "--version";

    private final CommandContext context;

    @Parameters(
            paramLabel = "[SETUP.json]",
            hideParamSyntax = true,
            description = "The setup that the wizard opens, as when its file is double-clicked.")
    private List<String> setups = List.of();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    private CommandFace(CommandContext context) {
        this.context = context;
    }

    /** Runs one call and returns its exit code. Whatever goes wrong gives one line. */
    public static int run(CommandContext outside, List<String> args) {
        CommandContext context = outside.plain();
        int code;
        try {
            code = line(context, args).execute(args.toArray(new String[0]));
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError trouble) {
            code = wrong(context, Trouble.line(trouble));
        }
        // a check flushes too
        return context.out().checkError() ? wrong(context, "evenfall: standard output cannot be written") : code;
    }

    private static int wrong(CommandContext context, String why) {
        context.err().println(why);
        context.err().flush();
        return WRONG;
    }

    /** The commands by their names, in the order of the help. Each is made when it is needed: most calls need one. */
    private static Map<String, Supplier<CommandLine>> commands(CommandContext context) {
        Map<String, Supplier<CommandLine>> commands = new LinkedHashMap<>();
        commands.put("assess", () -> new CommandLine(new AssessCommand(context)));
        commands.put("card", () -> new CommandLine(new CardCommand(context)));
        commands.put("verify", () -> new CommandLine(new VerifyCommand(context)));
        commands.put("sheet", () -> new CommandLine(new SheetCommand(context)));
        commands.put("report", () -> new CommandLine(new ReportCommand(context)));
        commands.put("match", () -> new CommandLine(new MatchCommand(context)));
        commands.put("advise", () -> new CommandLine(new AdviseCommand(context)));
        commands.put("setup", () -> SetupCommand.line(context));
        commands.put("trays", () -> TraysCommand.line(context));
        commands.put("flight", () -> FlightCommand.line(context));
        commands.put("farm", () -> FarmCommand.line(context));
        commands.put("demo", () -> new CommandLine(new DemoCommand(context)));
        return commands;
    }

    /** Which commands a call needs: the one that it names, none for the version, else all, for help and for what is mistyped. */
    private static Predicate<String> needed(CommandContext context, List<String> args) {
        String first = args.isEmpty() ? VERSION : args.get(0);
        if (first.equals(VERSION)) {
            return name -> false;
        }
        return commands(context).containsKey(first) ? first::equals : name -> true;
    }

    /** The commands that a call needs, ready to run it. */
    static CommandLine line(CommandContext context, List<String> args) {
        CommandLine line = new CommandLine(new CommandFace(context));
        Predicate<String> needed = needed(context, args);
        commands(context).forEach((name, command) -> {
            if (needed.test(name)) {
                line.addSubcommand(name, command.get());
            }
        });
        line.setOut(context.out());
        line.setErr(context.err());
        line.setParameterExceptionHandler((problem, rest) -> wrong(context, oneLine(problem)));
        line.setExecutionExceptionHandler((problem, command, result) -> wrong(context, Trouble.line(problem)));
        return line;
    }

    @Override
    public void run() {
        context.window().open(setup()).ifPresent(why -> {
            throw new ParameterException(spec.commandLine(), why);
        });
    }

    /** The setup to open, if one is named; a word that is neither a command nor a file is reported as picocli does. */
    private Optional<Path> setup() {
        if (setups.isEmpty()) {
            return Optional.empty();
        }
        Path file = context.path(setups.get(0));
        if (setups.size() > 1 || !Files.isRegularFile(file)) {
            throw new UnmatchedArgumentException(spec.commandLine(), setups);
        }
        return Optional.of(file);
    }

    private static String oneLine(ParameterException problem) {
        return PlainText.oneLine(
                problem.getCommandLine().getCommandSpec().qualifiedName() + ": " + problem.getMessage(),
                Quoted.MOST_IN_MESSAGE);
    }
}
