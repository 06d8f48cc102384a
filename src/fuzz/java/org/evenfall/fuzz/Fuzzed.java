package org.evenfall.fuzz;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** What the fuzzer calls, by these names: first with the name of a target, then with one input after another. */
public final class Fuzzed {

    private static final double MOST_CPU_SECONDS = 5;

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private static Targets.Target target = input -> {};

    private Fuzzed() {}

    /**
     * Chooses the target and gives it the kept inputs once, since loading classes takes longer than any input.
     *
     * @param arguments name of the target, folder of its kept inputs
     */
    public static void fuzzerInitialize(String[] arguments) throws Exception {
        target = Objects.requireNonNull(Targets.ALL.get(arguments[0]), arguments[0]);
        for (Path kept : files(Path.of(arguments[1]))) {
            target.take(Files.readAllBytes(kept));
        }
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.toList();
        }
    }

    /** Takes one input; it may keep the processor busy for five seconds. */
    public static void fuzzerTestOneInput(byte[] input) throws Exception {
        long begin = THREADS.getCurrentThreadCpuTime();
        target.take(input);
        double seconds = (THREADS.getCurrentThreadCpuTime() - begin) / 1e9;
        if (seconds > MOST_CPU_SECONDS) {
            throw new AssertionError("took " + seconds + " s");
        }
    }
}
