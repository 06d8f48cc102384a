package org.evenfall.trays.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.evenfall.trays.AdviceInput.DoneTest;
import org.evenfall.trays.Uniformity;
import org.jspecify.annotations.Nullable;

/**
 * One whole loop of testing and adjusting.
 *
 * @param folded see {@link Site#folded}
 * @param startPercent true field CV before, %
 * @param afterThreePercent true field CV after at most three adjustments, %
 * @param endPercent true field CV of the setting that it ends with, %
 * @param tests tests driven
 * @param kept the rule called the end good
 * @param forecasts forecasts with what the next test read
 */
record Loop(
        boolean folded,
        double startPercent,
        double afterThreePercent,
        double endPercent,
        int tests,
        boolean kept,
        List<Forecast> forecasts) {

    private static final int ADJUSTMENTS = 3;

    /** A forecast came true for the tray CV, or for the median of the field CV. */
    record Forecast(boolean tray, boolean field) {}

    static Loop run(Site site, Rule rule, boolean noisy) {
        List<DoneTest> tests = new ArrayList<>();
        List<Forecast> forecasts = new ArrayList<>();
        Decision decision = Decision.test(site.start());
        Map<String, Double> now = site.start();
        Map<String, Double> third = null;
        int adjustments = 0;
        while (decision.kind() == Decision.Kind.TEST && tests.size() < rule.mostTests()) {
            if (!decision.settings().equals(now)) {
                now = decision.settings();
                adjustments++;
                third = adjustments == ADJUSTMENTS ? now : third;
            }
            Uniformity read = TrayTest.at(site, now, times(tests, now), noisy, decision.moreRuns());
            if (decision.expected() != null) {
                var interval = decision.expected().intervalPercent();
                forecasts.add(new Forecast(
                        interval.contains(read.cvPercent()),
                        interval.contains(read.field().medianPercent())));
            }
            tests.add(new DoneTest(read, now, 1.0));
            decision = rule.next(tests);
        }
        boolean kept = decision.kind() == Decision.Kind.KEEP;
        double end = site.trueCv(kept ? now : best(tests));
        return new Loop(
                site.folded(), site.trueCv(site.start()), after(site, third, end), end, tests.size(), kept, forecasts);
    }

    private static double after(Site site, @Nullable Map<String, Double> third, double end) {
        return third == null ? end : site.trueCv(third);
    }

    private static int times(List<DoneTest> tests, Map<String, Double> settings) {
        return (int)
                tests.stream().filter(test -> test.settings().equals(settings)).count();
    }

    /** The tested settings with the least tray CV. */
    private static Map<String, Double> best(List<DoneTest> tests) {
        DoneTest best = tests.get(0);
        for (DoneTest test : tests) {
            if (test.evenness().cvPercent() < best.evenness().cvPercent()) {
                best = test;
            }
        }
        return best.settings();
    }
}
