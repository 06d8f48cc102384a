package org.evenfall.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.flight.SpreadPattern;
import org.evenfall.flight.WidthScan;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.tool.SinglePassTool;
import org.evenfall.store.InputText;
import org.evenfall.store.SinglePassCsv;
import org.evenfall.trays.CvLimits;
import org.evenfall.trays.OverlapResult;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** One pass over a line of trays, overlap over itself at a working width. */
@Command(
        name = "overlap",
        mixinStandardHelpOptions = true,
        description = {
            "Lays one pass over itself at a working width.",
            "LINE.csv: position,amount; one length unit, negative left of the pass."
        })
final class TraysOverlapCommand implements Callable<Integer> {

    /** Most passes that reach over one place. Assumption: with more the width is in another unit than the positions. */
    private static final int MOST_PASSES = 500;

    private static final double NARROWEST = 0.01;

    private final CommandContext context;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "LINE.csv", description = "line of trays")
    private String file = "";

    @Option(
            names = "--width",
            paramLabel = "W",
            required = true,
            description = "working width, in the unit of the positions")
    private double width;

    @Option(
            names = "--driving",
            paramLabel = "HOW",
            converter = TraysCommand.Driving.class,
            required = true,
            description = TraysCommand.Driving.BACK_AND_FORTH + " or " + TraysCommand.Driving.ROUND_AND_ROUND)
    private DrivingPattern driving = DrivingPattern.BACK_AND_FORTH;

    @Option(names = "--scan", description = "every working width with a CV of at most 10 and 15 %%")
    private boolean scan;

    @Option(names = "--json", description = "as JSON")
    private boolean json;

    TraysOverlapCommand(CommandContext context) {
        this.context = context;
    }

    @Override
    public Integer call() throws Exception {
        OptionRange.within(spec, "--width", width, NARROWEST, SinglePassCsv.FARTHEST);
        SpreadPattern line = SinglePassCsv.read(InputText.read(context.path(file), file), file);
        // narrowest in hundredths, so that it reads well
        double narrowest =
                Math.max(NARROWEST, Math.ceil(100 * (line.rightmostM() - line.leftmostM()) / MOST_PASSES) / 100);
        OptionRange.within(spec, "--width", width, narrowest, SinglePassCsv.FARTHEST);
        OverlapResult overlap = SinglePassTool.overlap(line, driving, width);
        WidthScan widths = scan ? SinglePassTool.widths(line, driving) : null;
        if (json) {
            ObjectNode result = (ObjectNode) new ResultJson(context).tree(overlap);
            result.put("driving", TraysCommand.Driving.word(driving));
            if (widths != null) {
                result.set("atMost10Percent", intervals(good(widths)));
                result.set("atMost15Percent", intervals(acceptable(widths)));
            }
            context.out().println(result.toPrettyString());
            return CommandFace.OK;
        }
        context.out().println(words(overlap, widths));
        return CommandFace.OK;
    }

    private static List<WidthScan.Interval> good(WidthScan widths) {
        return widths.atMost(CvLimits.GOOD_PERCENT);
    }

    private static List<WidthScan.Interval> acceptable(WidthScan widths) {
        return widths.atMost(CvLimits.FIELD_PERCENT);
    }

    private ArrayNode intervals(List<WidthScan.Interval> intervals) {
        ArrayNode list = context.json().mapper().createArrayNode();
        intervals.forEach(one -> list.addObject().put("from", one.from()).put("to", one.to()));
        return list;
    }

    private String words(OverlapResult overlap, @Nullable WidthScan widths) {
        Sentences words = context.words();
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < overlap.positions().size(); i++) {
            lines.add(String.format(
                    Locale.ROOT,
                    "%10.3f  %10.4f",
                    overlap.positions().get(i),
                    overlap.overlapped().get(i)));
        }
        lines.add(words.text("overlap.mean", Arg.number(overlap.mean(), 4, Unit.NONE)));
        lines.add(
                overlap.cvPercent() == null
                        ? words.text("overlap.nothing")
                        : words.text("overlap.cv", Arg.number(overlap.cvPercent(), 1, Unit.PERCENT)));
        if (overlap.halfRateWidth() != null) {
            lines.add(words.text("overlap.half", Arg.number(overlap.halfRateWidth(), 2, Unit.NONE)));
        }
        lines.add(words.text("overlap.sides", Arg.number(overlap.leftRightPercent(), 1, Unit.PERCENT)));
        if (overlap.edgePercent() > SinglePassTool.EDGE_PERCENT) {
            lines.add(words.text("trays.line.edge", Arg.number(overlap.edgePercent(), 0, Unit.PERCENT)));
        }
        if (widths != null) {
            lines.add(words.text("overlap.ten", Arg.text(intervalText(good(widths)))));
            lines.add(words.text("overlap.fifteen", Arg.text(intervalText(acceptable(widths)))));
        }
        return String.join(System.lineSeparator(), lines);
    }

    private String intervalText(List<WidthScan.Interval> intervals) {
        Sentences words = context.words();
        List<String> texts = intervals.stream()
                .map(one -> words.text(
                        "trays.line.interval",
                        Arg.number(one.from(), 1, Unit.NONE),
                        Arg.number(one.to(), 1, Unit.NONE)))
                .toList();
        return texts.isEmpty() ? words.text("trays.line.none") : String.join("; ", texts);
    }
}
