package org.evenfall.command;

import java.util.concurrent.Callable;
import org.evenfall.command.SetupInputs.Answer;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.InputFileException;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A command that answers one setup, in words or as JSON, or a stream of them, one line each. */
abstract class AnswerCommand implements Callable<Integer> {

    private final CommandContext context;
    private final String name;

    @Parameters(paramLabel = "SETUP.json", arity = "0..1", description = "setup file")
    private @Nullable String file;

    @Option(names = "--json", description = "as JSON")
    private boolean json;

    @Option(names = "--stream", description = "one setup a line on standard input, one result line for each")
    private boolean stream;

    AnswerCommand(CommandContext context, String name) {
        this.context = context;
        this.name = name;
    }

    final CommandContext context() {
        return context;
    }

    abstract Answer answer(Setup setup);

    /** Prints the answer in words. */
    abstract void print(Setup setup, String file) throws InputFileException;

    @Override
    public final Integer call() throws Exception {
        if (stream) {
            return SetupInputs.stream(context, this::answer);
        }
        if (file == null) {
            throw new InputFileException("evenfall " + name, "", "name a setup file, or use --stream");
        }
        Setup setup = SetupInputs.read(context, file);
        if (json) {
            context.out().println(answer(setup).json().toPrettyString());
        } else {
            print(setup, file);
        }
        return CommandFace.OK;
    }
}
