package org.evenfall.bench;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.concurrent.FutureTask;

/**
 * Measures baseline and work in turns, after both are warm. In a turn they alternate several times, each for as long as the
 * other, so that other programs on the computer take from both alike.
 */
public final class Interleaved {

    private static final int MOST_TURNS = 31;
    private static final int LEAST_TURNS = 5;
    private static final int LEAST_ALTERNATIONS = 3;
    private static final Duration TURN = Duration.ofMillis(400);
    private static final Duration ALL_TURNS = Duration.ofSeconds(8);

    /** By the time of the processors; on a busy computer not longer than the other, by the clock. */
    private static final Duration WARM = Duration.ofSeconds(6);

    private static final Duration LONGEST_WARM_UP = Duration.ofSeconds(8);

    /** The clock is exact enough for such a time, ms. */
    private static final double LEAST_MS = 10;

    /** Whatever was computed may be seen by another thread, so that it is computed. */
    private static volatile Object kept = "";

    private final Side work;
    private final Side bare;

    private Interleaved(Side work, Side bare) {
        this.work = work;
        this.bare = bare;
    }

    /** Measures on the thread of the caller. */
    static Pairs measure(Work work, Work bare) throws Exception {
        return measure(work, bare, Runnable::run);
    }

    /**
     * Measures in turns.
     *
     * @param on runs each repetition, on the thread that the work needs
     */
    public static Pairs measure(Work work, Work bare, Executor on) throws Exception {
        return new Interleaved(new Side(work, on), new Side(bare, on)).pairs();
    }

    private Pairs pairs() throws Exception {
        double sampleMs = warmUp();
        Stopwatch all = new Stopwatch();
        List<Pairs.Pair> pairs = new ArrayList<>();
        while (pairs.size() < LEAST_TURNS || (pairs.size() < MOST_TURNS && all.shorterThan(ALL_TURNS))) {
            pairs.add(turn(sampleMs));
        }
        return new Pairs(pairs);
    }

    /** The time for which each is repeated at once, ms: in it the slower one is done at least once. */
    private double warmUp() throws Exception {
        Stopwatch clock = new Stopwatch();
        Duration busyBefore = busy();
        double workMs = Double.MAX_VALUE;
        double bareMs = Double.MAX_VALUE;
        do {
            workMs = Math.min(workMs, work.repeat(LEAST_MS).meanMs());
            bareMs = Math.min(bareMs, bare.repeat(LEAST_MS).meanMs());
        } while (busy().minus(busyBefore).compareTo(WARM) < 0 && clock.shorterThan(LONGEST_WARM_UP));
        return Math.max(LEAST_MS, Math.max(workMs, bareMs));
    }

    private Pairs.Pair turn(double sampleMs) throws Exception {
        Stopwatch clock = new Stopwatch();
        Repeated ofWork = Repeated.NONE;
        Repeated ofBare = Repeated.NONE;
        for (int i = 0; i < LEAST_ALTERNATIONS || clock.shorterThan(TURN); i++) {
            ofBare = ofBare.plus(bare.repeat(sampleMs));
            ofWork = ofWork.plus(work.repeat(sampleMs));
        }
        return new Pairs.Pair(ofWork.meanMs(), ofBare.meanMs());
    }

    /** What the processors did for this process. */
    private static Duration busy() {
        return ProcessHandle.current().info().totalCpuDuration().orElse(Duration.ZERO);
    }

    /** How often something was done in which time. */
    private record Repeated(int times, double ms) {

        static final Repeated NONE = new Repeated(0, 0);

        Repeated plus(Repeated other) {
            return new Repeated(times + other.times, ms + other.ms);
        }

        double meanMs() {
            return ms / times;
        }
    }

    /** One of the two, with the thread that it needs. */
    private record Side(Work work, Executor on) {

        /** Repeats it for so long, at least once. */
        Repeated repeat(double leastMs) throws Exception {
            FutureTask<Repeated> task = new FutureTask<>(() -> {
                Stopwatch clock = new Stopwatch();
                int times = 0;
                do {
                    kept = work.once();
                    times++;
                } while (clock.ms() < leastMs);
                return new Repeated(times, clock.ms());
            });
            on.execute(task);
            return task.get();
        }
    }
}
