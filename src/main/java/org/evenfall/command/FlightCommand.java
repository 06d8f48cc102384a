package org.evenfall.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.concurrent.Callable;
import org.evenfall.flight.Granule;
import org.evenfall.flight.Landing;
import org.evenfall.flight.Launch;
import org.evenfall.setup.tool.FlightTool;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The flight of one granule, for people who want to check the model; its subcommands show vane and drag alone. */
@Command(
        name = "flight",
        mixinStandardHelpOptions = true,
        description = "Flight of one granule with drag: a model. Diameter and density, or a constant drag.")
final class FlightCommand implements Callable<Integer> {

    private final CommandContext context;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(names = "--diameter-mm", paramLabel = "D", description = "diameter, 0.1 to 20 mm")
    private @Nullable Double diameterMm;

    @Option(names = "--density-kg-m3", paramLabel = "R", description = "density of the granule, 200 to 5000 kg/m³")
    private @Nullable Double densityKgPerM3;

    @Option(names = "--drag-per-m", paramLabel = "K", description = "constant drag over speed squared, 0 to 100 per m")
    private @Nullable Double dragPerM;

    @Option(names = "--speed-m-s", paramLabel = "V", description = "speed, 0 to 200 m/s")
    private @Nullable Double speedMPerS;

    @Option(names = "--angle-deg", paramLabel = "A", description = "angle above the horizontal, -90 to 90")
    private @Nullable Double angleDeg;

    @Option(names = "--height-m", paramLabel = "H", description = "height over the landing, 0 to 1000 m")
    private @Nullable Double heightM;

    @Option(
            names = "--wind-m-s",
            paramLabel = "W",
            description = "wind along the throw, -40 to 40 m/s",
            defaultValue = "0")
    private double windMPerS;

    @Option(
            names = "--wind-across-m-s",
            paramLabel = "W",
            description = "wind to the right of the throw, -40 to 40 m/s",
            defaultValue = "0")
    private double windAcrossMPerS;

    @Option(
            names = "--shape-factor",
            paramLabel = "F",
            description = "drag over that of a smooth sphere, 0.5 to 5",
            defaultValue = "1")
    private double shapeFactor;

    @Option(
            names = "--gravity-m-s2",
            paramLabel = "G",
            description = "gravity, 0.1 to 30 m/s²",
            defaultValue = "" + FlightTool.GRAVITY_M_PER_S2)
    private double gravityMPerS2;

    @Option(names = "--json", description = "as JSON")
    private boolean json;

    private FlightCommand(CommandContext context) {
        this.context = context;
    }

    /** The command with its subcommands. */
    static CommandLine line(CommandContext context) {
        CommandLine line = new CommandLine(new FlightCommand(context));
        line.addSubcommand(new FlightVaneCommand(context));
        line.addSubcommand(new FlightDragCommand(context));
        return line;
    }

    @Override
    public Integer call() throws Exception {
        boolean constant = dragPerM != null;
        if (constant == (diameterMm != null || densityKgPerM3 != null)) {
            throw new ParameterException(
                    spec.commandLine(), "give either --drag-per-m, or --diameter-mm and --density-kg-m3");
        }
        Launch launch = new Launch(
                OptionRange.within(spec, "--speed-m-s", speedMPerS, 0, 200),
                OptionRange.within(spec, "--angle-deg", angleDeg, -90, 90),
                OptionRange.within(spec, "--height-m", heightM, 0, 1000));
        OptionRange.within(spec, "--wind-m-s", windMPerS, -40, 40);
        OptionRange.within(spec, "--gravity-m-s2", gravityMPerS2, 0.1, 30);
        OptionRange.within(spec, "--wind-across-m-s", windAcrossMPerS, -40, 40);
        FlightTool.Conditions conditions = new FlightTool.Conditions(windMPerS, windAcrossMPerS, gravityMPerS2);
        Landing landing = constant
                ? FlightTool.flyWithConstantDrag(
                        OptionRange.within(spec, "--drag-per-m", dragPerM, 0, 100), launch, conditions)
                : FlightTool.fly(
                        new Granule(
                                OptionRange.within(spec, "--diameter-mm", diameterMm, 0.1, 20),
                                OptionRange.within(spec, "--density-kg-m3", densityKgPerM3, 200, 5000),
                                OptionRange.within(spec, "--shape-factor", shapeFactor, 0.5, 5)),
                        launch,
                        conditions);
        ObjectNode result = (ObjectNode) new ResultJson(context).tree(landing);
        if (windAcrossMPerS == 0) {
            // without wind across nothing carries it aside
            result.remove("acrossM");
        }
        ResultJson.print(context, json, result);
        return CommandFace.OK;
    }
}
