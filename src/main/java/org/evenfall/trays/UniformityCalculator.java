package org.evenfall.trays;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.statistics.descriptive.Mean;
import org.apache.commons.statistics.descriptive.StandardDeviation;
import org.jspecify.annotations.Nullable;

/** How even one test is. */
public final class UniformityCalculator {

    /** Grams per square metre to kilograms per hectare. */
    private static final double KG_PER_HA_OF_G_PER_M2 = 10;

    private UniformityCalculator() {}

    /**
     * Coefficient of variation, 100 s / mean with s over n − 1, %. Assumption: n − 1, the ordinary sample definition and the
     * stricter one, since the sources do not define theirs.
     *
     * @throws IllegalArgumentException for fewer than two values or a mean not above 0
     */
    public static double cvPercent(List<Double> values) {
        double mean = mean(values);
        if (values.size() < 2 || !(mean > 0)) {
            throw new IllegalArgumentException("a CV needs two values and a mean above 0: " + values);
        }
        return 100 * StandardDeviation.of(array(values)).getAsDouble() / mean;
    }

    /** How even a test is; its rate is that of the weighted mean over tray area and runs. */
    public static Uniformity of(TrayCatches test) {
        List<Double> catchesG = test.catchesG();
        double meanG = mean(catchesG);
        double weightedMeanG = weightedMean(test.positionsM(), catchesG);
        CatchSummary catches = new CatchSummary(
                test.positionsM(),
                catchesG.stream().map(grams -> 100 * grams / meanG).toList(),
                meanG,
                weightedMeanG,
                KG_PER_HA_OF_G_PER_M2 * weightedMeanG / test.trayAreaM2() / test.runs());
        return of(catches, test.tramlines(), CatchPlans.noisePercent(meanG, test.meanGranuleG(), test.readingStepG()));
    }

    private static Uniformity of(CatchSummary catches, Tramlines tramlines, double noisePercent) {
        List<Double> positionsM = catches.positionsM();
        List<Double> relative = catches.relativePercent();
        return new Uniformity(
                catches,
                CvEstimate.of(cvPercent(relative), noisePercent, catches.trays()),
                FieldCv.of(positionsM, relative, tramlines, noisePercent),
                RegionContrasts.of(positionsM, relative, tramlines.widthM(), noisePercent),
                Shapes.fit(positionsM, relative, tramlines, noisePercent));
    }

    /**
     * Repeats with unchanged settings and the same trays taken together: the mean of each tray, with the noise that is left,
     * √Σ noise² / number. The rate is the mean of theirs; without one where any has none.
     *
     * @param tests at least one
     */
    public static Uniformity pooled(List<Uniformity> tests, Tramlines tramlines) {
        Uniformity first = tests.get(0);
        if (tests.size() == 1) {
            return first;
        }
        List<Double> relative = IntStream.range(0, first.trays())
                .mapToObj(i -> meanOf(tests, test -> test.relativePercent().get(i)))
                .toList();
        double squares = tests.stream()
                .mapToDouble(test -> test.cv().noisePercent() * test.cv().noisePercent())
                .sum();
        double meanG = meanOf(tests, test -> test.catches().meanG());
        CatchSummary catches = new CatchSummary(
                first.positionsM(),
                relative,
                meanG,
                meanG * weightedMean(first.positionsM(), relative) / 100,
                meanRate(tests));
        return of(catches, tramlines, Math.sqrt(squares) / tests.size());
    }

    private static @Nullable Double meanRate(List<Uniformity> tests) {
        double sum = 0;
        for (Uniformity test : tests) {
            Double rate = test.catches().meanRateKgPerHa();
            if (rate == null) {
                return null;
            }
            sum += rate;
        }
        return sum / tests.size();
    }

    private static double meanOf(List<Uniformity> tests, ToDoubleFunction<Uniformity> figure) {
        return tests.stream().mapToDouble(figure).average().orElseThrow();
    }

    /**
     * Mean by the trapezium rule: each tray represents the ground midway to its neighbours, the outermost for the inner
     * half only. Exact for values on a straight line; the plain mean where all trays are at one place.
     *
     * @param positionsM places in any order, m
     * @param values value at each, as many
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
        return wide > 0 ? area / wide : mean(values);
    }

    private static double mean(List<Double> values) {
        return Mean.of(array(values)).getAsDouble();
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
