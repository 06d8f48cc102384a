package org.evenfall.command;

import java.util.concurrent.Callable;
import org.evenfall.setup.tool.FlightTool;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Drag coefficient of a smooth sphere at a Reynolds number. */
@Command(name = "drag", mixinStandardHelpOptions = true, description = "Drag coefficient of a smooth sphere.")
final class FlightDragCommand implements Callable<Integer> {

    private final CommandContext context;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(names = "--reynolds", paramLabel = "RE", description = "Reynolds number, 0.0001 to 200000")
    private @Nullable Double reynolds;

    @Option(names = "--json", description = "as JSON")
    private boolean json;

    FlightDragCommand(CommandContext context) {
        this.context = context;
    }

    /** The result. */
    record Drag(double dragCoefficient) {}

    @Override
    public Integer call() throws Exception {
        ResultJson.print(
                context,
                json,
                new Drag(FlightTool.dragCoefficient(OptionRange.within(spec, "--reynolds", reynolds, 0.0001, 2e5))));
        return CommandFace.OK;
    }
}
