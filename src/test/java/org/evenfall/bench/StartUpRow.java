package org.evenfall.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.ToDoubleFunction;

/**
 * One thing of starting, in a process of its own: the program against a bare one with the same arguments for the virtual
 * machine and an archive of its own classes. Both in turns, nine times.
 */
final class StartUpRow implements Row {

    private static final int TURNS = 9;

    private final String measured;
    private final String baseline;
    private final Preparation preparation;

    /** What is measured against what; each runs once and gives its figure, from a folder of its own for its files. */
    record Sides(ToDoubleFunction<Path> work, ToDoubleFunction<Path> bare, Runnable close) {}

    /** Makes what the measuring needs, in a folder. */
    interface Preparation {
        Sides in(Path folder) throws Exception;
    }

    StartUpRow(String measured, String baseline, Preparation preparation) {
        this.measured = measured;
        this.baseline = baseline;
        this.preparation = preparation;
    }

    @Override
    public String measured() {
        return measured;
    }

    @Override
    public String baseline() {
        return baseline;
    }

    @Override
    public Pairs measure() throws Exception {
        Path folder = Files.createTempDirectory("evenfall-start");
        Sides sides = preparation.in(folder);
        List<Pairs.Pair> pairs = new ArrayList<>();
        try {
            // what is read for the first time comes from the disk
            sides.work().applyAsDouble(folder);
            sides.bare().applyAsDouble(folder);
            for (int i = 0; i < TURNS; i++) {
                double bareNow = sides.bare().applyAsDouble(folder);
                pairs.add(new Pairs.Pair(sides.work().applyAsDouble(folder), bareNow));
            }
        } finally {
            sides.close().run();
        }
        return new Pairs(pairs);
    }

    /** Time of a whole process, ms. */
    static double wholeMs(Path folder, List<String> call) {
        Stopwatch clock = new Stopwatch();
        try {
            Process process = start(folder, call);
            if (!process.waitFor(60, TimeUnit.SECONDS) || process.exitValue() != 0) {
                process.destroyForcibly();
                throw new IllegalStateException(String.join(" ", call) + " failed");
            }
        } catch (IOException | InterruptedException failed) {
            throw new IllegalStateException(failed);
        }
        return clock.ms();
    }

    /** Starts a process whose farm is in a folder; what it prints is dropped. */
    static Process start(Path folder, List<String> call) throws IOException {
        ProcessBuilder builder =
                new ProcessBuilder(call).redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD);
        builder.environment().put("EVENFALL_HOME", folder.toString());
        return builder.start();
    }
}
