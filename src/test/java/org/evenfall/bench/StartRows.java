package org.evenfall.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.evenfall.wizard.MemoryTour;

/** The rows of starting; each makes what it needs when it is measured. */
final class StartRows {

    private static final String DEMO = Path.of("demo", "setup.json").toString();

    private StartRows() {}

    static List<Row> all() {
        return List.of(
                windows(
                        "start-up: process to first window, by packaging/run, an empty farm",
                        "process to first window of a window with a label",
                        screen -> folder -> screen.firstWindowMs(folder, StartCalls.byScript()),
                        (screen, calls) -> folder -> screen.firstWindowMs(folder, calls.bare("window"))),
                windows(
                        "memory at start, MB",
                        "memory of a window with a label, MB",
                        screen -> folder -> screen.windowMb(folder, StartCalls.byScript()),
                        (screen, calls) -> folder -> screen.windowMb(folder, calls.bare("window"))),
                windows(
                        "memory after every page of the demo, MB",
                        "memory of a window with a label, MB",
                        screen -> folder -> tourMb(screen, folder),
                        (screen, calls) -> folder -> screen.windowMb(folder, calls.bare("window"))),
                commands("--version by packaging/run", "--version"),
                commands("assess of one file by packaging/run", "assess", DEMO));
    }

    private interface OnScreen {
        ToDoubleFunction<Path> on(ScreenTimes screen);
    }

    private interface BareOnScreen {
        ToDoubleFunction<Path> on(ScreenTimes screen, StartCalls calls);
    }

    private static Row windows(String measured, String baseline, OnScreen work, BareOnScreen bare) {
        return new StartUpRow(measured, baseline, folder -> {
            StartCalls calls = StartCalls.in(folder);
            ScreenTimes screen = ScreenTimes.start();
            return new StartUpRow.Sides(work.on(screen), bare.on(screen, calls), screen::close);
        });
    }

    private static Row commands(String measured, String... arguments) {
        return new StartUpRow(measured, "bare Java prints a line", folder -> {
            StartCalls calls = StartCalls.in(folder);
            return new StartUpRow.Sides(
                    at -> StartUpRow.wholeMs(at, StartCalls.byScript(arguments)),
                    at -> StartUpRow.wholeMs(at, calls.bare()),
                    () -> {});
        });
    }

    private static double tourMb(ScreenTimes screen, Path folder) {
        try {
            ProcessBuilder builder = new ProcessBuilder(StartCalls.java(
                            "@packaging/java-flags",
                            "-XX:SharedArchiveFile=" + StartCalls.ARCHIVE.toAbsolutePath(),
                            "-Xlog:disable",
                            "-cp",
                            String.join(
                                    java.io.File.pathSeparator,
                                    Path.of("target", "evenfall.jar")
                                            .toAbsolutePath()
                                            .toString(),
                                    Path.of("target", "test-classes").toString()),
                            MemoryTour.class.getName(),
                            folder.toString()))
                    .redirectError(ProcessBuilder.Redirect.DISCARD);
            builder.environment().put("DISPLAY", screen.display());
            Process tour = builder.start();
            try (BufferedReader out = tour.inputReader()) {
                String line = out.lines()
                        .filter(printed -> printed.startsWith("VmRSS"))
                        .findFirst()
                        .orElseThrow(() -> new IllegalStateException("the tour did not end"));
                return Double.parseDouble(line.replaceAll("\\D+", "")) / 1024;
            }
        } catch (IOException failed) {
            throw new IllegalStateException(failed);
        }
    }
}
