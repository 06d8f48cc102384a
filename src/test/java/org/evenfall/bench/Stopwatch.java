package org.evenfall.bench;

import java.time.Duration;

/** Time since it was made. */
final class Stopwatch {

    private final long from = System.nanoTime();

    double ms() {
        return (System.nanoTime() - from) / 1e6;
    }

    boolean shorterThan(Duration other) {
        return System.nanoTime() - from < other.toNanos();
    }
}
