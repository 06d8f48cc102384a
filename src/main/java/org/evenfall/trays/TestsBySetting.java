package org.evenfall.trays;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Tests grouped by the settings of the levers: repeats of one setting count as one test with less noise. */
final class TestsBySetting {

    /** Assumption: an earlier setting is clearly better when its CV is below this share of the CV now. */
    private static final double CLEARLY_BETTER_SHARE = 0.9;

    private final AdviceInput input;

    TestsBySetting(AdviceInput input) {
        this.input = input;
    }

    /**
     * Repeats taken together.
     *
     * @param evenness their common result
     * @param tests how many they are
     * @param runs how many times the three passes were driven in all of them
     */
    record Pool(Uniformity evenness, int tests, int runs) {}

    /** All tests with the settings and the tray places of this one, taken together. */
    Pool pool(AdviceInput.DoneTest like) {
        List<AdviceInput.DoneTest> repeats = repeats(like);
        return new Pool(
                UniformityCalculator.pooled(
                        repeats.stream().map(AdviceInput.DoneTest::evenness).toList(), input.tramlines()),
                repeats.size(),
                repeats.stream().mapToInt(AdviceInput.DoneTest::runs).sum());
    }

    /** All tests with the settings and the tray places of this one, itself among them, oldest first. */
    List<AdviceInput.DoneTest> repeats(AdviceInput.DoneTest like) {
        return input.tests().stream()
                .filter(test -> same(test.settings(), like.settings()))
                .filter(test -> TestChanges.samePlaces(test.evenness(), like.evenness()))
                .toList();
    }

    /** A test of the setting with the least CV, where that is clearly better than the last; else null. */
    AdviceInput.@Nullable DoneTest clearlyBetterThan(AdviceInput.DoneTest last) {
        double leastPercent = CLEARLY_BETTER_SHARE * pool(last).evenness().cvPercent();
        AdviceInput.DoneTest best = null;
        for (AdviceInput.DoneTest test : input.tests()) {
            double cvPercent = pool(test).evenness().cvPercent();
            if (!same(test.settings(), last.settings()) && cvPercent < leastPercent) {
                leastPercent = cvPercent;
                best = test;
            }
        }
        return best;
    }

    private boolean same(Map<String, Double> one, Map<String, Double> other) {
        return LeverSettings.same(input.levers().levers(), one, other);
    }
}
