package org.evenfall.trays.ground;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;

/** The measures of many loops as lines of a table. */
final class LoopTable {

    static final String HEAD = String.format(
            Locale.ROOT,
            "%-8s %4s | %7s %6s | %-17s | %5s %5s | %5s %6s | %-15s | %s",
            "rule",
            "n",
            "<=10 in",
            "folded",
            "end <=10/12/15 %",
            "tests",
            "ratio",
            "worst",
            "worse",
            "covered tray/fi",
            "KEEP: of them true >10, >12");

    private LoopTable() {}

    /** @param naiveTests mean tests of the naive rule; NaN where it did not run */
    static String line(String name, List<Loop> loops, double naiveTests) {
        List<Loop> folded = loops.stream().filter(Loop::folded).toList();
        List<Loop.Forecast> forecasts =
                loops.stream().flatMap(loop -> loop.forecasts().stream()).toList();
        long kept = loops.stream().filter(Loop::kept).count();
        return String.format(
                Locale.ROOT,
                "%-8s %4d | %6.1f%% %5.0f%% | %5.1f %5.1f %5.1f | %5.2f %5.2f | %5.1f %5.1f%% | %15s | %d: %d, %d",
                name.toLowerCase(Locale.ROOT),
                loops.size(),
                withinThree(loops),
                folded.isEmpty() ? Double.NaN : withinThree(folded),
                endAtMost(loops, 10),
                endAtMost(loops, 12),
                endAtMost(loops, 15),
                meanTests(loops),
                meanTests(loops) / naiveTests,
                loops.stream().mapToDouble(Loop::endPercent).max().orElseThrow(),
                worse(loops),
                forecasts.isEmpty()
                        ? "-"
                        : String.format(
                                Locale.ROOT,
                                "%.0f/%.0f (%d)",
                                share(forecasts, Loop.Forecast::tray),
                                share(forecasts, Loop.Forecast::field),
                                forecasts.size()),
                kept,
                loops.stream()
                        .filter(loop -> loop.kept() && loop.endPercent() > 10)
                        .count(),
                loops.stream()
                        .filter(loop -> loop.kept() && loop.endPercent() > 12)
                        .count());
    }

    /** Share with a true field CV of at most 10 % within three adjustments, %. */
    static double withinThree(List<Loop> loops) {
        return share(loops, loop -> loop.afterThreePercent() <= 10);
    }

    static double endAtMost(List<Loop> loops, double percent) {
        return share(loops, loop -> loop.endPercent() <= percent);
    }

    /** Share that ended more than half a point worse than it started, %. */
    static double worse(List<Loop> loops) {
        return share(loops, loop -> loop.endPercent() > loop.startPercent() + 0.5);
    }

    static double meanTests(List<Loop> loops) {
        return loops.stream().mapToInt(Loop::tests).average().orElseThrow();
    }

    static <T> double share(List<T> all, Predicate<T> counted) {
        return 100.0 * all.stream().filter(counted).count() / all.size();
    }
}
