package org.evenfall.command;

import java.nio.file.Files;
import java.nio.file.Path;
import org.evenfall.store.InputFileException;
import org.evenfall.store.UserFolder;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The folder of a farm: what is in it, whether its files are sound, the record of a season. */
@Command(
        name = "farm",
        mixinStandardHelpOptions = true,
        description = "The folder of a farm: list what is in it, check its files, write the record of a season.")
final class FarmCommand implements Runnable {

    private final CommandContext context;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(index = "0", paramLabel = "FOLDER", description = "the folder of the farm")
    private String folder = "";

    FarmCommand(CommandContext context) {
        this.context = context;
    }

    static CommandLine line(CommandContext context) {
        FarmCommand farm = new FarmCommand(context);
        CommandLine line = new CommandLine(farm);
        line.addSubcommand(new FarmListCommand(context, farm));
        line.addSubcommand(new FarmCheckCommand(context, farm));
        line.addSubcommand(new FarmRecordCommand(context, farm));
        return line;
    }

    /**
     * The folder named.
     *
     * @throws InputFileException when there is none
     */
    UserFolder user() throws InputFileException {
        Path farm = context.path(folder);
        if (!Files.isDirectory(farm)) {
            throw new InputFileException(folder, "", "no such folder");
        }
        return new UserFolder(context.user().root(), farm);
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "say list, check or record");
    }
}
