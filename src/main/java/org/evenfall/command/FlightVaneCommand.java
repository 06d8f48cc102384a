package org.evenfall.command;

import java.util.concurrent.Callable;
import org.evenfall.flight.Vane;
import org.evenfall.flight.VaneOutlet;
import org.evenfall.setup.tool.FlightTool;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How a granule leaves a straight vane. */
@Command(name = "vane", mixinStandardHelpOptions = true, description = "How a granule leaves a straight vane: a model.")
final class FlightVaneCommand implements Callable<Integer> {

    private final CommandContext context;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(names = "--rpm", paramLabel = "N", description = "disc speed, 1 to 5000 rpm")
    private @Nullable Double rpm;

    @Option(names = "--radius-m", paramLabel = "R", description = "centre to vane tip, 0.01 to 2 m")
    private @Nullable Double radiusM;

    @Option(names = "--drop-radius-m", paramLabel = "R0", description = "centre to where the granule falls, below R")
    private @Nullable Double dropRadiusM;

    @Option(
            names = "--offset-m",
            paramLabel = "C",
            description = "offset of the vane, positive ahead",
            defaultValue = "0")
    private double offsetM;

    @Option(names = "--friction", paramLabel = "MU", description = "friction, 0 to 1.5")
    private @Nullable Double friction;

    @Option(
            names = "--gravity-m-s2",
            paramLabel = "G",
            description = "gravity, 0 to 30 m/s²",
            defaultValue = "" + FlightTool.GRAVITY_M_PER_S2)
    private double gravityMPerS2;

    @Option(names = "--json", description = "as JSON")
    private boolean json;

    FlightVaneCommand(CommandContext context) {
        this.context = context;
    }

    @Override
    public Integer call() throws Exception {
        double radius = OptionRange.within(spec, "--radius-m", radiusM, 0.01, 2);
        double drop = OptionRange.within(spec, "--drop-radius-m", dropRadiusM, 0.0001, 0.999 * radius);
        OptionRange.within(spec, "--offset-m", offsetM, -0.999 * drop, 0.999 * drop);
        OptionRange.within(spec, "--gravity-m-s2", gravityMPerS2, 0, 30);
        Vane vane = new Vane(radius, drop, offsetM, OptionRange.within(spec, "--friction", friction, 0, 1.5));
        double speed = OptionRange.within(spec, "--rpm", rpm, 1, 5000);
        VaneOutlet outlet = FlightTool.leaveVane(vane, speed, gravityMPerS2);
        if (outlet == null) {
            throw new ParameterException(
                    spec.commandLine(), "--rpm: " + speed + "; at this speed the granule stays where it falls");
        }
        ResultJson.print(context, json, outlet);
        return CommandFace.OK;
    }
}
