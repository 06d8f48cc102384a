package org.evenfall.result;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.flight.WidthScan;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.SinglePassTest;
import org.jspecify.annotations.Nullable;

/** Step 6 in words, the other way: one long pass overlapped by arithmetic. */
public final class SinglePassLines {

    /** Less is alike, %: it rounds to nothing. */
    private static final double NOTHING_PERCENT = 0.5;

    private SinglePassLines() {}

    /** CV at the tramline width, widths that are even, side to side; none without a line of trays. */
    public static List<ResultLine> figures(Sentences words, @Nullable SinglePassTest line) {
        List<ResultLine> lines = new ArrayList<>();
        if (line == null) {
            return lines;
        }
        if (line.overlap().cvPercent() != null) {
            lines.add(new ResultLine(
                    words.text("trays.line.at", Arg.number(line.overlap().width(), 0, Unit.M)),
                    words.text("trays.line.cvShort", Arg.number(line.overlap().cvPercent(), 0, Unit.PERCENT))));
        }
        lines.add(new ResultLine(words.text("trays.line.ten"), widths(words, line.atMost10())));
        lines.add(new ResultLine(words.text("trays.line.fifteen"), widths(words, line.atMost15())));
        ResultLine.add(lines, words, "trays.line.half", line.overlap().halfRateWidth(), 0, Unit.M);
        lines.add(new ResultLine(
                words.text("trays.figure.sides"), more(words, line.overlap().leftRightPercent())));
        return lines;
    }

    private static String widths(Sentences words, List<WidthScan.Interval> intervals) {
        return intervals.isEmpty()
                ? words.text("trays.line.none")
                : intervals.stream()
                        .map(one -> words.text(
                                "trays.line.interval",
                                Arg.number(one.from(), 0, Unit.NONE),
                                Arg.number(one.to(), 0, Unit.M)))
                        .collect(Collectors.joining(", "));
    }

    /** Which side gets more, and by how much. */
    private static String more(Sentences words, double percent) {
        return Math.abs(percent) < NOTHING_PERCENT
                ? words.text("trays.alike")
                : words.text(
                        percent > 0 ? "trays.leftMore" : "trays.rightMore",
                        Arg.number(Math.abs(percent), 0, Unit.PERCENT));
    }
}
