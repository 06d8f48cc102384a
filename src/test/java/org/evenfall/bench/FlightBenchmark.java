package org.evenfall.bench;

import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.evenfall.flight.Air;
import org.evenfall.flight.Flight;
import org.evenfall.flight.LandingPattern;
import org.evenfall.flight.PassConditions;
import org.evenfall.flight.SeededFlights;
import org.evenfall.flight.SpreadPattern;
import org.evenfall.flight.TwinDisc;
import org.evenfall.granule.SizeDistribution;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * 500 flights by the own integrator against 500 by Hipparchus DormandPrince853, this one at the loosest tolerance with
 * which it lands all of them within the same 1e-4; and one landing pattern. Run its main method; the ratio of the first
 * two is what counts.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class FlightBenchmark {

    private static final double WANTED = 1e-4;
    private static final SizeDistribution UREA = new SizeDistribution(3.2, 1.2, 0.03, 0.05, false);
    private static final PassConditions PASS =
            new PassConditions(TwinDisc.usual(0.4, 850).fans(), 0.75, 1, 3.3, 1, 3);

    private final List<SeededFlights.Case> cases = SeededFlights.of(500, 500);
    private final double tolerance = loosest(cases);

    private static double loosest(List<SeededFlights.Case> cases) {
        double[] exact = cases.stream()
                .mapToDouble(one -> SeededFlights.independent(one, 1e-12))
                .toArray();
        double ownError = 0;
        for (int i = 0; i < exact.length; i++) {
            ownError = Math.max(ownError, Math.abs(own(cases.get(i)) / exact[i] - 1));
        }
        for (double tolerance = 1e-3; tolerance > 1e-12; tolerance /= 2) {
            double worst = 0;
            for (int i = 0; i < exact.length && worst <= WANTED; i++) {
                worst = Math.max(worst, Math.abs(SeededFlights.independent(cases.get(i), tolerance) / exact[i] - 1));
            }
            if (worst <= WANTED) {
                System.out.printf(
                        Locale.ROOT,
                        "own worst error %.1e; DormandPrince853 at tolerance %.1e: worst error %.1e%n",
                        ownError,
                        tolerance,
                        worst);
                return tolerance;
            }
        }
        throw new IllegalStateException("never that accurate");
    }

    private static double own(SeededFlights.Case one) {
        return Flight.fly(one.granule(), one.launch(), one.windMPerS(), 9.81, Air.STANDARD)
                .landingM();
    }

    @Benchmark
    public double ownIntegrator() {
        double sum = 0;
        for (SeededFlights.Case one : cases) {
            sum += own(one);
        }
        return sum;
    }

    @Benchmark
    public double generalIntegrator() {
        double sum = 0;
        for (SeededFlights.Case one : cases) {
            sum += SeededFlights.independent(one, tolerance);
        }
        return sum;
    }

    /** The whole landing pattern of one pass in cross wind, both discs, long and short vanes. */
    @Benchmark
    public SpreadPattern patternInWind() {
        return LandingPattern.of(UREA, 1340, PASS);
    }

    public static void main(String[] args) throws RunnerException {
        new Runner(new OptionsBuilder()
                        .include(FlightBenchmark.class.getSimpleName())
                        .build())
                .run();
    }
}
