package org.evenfall.trays;

import java.util.Comparator;
import java.util.List;
import java.util.function.DoublePredicate;
import java.util.stream.IntStream;
import org.evenfall.flight.DrivingPattern;
import org.jspecify.annotations.Nullable;

/** How even one test is. */
public final class UniformityCalculator {

    private UniformityCalculator() {}

    /**
     * Coefficient of variation with n − 1, %. Ours: the ordinary sample definition and the stricter one.
     *
     * @throws IllegalArgumentException for fewer than two values or a mean not above 0
     */
    public static double cvPercent(List<Double> values) {
        double mean = values.stream().mapToDouble(Double::doubleValue).average().orElse(0);
        if (values.size() < 2 || !(mean > 0)) {
            throw new IllegalArgumentException("a CV needs two values and a mean above 0: " + values);
        }
        // deviations are summed, so that large near-equal values keep their digits
        double squares =
                values.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum();
        return 100 * Math.sqrt(squares / (values.size() - 1)) / mean;
    }

    /** The verdict on a CV, %: at most 10 good, 15 acceptable, 20 adjust. */
    public static EvennessVerdict verdict(double cvPercent) {
        if (cvPercent <= 10) {
            return EvennessVerdict.GOOD;
        }
        if (cvPercent <= 15) {
            return EvennessVerdict.ACCEPTABLE;
        }
        return cvPercent <= 20 ? EvennessVerdict.ADJUST : EvennessVerdict.DO_NOT_SPREAD;
    }

    public static Uniformity of(TrayCatches test) {
        List<Double> catches = test.catchesG();
        double mean =
                catches.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        return of(
                mean,
                catches.stream().map(grams -> 100 * grams / mean).toList(),
                test.positionsM(),
                test.tramlineWidthM(),
                test.pattern(),
                CatchPlans.noisePercent(mean, test.meanGranuleG(), test.readingStepG()),
                10 * weightedMean(test.positionsM(), catches) / test.trayAreaM2() / test.runs());
    }

    private static Uniformity of(
            double meanG,
            List<Double> relative,
            List<Double> x,
            double width,
            DrivingPattern pattern,
            double noise,
            @Nullable Double rate) {
        double cv = cvPercent(relative);
        CvInterval interval = new CvInterval(relative.size());
        double machineSquare = cv * cv - noise * noise;
        List<SpreadShape> modes = Shapes.fit(x, relative, width, pattern, noise);
        return new Uniformity(
                meanG,
                relative,
                x,
                cv,
                noise,
                machineSquare > 0 ? Double.valueOf(Math.sqrt(machineSquare)) : null,
                interval.lowPercent(cv),
                interval.highPercent(cv),
                extreme(relative, false),
                extreme(relative, true),
                part(x, relative, at -> at < -0.01 * width) - part(x, relative, at -> at > 0.01 * width),
                part(x, relative, at -> Math.abs(at) < width / 4) - part(x, relative, at -> Math.abs(at) >= width / 4),
                part(x, relative, at -> Math.abs(Math.abs(at) - width / 4) <= width / 8)
                        - part(x, relative, at -> Math.abs(Math.abs(at) - width / 4) > width / 8),
                modes,
                verdict(cv),
                interval.probabilityAtMost(10, cv),
                interval.probabilityAtMost(15, cv),
                interval.probabilityAtMost(20, cv),
                Shapes.told(x, modes, width, pattern),
                meanG * weightedMean(x, relative) / 100,
                rate,
                relative.size());
    }

    /**
     * Tests with unchanged settings and the same trays taken together: the mean of each tray, with the noise that is left.
     * The rate is the mean of theirs.
     */
    public static Uniformity pooled(List<Uniformity> tests, double widthM, DrivingPattern pattern) {
        Uniformity first = tests.get(0);
        if (tests.size() == 1) {
            return first;
        }
        List<Double> relative = IntStream.range(0, first.trays())
                .mapToObj(i -> tests.stream()
                        .mapToDouble(test -> test.relativePercent().get(i))
                        .average()
                        .orElseThrow())
                .toList();
        double noise = Math.sqrt(tests.stream()
                        .mapToDouble(test -> test.noisePercent() * test.noisePercent())
                        .sum())
                / tests.size();
        double meanG = tests.stream().mapToDouble(Uniformity::meanG).average().orElseThrow();
        Double rate = tests.stream().anyMatch(test -> test.meanRateKgPerHa() == null)
                ? null
                : Double.valueOf(tests.stream()
                        .mapToDouble(Uniformity::meanRateKgPerHa)
                        .average()
                        .orElseThrow());
        return of(meanG, relative, first.positionsM(), widthM, pattern, noise, rate);
    }

    /**
     * Mean by the trapezium rule: each tray stands for the ground half-way to its neighbours, the outermost for the inner
     * half only. Exact for values on a straight line.
     */
    static double weightedMean(List<Double> positionsM, List<Double> values) {
        List<Integer> across = IntStream.range(0, positionsM.size())
                .boxed()
                .sorted(Comparator.comparing(positionsM::get))
                .toList();
        double area = 0;
        for (int k = 1; k < across.size(); k++) {
            int left = across.get(k - 1);
            int right = across.get(k);
            area += (positionsM.get(right) - positionsM.get(left)) * (values.get(left) + values.get(right)) / 2;
        }
        double wide = positionsM.get(across.get(across.size() - 1)) - positionsM.get(across.get(0));
        return wide > 0
                ? area / wide
                : values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    }

    private static int extreme(List<Double> values, boolean highest) {
        return IntStream.range(0, values.size())
                .reduce((best, i) ->
                        (highest ? values.get(i) > values.get(best) : values.get(i) < values.get(best)) ? i : best)
                .orElseThrow();
    }

    /** Mean of the trays that stand in a part of the width; the overall mean where none does. */
    private static double part(List<Double> positions, List<Double> relative, DoublePredicate stands) {
        return IntStream.range(0, positions.size())
                .filter(i -> stands.test(positions.get(i)))
                .mapToDouble(relative::get)
                .average()
                .orElse(100);
    }
}
