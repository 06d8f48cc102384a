package org.evenfall.bench;

import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.trays.FieldCv;
import org.evenfall.trays.Tramlines;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Warm time of one estimate of the field CV; at most 3 ms are wanted. Run its main method. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class FieldCvBenchmark {

    private static final double WIDTH_M = 28;

    /** Number of trays. */
    @Param({"5", "7", "13", "33"})
    public int trays;

    private List<Double> positionsM = List.of();
    private List<List<Double>> tests = List.of();
    private int next;

    @Setup
    public void drawTests() {
        Random random = new Random(1);
        positionsM = IntStream.range(0, trays)
                .mapToObj(i -> WIDTH_M * (i / (trays - 1.0) - 0.5))
                .toList();
        tests = IntStream.range(0, 50)
                .mapToObj(k -> positionsM.stream()
                        .map(x ->
                                1 + 0.08 * (k % 5) * Math.cos(2 * Math.PI * x / WIDTH_M) + 0.05 * random.nextGaussian())
                        .toList())
                .toList();
    }

    @Benchmark
    public FieldCv estimate() {
        next = (next + 1) % tests.size();
        return FieldCv.of(positionsM, tests.get(next), new Tramlines(WIDTH_M, DrivingPattern.BACK_AND_FORTH), 5);
    }

    public static void main(String[] args) throws Exception {
        new Runner(new OptionsBuilder()
                        .include(FieldCvBenchmark.class.getSimpleName())
                        .build())
                .run();
    }
}
