package org.evenfall.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.evenfall.flight.Air;
import org.evenfall.flight.Flight;
import org.evenfall.flight.Granule;
import org.evenfall.flight.Landing;
import org.evenfall.flight.Launch;
import org.evenfall.flight.SphereDrag;
import org.evenfall.flight.Vane;
import org.evenfall.flight.VaneOutlet;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The flight of one granule, for people who want to check the model. */
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
            defaultValue = "9.80665")
    private double gravityMPerS2;

    @Option(names = "--json", description = "as JSON")
    private boolean json;

    private FlightCommand(CommandContext context) {
        this.context = context;
    }

    static CommandLine line(CommandContext context) {
        CommandLine line = new CommandLine(new FlightCommand(context));
        line.addSubcommand(new VaneCommand(context));
        line.addSubcommand(new DragCommand(context));
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
                within(spec, "--speed-m-s", speedMPerS, 0, 200),
                within(spec, "--angle-deg", angleDeg, -90, 90),
                within(spec, "--height-m", heightM, 0, 1000));
        within(spec, "--wind-m-s", windMPerS, -40, 40);
        within(spec, "--gravity-m-s2", gravityMPerS2, 0.1, 30);
        within(spec, "--wind-across-m-s", windAcrossMPerS, -40, 40);
        Landing landing = constant
                ? Flight.fly(
                        constant(within(spec, "--drag-per-m", dragPerM, 0, 100)),
                        launch,
                        windMPerS,
                        windAcrossMPerS,
                        gravityMPerS2)
                : Flight.fly(
                        new Granule(
                                within(spec, "--diameter-mm", diameterMm, 0.1, 20),
                                within(spec, "--density-kg-m3", densityKgPerM3, 200, 5000),
                                within(spec, "--shape-factor", shapeFactor, 0.5, 5)),
                        launch,
                        windMPerS,
                        windAcrossMPerS,
                        gravityMPerS2,
                        Air.STANDARD);
        ObjectNode result = (ObjectNode) new ResultJson(context).tree(landing);
        if (windAcrossMPerS == 0) {
            // nothing carries it aside
            result.remove("acrossM");
        }
        print(context, json, result);
        return CommandFace.OK;
    }

    private static Flight.DragLaw constant(double perM) {
        return speed -> perM;
    }

    /** The value of an option that must be there and within limits. */
    static double within(CommandSpec spec, String option, @Nullable Double value, double low, double high) {
        if (value == null || !(value >= low && value <= high)) {
            throw new ParameterException(
                    spec.commandLine(),
                    String.format(
                            Locale.ROOT,
                            "%s: %s; allowed is %s to %s",
                            option,
                            value == null ? "is missing" : value.toString(),
                            plain(low),
                            plain(high)));
        }
        return value;
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    static void print(CommandContext context, boolean json, Object result) throws Exception {
        if (json) {
            context.out().println(context.json().mapper().writeValueAsString(result));
            return;
        }
        new ResultJson(context)
                .tree(result)
                .properties()
                .forEach(entry -> context.out()
                        .printf(
                                context.locale(),
                                "%s  %.4f%n",
                                entry.getKey(),
                                entry.getValue().doubleValue()));
    }

    /** How a granule leaves a straight vane. */
    @Command(
            name = "vane",
            mixinStandardHelpOptions = true,
            description = "How a granule leaves a straight vane: a model.")
    static final class VaneCommand implements Callable<Integer> {

        private final CommandContext context;

        @Spec
        private CommandSpec spec = CommandSpec.create();

        @Option(names = "--rpm", paramLabel = "N", description = "disc speed, 1 to 5000 rpm")
        private @Nullable Double rpm;

        @Option(names = "--radius-m", paramLabel = "R", description = "centre to vane tip, 0.01 to 2 m")
        private @Nullable Double radiusM;

        @Option(
                names = "--drop-radius-m",
                paramLabel = "R0",
                description = "centre to where the granule falls, below R")
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
                defaultValue = "9.80665")
        private double gravityMPerS2;

        @Option(names = "--json", description = "as JSON")
        private boolean json;

        VaneCommand(CommandContext context) {
            this.context = context;
        }

        @Override
        public Integer call() throws Exception {
            double radius = within(spec, "--radius-m", radiusM, 0.01, 2);
            double drop = within(spec, "--drop-radius-m", dropRadiusM, 0.0001, 0.999 * radius);
            within(spec, "--offset-m", offsetM, -0.999 * drop, 0.999 * drop);
            within(spec, "--gravity-m-s2", gravityMPerS2, 0, 30);
            Vane vane = new Vane(radius, drop, offsetM, within(spec, "--friction", friction, 0, 1.5));
            double speed = within(spec, "--rpm", rpm, 1, 5000);
            if (!vane.moves(speed, gravityMPerS2)) {
                throw new ParameterException(
                        spec.commandLine(), "--rpm: " + speed + "; at this speed the granule stays where it falls");
            }
            VaneOutlet outlet = vane.outlet(speed, gravityMPerS2);
            print(context, json, outlet);
            return CommandFace.OK;
        }
    }

    /** Drag coefficient of a sphere. */
    @Command(name = "drag", mixinStandardHelpOptions = true, description = "Drag coefficient of a smooth sphere.")
    static final class DragCommand implements Callable<Integer> {

        private final CommandContext context;

        @Spec
        private CommandSpec spec = CommandSpec.create();

        @Option(names = "--reynolds", paramLabel = "RE", description = "Reynolds number, 0.0001 to 200000")
        private @Nullable Double reynolds;

        @Option(names = "--json", description = "as JSON")
        private boolean json;

        DragCommand(CommandContext context) {
            this.context = context;
        }

        /** Drag coefficient. */
        record Drag(double dragCoefficient) {}

        @Override
        public Integer call() throws Exception {
            print(context, json, new Drag(SphereDrag.coefficient(within(spec, "--reynolds", reynolds, 0.0001, 2e5))));
            return CommandFace.OK;
        }
    }
}
