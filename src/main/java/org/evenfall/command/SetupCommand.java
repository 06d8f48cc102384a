package org.evenfall.command;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Setup files without the wizard. */
@Command(name = "setup", mixinStandardHelpOptions = true, description = "Begin the setup of a new season.")
final class SetupCommand implements Runnable {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    static CommandLine line(CommandContext context) {
        CommandLine line = new CommandLine(new SetupCommand());
        line.addSubcommand(new SetupNewCommand(context));
        return line;
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "say new");
    }
}
