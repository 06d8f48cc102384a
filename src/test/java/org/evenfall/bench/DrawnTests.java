package org.evenfall.bench;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.trays.FieldCv;
import org.evenfall.trays.Tramlines;

/** Estimates the field CV of one drawn tray test after another, from even to uneven, over 28 m. */
final class DrawnTests implements Work {

    private static final Tramlines TRAMLINES = new Tramlines(28, DrivingPattern.BACK_AND_FORTH);
    private static final int TESTS = 50;
    private static final double NOISE_PERCENT = 5;

    private final List<Double> positionsM;
    private final List<List<Double>> tests;
    private int next;

    DrawnTests(int trays) {
        Random random = new Random(1);
        positionsM = IntStream.range(0, trays)
                .mapToObj(i -> TRAMLINES.widthM() * (i / (trays - 1.0) - 0.5))
                .toList();
        tests = IntStream.range(0, TESTS)
                .mapToObj(k -> positionsM.stream()
                        .map(x -> 1
                                + 0.08 * (k % 5) * Math.cos(2 * Math.PI * x / TRAMLINES.widthM())
                                + NOISE_PERCENT / 100 * random.nextGaussian())
                        .toList())
                .toList();
    }

    @Override
    public Object once() {
        next = (next + 1) % TESTS;
        return FieldCv.of(positionsM, tests.get(next), TRAMLINES, NOISE_PERCENT);
    }
}
