package org.evenfall.result;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Sentences;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.MachinePaths;
import org.evenfall.setup.path.StartPaths;
import org.jspecify.annotations.Nullable;

/** Step 0 in words: the job and the machine. */
public final class StartLines {

    private StartLines() {}

    /** Season, tramline width, driving pattern and machine, as far as they are known. */
    public static List<ResultLine> job(Sentences words, Setup setup, @Nullable Double tramlineWidthM) {
        List<ResultLine> lines = new ArrayList<>();
        ResultLine.addTyped(lines, words, StartPaths.SEASON.labelKey(), StartPaths.SEASON.get(setup));
        ResultLine.add(lines, words, StartPaths.TRAMLINE_WIDTH.labelKey(), tramlineWidthM, 0, Unit.M);
        DrivingPattern pattern = StartPaths.DRIVING_PATTERN.get(setup);
        if (pattern != DrivingPattern.UNANSWERED) {
            lines.add(new ResultLine(words.text(StartPaths.DRIVING_PATTERN.labelKey()), words.choice(pattern)));
        }
        ResultLine.addTyped(lines, words, "start.machine", MachinePaths.NAME.get(setup));
        return lines;
    }
}
