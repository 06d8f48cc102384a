package org.evenfall.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.flight.PassPattern;
import org.evenfall.flight.WidthScan;
import org.evenfall.store.LineCsv;
import org.evenfall.store.SetupFileException;
import org.evenfall.trays.PassLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** One pass over a line of trays, laid over itself at a working width. */
@Command(
        name = "overlap",
        mixinStandardHelpOptions = true,
        description = {
            "Lays one pass over itself at a working width.",
            "LINE.csv: position,amount; one length unit, negative left of the pass."
        })
final class TraysOverlapCommand implements Callable<Integer> {

    private final Surroundings around;

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

    TraysOverlapCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() throws Exception {
        FlightCommand.within(spec, "--width", width, 0.01, 1000);
        PassPattern line = LineCsv.read(text(), file);
        PassLine laid = PassLine.of(line, driving, width);
        WidthScan widths = scan ? PassLine.scan(line, driving) : null;
        if (json) {
            ObjectNode result = (ObjectNode) new ResultJson(around).tree(laid);
            result.put("driving", TraysCommand.Driving.word(driving));
            if (widths != null) {
                result.set("atMost10Percent", intervals(widths.atMost10()));
                result.set("atMost15Percent", intervals(widths.atMost15()));
            }
            around.out().println(result.toPrettyString());
            return CommandFace.OK;
        }
        around.out().print(words(laid, widths));
        return CommandFace.OK;
    }

    private String text() throws SetupFileException {
        if (!Files.exists(around.path(file))) {
            throw new SetupFileException(file, "", "no such file");
        }
        try {
            return Files.readString(around.path(file), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new SetupFileException(file, "", "cannot be read as text");
        }
    }

    private ArrayNode intervals(List<WidthScan.Interval> intervals) {
        ArrayNode list = around.json().mapper().createArrayNode();
        intervals.forEach(one -> list.addObject().put("from", one.from()).put("to", one.to()));
        return list;
    }

    private static String words(PassLine laid, @org.jspecify.annotations.Nullable WidthScan widths) {
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < laid.positions().size(); i++) {
            words.append(String.format(
                    Locale.ROOT,
                    "%10.3f  %10.4f%n",
                    laid.positions().get(i),
                    laid.overlapped().get(i)));
        }
        words.append(String.format(Locale.ROOT, "mean  %.4f%n", laid.mean()));
        words.append(
                laid.cvPercent() == null
                        ? "no CV: nothing lies there%n".formatted()
                        : String.format(Locale.ROOT, "CV  %.1f %% (n - 1)%n", laid.cvPercent()));
        if (laid.halfRateWidth() != null) {
            words.append(String.format(Locale.ROOT, "half-rate width  %.2f%n", laid.halfRateWidth()));
        }
        words.append(String.format(Locale.ROOT, "left less right  %.1f %% of all%n", laid.leftRightPercent()));
        if (laid.edgePercent() > PassLine.EDGE_PERCENT) {
            words.append(String.format(
                    Locale.ROOT,
                    "The outermost trays still catch %.0f %% of the most: lay the line further out.%n",
                    laid.edgePercent()));
        }
        if (widths != null) {
            words.append("widths with a CV of at most 10 %: ").append(told(widths.atMost10()));
            words.append("widths with a CV of at most 15 %: ").append(told(widths.atMost15()));
        }
        return words.toString();
    }

    private static String told(List<WidthScan.Interval> intervals) {
        List<String> words = intervals.stream()
                .map(one -> String.format(Locale.ROOT, "%.1f to %.1f", one.from(), one.to()))
                .toList();
        return (words.isEmpty() ? "none" : String.join("; ", words)) + System.lineSeparator();
    }
}
