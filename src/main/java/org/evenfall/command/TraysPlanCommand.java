package org.evenfall.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.concurrent.Callable;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.granule.SizeDistribution;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.TraysResult;
import org.evenfall.setup.path.StartPaths;
import org.evenfall.setup.tool.TrayPlanTool;
import org.evenfall.store.InputFileException;
import org.evenfall.trays.CatchPlan;
import org.evenfall.trays.StripLoad;
import org.evenfall.trays.TrayLayout;
import org.evenfall.trays.WheelMarks;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Places of the trays and the number of runs of the three passes. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        description =
                "Where the trays are placed and how often to drive: from a setup, or from width, rate, product, tray.")
final class TraysPlanCommand implements Callable<Integer> {

    private final CommandContext context;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "SETUP.json", arity = "0..1", description = "setup file; the options are then not needed")
    private @Nullable String file;

    @Option(names = "--width-m", paramLabel = "W", description = "tramline width, 4 to 60 m")
    private @Nullable Double widthM;

    @Option(names = "--rate-kg-ha", paramLabel = "R", description = "product rate, 5 to 1000 kg/ha")
    private @Nullable Double rateKgPerHa;

    @Option(names = "--d50-mm", paramLabel = "D", description = "median diameter, 0.3 to 8 mm", defaultValue = "3.2")
    private double d50Mm;

    @Option(
            names = "--geometric-sd",
            paramLabel = "G",
            description = "spread of the sizes, 1 to 2.5",
            defaultValue = "1.2")
    private double geometricSd;

    @Option(
            names = "--density-kg-m3",
            paramLabel = "R",
            description = "density of a granule, 500 to 3000 kg/m³",
            defaultValue = "1260")
    private double densityKgPerM3;

    @Option(names = "--tray-length-cm", paramLabel = "L", description = "tray, 10 to 200 cm", defaultValue = "50")
    private double lengthCm;

    @Option(names = "--tray-width-cm", paramLabel = "B", description = "tray, 10 to 200 cm", defaultValue = "50")
    private double acrossCm;

    @Option(
            names = "--trays",
            paramLabel = "N",
            description = "number of trays, 5 to 33; default 7, from 28 m on 9 to 13 by the width")
    private @Nullable Integer trays;

    @Option(
            names = "--nitrogen-percent",
            paramLabel = "N",
            description = "nitrogen content of the product, 1 to 60; for the nitrogen that the runs add to the strip")
    private @Nullable Double nitrogenPercent;

    @Option(
            names = "--reading-step-g",
            paramLabel = "S",
            description = "smallest step read, 0 to 20 g",
            defaultValue = "0")
    private double stepG;

    @Option(names = "--tube-bore-mm", paramLabel = "B", description = "inner diameter of the tube, 4 to 100 mm")
    private @Nullable Double boreMm;

    @Option(names = "--reading-step-mm", paramLabel = "S", description = "smallest step read on the tube, 0 to 50 mm")
    private @Nullable Double stepMm;

    @Option(
            names = "--bulk-density-kg-l",
            paramLabel = "R",
            description = "bulk density of the product in the tube, 0.4 to 1.6 kg/L",
            defaultValue = "0.75")
    private double bulkKgPerL;

    @Option(names = "--track-m", paramLabel = "T", description = "track width, 0.8 to 4 m", defaultValue = "1.8")
    private double trackM;

    @Option(names = "--tyre-cm", paramLabel = "T", description = "width of a tyre, 10 to 200 cm", defaultValue = "50")
    private double tyreCm;

    @Option(
            names = "--driving",
            paramLabel = "HOW",
            converter = TraysCommand.Driving.class,
            description = TraysCommand.Driving.BACK_AND_FORTH + " or " + TraysCommand.Driving.ROUND_AND_ROUND,
            defaultValue = TraysCommand.Driving.BACK_AND_FORTH)
    private DrivingPattern driving = DrivingPattern.BACK_AND_FORTH;

    @Option(names = "--json", description = "as JSON")
    private boolean json;

    TraysPlanCommand(CommandContext context) {
        this.context = context;
    }

    /** Where the trays are; catches, runs and what they add to the strip, null without a rate. */
    private record Plan(
            TrayLayout layout,
            @Nullable CatchPlan runs,
            @Nullable StripLoad strip) {}

    @Override
    public Integer call() throws Exception {
        Plan plan = file != null ? ofSetup(file) : ofOptions();
        if (json) {
            ObjectNode result = context.json().mapper().createObjectNode();
            result.set("layout", new ResultJson(context).tree(plan.layout()));
            result.set("plan", new ResultJson(context).tree(plan.runs()));
            result.set("strip", new ResultJson(context).tree(plan.strip()));
            context.out().println(result.toPrettyString());
        } else {
            context.out().println(TraysPlanText.of(plan.layout(), plan.runs(), plan.strip(), context.words()));
        }
        return CommandFace.OK;
    }

    private Plan ofSetup(String setup) throws InputFileException {
        TraysResult result = Assessor.assess(SetupInputs.read(context, setup)).trays();
        if (result.layout() == null) {
            throw new InputFileException(
                    setup, StartPaths.TRAMLINE_WIDTH.pointer(), context.words().text("missing.widthFirst"));
        }
        return new Plan(result.layout(), result.plan(), result.strip());
    }

    private Plan ofOptions() {
        double width = OptionRange.within(spec, "--width-m", widthM, 4, 60);
        double rate = OptionRange.within(spec, "--rate-kg-ha", rateKgPerHa, 5, 1000);
        TrayPlanTool.Trays catching = new TrayPlanTool.Trays(
                trays == null
                        ? TrayPlanTool.proposedTrays(width)
                        : (int) OptionRange.within(
                                spec,
                                "--trays",
                                trays.doubleValue(),
                                TrayPlanTool.FEWEST_TRAYS,
                                TrayPlanTool.MOST_TRAYS),
                Unit.CM.to(Unit.M, OptionRange.within(spec, "--tray-length-cm", lengthCm, 10, 200)),
                Unit.CM.to(Unit.M, OptionRange.within(spec, "--tray-width-cm", acrossCm, 10, 200)));
        SizeDistribution sizes = SizeDistribution.exact(
                OptionRange.within(spec, "--d50-mm", d50Mm, 0.3, 8),
                OptionRange.within(spec, "--geometric-sd", geometricSd, 1, 2.5));
        double density = OptionRange.within(spec, "--density-kg-m3", densityKgPerM3, 500, 3000);
        WheelMarks marks = new WheelMarks(
                OptionRange.within(spec, "--track-m", trackM, 0.8, 4),
                Unit.CM.to(Unit.M, OptionRange.within(spec, "--tyre-cm", tyreCm, 10, 200)));
        Double nitrogen =
                nitrogenPercent == null ? null : OptionRange.within(spec, "--nitrogen-percent", nitrogenPercent, 1, 60);
        CatchPlan runs = TrayPlanTool.runs(rate, catching, sizes, density, readingStepG());
        return new Plan(
                TrayPlanTool.layout(width, catching, driving, marks),
                runs,
                TrayPlanTool.strip(rate, nitrogen, runs, width));
    }

    /** Weight of the smallest step read on scale or tube, g. */
    private double readingStepG() {
        if (boreMm == null && stepMm == null) {
            return OptionRange.within(spec, "--reading-step-g", stepG, 0, 20);
        }
        return TrayPlanTool.tubeG(
                OptionRange.within(spec, "--reading-step-mm", stepMm, 0, 50),
                OptionRange.within(spec, "--tube-bore-mm", boreMm, 4, 100),
                OptionRange.within(spec, "--bulk-density-kg-l", bulkKgPerL, 0.4, 1.6));
    }
}
