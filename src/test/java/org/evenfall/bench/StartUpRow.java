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
    private final ToDoubleFunction<Path> work;
    private final ToDoubleFunction<Path> bare;

    /**
     * Makes a row.
     *
     * @param work runs the program once and gives the figure, from a folder of its own for its files
     * @param bare the same of the bare one
     */
    StartUpRow(String measured, String baseline, ToDoubleFunction<Path> work, ToDoubleFunction<Path> bare) {
        this.measured = measured;
        this.baseline = baseline;
        this.work = work;
        this.bare = bare;
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
        // what is read for the first time comes from the disk
        work.applyAsDouble(folder);
        bare.applyAsDouble(folder);
        List<Pairs.Pair> pairs = new ArrayList<>();
        for (int i = 0; i < TURNS; i++) {
            double bareNow = bare.applyAsDouble(folder);
            pairs.add(new Pairs.Pair(work.applyAsDouble(folder), bareNow));
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
