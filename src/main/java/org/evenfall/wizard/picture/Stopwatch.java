package org.evenfall.wizard.picture;

import java.util.function.LongSupplier;

/** Time since a start, by a clock that is given. */
final class Stopwatch {

    private static final double NANOS_PER_SECOND = 1e9;

    private final LongSupplier nanoTime;
    private long startNanos;
    private double stoppedS;
    private State state = State.READY;

    /** What it does. */
    enum State {
        READY,
        RUNNING,
        STOPPED
    }

    /** @param nanoTime a clock, ns */
    Stopwatch(LongSupplier nanoTime) {
        this.nanoTime = nanoTime;
    }

    State state() {
        return state;
    }

    /** Starts, and stops where it runs. */
    void toggle() {
        if (state == State.RUNNING) {
            stoppedS = elapsedS();
            state = State.STOPPED;
        } else {
            startNanos = nanoTime.getAsLong();
            state = State.RUNNING;
        }
    }

    /** Seconds since the start, or from start to stop; 0 before. */
    double elapsedS() {
        return switch (state) {
            case READY -> 0;
            case RUNNING -> (nanoTime.getAsLong() - startNanos) / NANOS_PER_SECOND;
            case STOPPED -> stoppedS;
        };
    }
}
