package org.evenfall.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.concurrent.Callable;
import org.evenfall.result.FirstMoveLines;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.FieldMoves;
import org.evenfall.setup.path.StartPaths;
import org.evenfall.store.InputFileException;
import org.evenfall.trays.FirstMove;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What to do after the first tray test without a computer at hand. */
@Command(
        name = "first-move",
        mixinStandardHelpOptions = true,
        description = "The first move after a tray test, by the sum of the middle trays, to take to the field.")
final class TraysFirstMoveCommand implements Callable<Integer> {

    private final CommandContext context;

    @Parameters(paramLabel = "SETUP.json", description = "setup file")
    private String file = "";

    @Option(names = "--json", description = "as JSON")
    private boolean json;

    TraysFirstMoveCommand(CommandContext context) {
        this.context = context;
    }

    @Override
    public Integer call() throws Exception {
        FirstMove move = FieldMoves.first(Assessor.assess(SetupInputs.read(context, file)));
        if (move == null) {
            throw new InputFileException(
                    file, StartPaths.TRAMLINE_WIDTH.pointer(), context.words().text("missing.firstMove"));
        }
        if (json) {
            ObjectNode result = context.json().mapper().createObjectNode();
            result.set("firstMove", new ResultJson(context).tree(move));
            context.out().println(result.toPrettyString());
        } else {
            FirstMoveLines.of(context.words(), move).forEach(context.out()::println);
        }
        return CommandFace.OK;
    }
}
