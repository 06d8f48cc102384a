package org.evenfall.trays;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Tests grouped by the settings of the levers: repeats of one setting count as one test with less noise. */
final class TestsBySetting {

    /** Assumption: an earlier setting is clearly better when its field CV is lower with this chance. */
    static final double CLEARLY_BETTER_CHANCE = 0.8;

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

    /** A test of the setting whose field CV is most surely lower than the last, where that is clear; else null. */
    AdviceInput.@Nullable DoneTest clearlyBetterThan(AdviceInput.DoneTest last) {
        FieldCv now = pool(last).evenness().field();
        double chance = CLEARLY_BETTER_CHANCE;
        AdviceInput.DoneTest best = null;
        for (AdviceInput.DoneTest test : input.tests()) {
            double lower = pool(test).evenness().field().chanceLowerThan(now);
            if (!same(test.settings(), last.settings()) && lower >= chance) {
                chance = lower;
                best = test;
            }
        }
        return best;
    }

    private boolean same(Map<String, Double> one, Map<String, Double> other) {
        return LeverSettings.same(input.levers().levers(), one, other);
    }
}
