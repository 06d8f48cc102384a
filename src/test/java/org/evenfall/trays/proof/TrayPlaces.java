package org.evenfall.trays.proof;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** Where the trays of a proof are. */
enum TrayPlaces {
    FIVE(5),
    SEVEN(7),
    THIRTEEN(13),
    /** 0, ±5/3, ±10/3, ±5 m, then three evenly to half the width on each side; for 28 m and more. */
    THIRTEEN_CLOSE(0),
    THIRTY_THREE(33);

    private static final double CLOSE_M = 5;
    private static final double NARROWEST_FOR_CLOSE_M = 28;

    private final int even;

    TrayPlaces(int even) {
        this.even = even;
    }

    /** Whether it is used at a width. */
    boolean usedAt(double widthM) {
        return this != THIRTEEN_CLOSE || widthM >= NARROWEST_FOR_CLOSE_M;
    }

    /** Places, m. */
    List<Double> placesM(double widthM) {
        if (this != THIRTEEN_CLOSE) {
            return IntStream.range(0, even)
                    .mapToObj(i -> widthM * (i / (even - 1.0) - 0.5))
                    .toList();
        }
        double beyond = widthM / 2 - CLOSE_M;
        double[] right = {
            CLOSE_M / 3, 2 * CLOSE_M / 3, CLOSE_M, CLOSE_M + beyond / 3, CLOSE_M + 2 * beyond / 3, widthM / 2
        };
        return DoubleStream.concat(DoubleStream.of(0), DoubleStream.of(right).flatMap(x -> DoubleStream.of(-x, x)))
                .boxed()
                .sorted()
                .toList();
    }
}
