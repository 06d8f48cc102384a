package org.evenfall.bench;

/** Plain work with floating-point numbers, the baseline of all that is computed: each step needs the one before. */
final class PlainLoop {

    static final String NAME = "1 000 000 times x = sin(x) + sqrt(x + 2)";

    private static final int TIMES = 1_000_000;

    private PlainLoop() {}

    static Object run() {
        double x = 1;
        for (int i = 0; i < TIMES; i++) {
            x = Math.sin(x) + Math.sqrt(x + 2);
        }
        return x;
    }
}
