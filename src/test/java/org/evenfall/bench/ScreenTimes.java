package org.evenfall.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Windows of other processes on a virtual screen: when the first comes, and what memory its process has later. */
final class ScreenTimes implements AutoCloseable {

    /** Assumption: long enough to draw a window, ms. */
    private static final long SETTLED_MS = 2000;

    private final Process screen;
    private final Process manager;
    private final String display;

    private ScreenTimes(Process screen, Process manager, String display) {
        this.screen = screen;
        this.manager = manager;
        this.display = display;
    }

    /** Starts a screen. */
    static ScreenTimes start() throws IOException, NotMeasuredException, InterruptedException {
        Process screen;
        try {
            screen = new ProcessBuilder("Xvfb", "-displayfd", "1", "-screen", "0", "1366x768x24")
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException missing) {
            throw new NotMeasuredException("no Xvfb");
        }
        String display = ":" + screen.inputReader().readLine();
        ProcessBuilder manager =
                new ProcessBuilder("openbox").redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD);
        manager.environment().put("DISPLAY", display);
        Process openbox = manager.start();
        TimeUnit.MILLISECONDS.sleep(SETTLED_MS);
        return new ScreenTimes(screen, openbox, display);
    }

    /** Time from the start of a process until the window manager shows its window, ms. */
    double firstWindowMs(Path folder, List<String> call) {
        return withWindow(folder, call, (process, ms) -> ms);
    }

    /** Resident memory of a process when its window has been there for a while, MB. */
    double windowMb(Path folder, List<String> call) {
        return withWindow(folder, call, (process, ms) -> {
            TimeUnit.MILLISECONDS.sleep(SETTLED_MS);
            return residentMb(process.pid());
        });
    }

    /** What is measured once the window is there. */
    private interface Measure {
        double of(Process process, double ms) throws Exception;
    }

    private double withWindow(Path folder, List<String> call, Measure measure) {
        try {
            ProcessBuilder spying = new ProcessBuilder("xprop", "-spy", "-root", "_NET_CLIENT_LIST");
            spying.environment().put("DISPLAY", display);
            Process spy = spying.start();
            try (BufferedReader changes = spy.inputReader()) {
                changes.readLine();
                ProcessBuilder program = new ProcessBuilder(call)
                        .redirectErrorStream(true)
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD);
                program.environment().put("EVENFALL_HOME", folder.toString());
                program.environment().put("DISPLAY", display);
                Stopwatch clock = new Stopwatch();
                Process process = program.start();
                try {
                    changes.readLine();
                    return measure.of(process, clock.ms());
                } finally {
                    process.destroyForcibly().waitFor();
                }
            } finally {
                spy.destroy();
            }
        } catch (Exception failed) {
            throw new IllegalStateException(failed);
        }
    }

    static double residentMb(long pid) throws IOException {
        return Files.readAllLines(Path.of("/proc", Long.toString(pid), "status")).stream()
                .filter(line -> line.startsWith("VmRSS"))
                .mapToDouble(line -> Double.parseDouble(line.replaceAll("\\D+", "")) / 1024)
                .findFirst()
                .orElseThrow();
    }

    /** What else a test process needs to open a window there. */
    String display() {
        return display;
    }

    @Override
    public void close() {
        manager.destroy();
        screen.destroy();
    }
}
