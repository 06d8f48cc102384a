package org.evenfall.trays;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.machine.Lever;
import org.jspecify.annotations.Nullable;

/** Tests grouped by how the machine stood: repeats of one setting are one piece of knowledge. */
final class TestsBySetting {

    private final List<Lever> levers;
    private final double widthM;
    private final DrivingPattern driving;

    TestsBySetting(List<Lever> levers, double widthM, DrivingPattern driving) {
        this.levers = levers;
        this.widthM = widthM;
        this.driving = driving;
    }

    boolean same(Map<String, Double> one, Map<String, Double> other) {
        return LeverSettings.same(levers, one, other);
    }

    /** All tests that stood as this one, with the same trays, taken together; how many they are. */
    Pool pool(List<AdviceInput.DoneTest> tests, AdviceInput.DoneTest like) {
        List<Uniformity> repeats = new ArrayList<>();
        for (AdviceInput.DoneTest test : tests) {
            if (same(test.settings(), like.settings())
                    && test.evenness().positionsM().equals(like.evenness().positionsM())) {
                repeats.add(test.evenness());
            }
        }
        return new Pool(UniformityCalculator.pooled(repeats, widthM, driving), repeats.size());
    }

    record Pool(Uniformity evenness, int tests) {}

    /** The settings that did best so far, where that is clearly better than the last; null when the last did best. */
    AdviceInput.@Nullable DoneTest better(List<AdviceInput.DoneTest> tests, AdviceInput.DoneTest last) {
        double now = pool(tests, last).evenness().cvPercent();
        AdviceInput.DoneTest best = null;
        double least = CLEARLY * now;
        for (AdviceInput.DoneTest test : tests) {
            double cv = pool(tests, test).evenness().cvPercent();
            if (!same(test.settings(), last.settings()) && cv < least) {
                least = cv;
                best = test;
            }
        }
        return best;
    }

    /** Clearly better: a tenth off the CV. Ours. */
    private static final double CLEARLY = 0.9;
}
