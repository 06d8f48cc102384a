package org.evenfall.setup;

import java.util.List;
import java.util.function.Predicate;
import org.evenfall.trays.Advice;
import org.evenfall.trays.CatchPlan;
import org.evenfall.trays.CropLoss;
import org.evenfall.trays.StripLoad;
import org.evenfall.trays.TrayLayout;
import org.evenfall.trays.Uniformity;
import org.evenfall.trays.WindLimits;
import org.jspecify.annotations.Nullable;

/**
 * Step 6 assessed.
 *
 * @param layout null without a tramline width
 * @param plan null without rate, product or tray
 * @param strip what the runs of the plan add to the strip; null without a plan
 * @param placesM where the trays of each test of the setup are, m, in its order; empty for a test where it is not known
 * @param tests tests that can be read, oldest first
 * @param comparisons each test compared with the one before it, oldest first
 * @param loss what the unevenness of the last test costs a cereal crop; null without a test
 * @param advice null while nothing can be advised
 * @param line the long line under one pass; null while there is none
 * @param windLimits what counts as too much wind
 */
public record TraysResult(
        @Nullable TrayLayout layout,
        @Nullable CatchPlan plan,
        @Nullable StripLoad strip,
        List<List<Double>> placesM,
        List<TrayTestResult> tests,
        List<TestComparison> comparisons,
        @Nullable CropLoss loss,
        @Nullable Advice advice,
        @Nullable SinglePassTest line,
        WindLimits windLimits) {

    /** Copies the lists. */
    public TraysResult {
        placesM = List.copyOf(placesM);
        tests = List.copyOf(tests);
        comparisons = List.copyOf(comparisons);
    }

    /** The tests at the present width, driving pattern and with the present product, oldest first. */
    public List<TrayTestResult> comparable() {
        return tests.stream().filter(test -> test.proof().comparable()).toList();
    }

    /** The last tray test at the present width, driving pattern and with the present product; null while there is none. */
    public @Nullable TrayTestResult last() {
        return lastOf(TrayTestResult.TestProof::comparable);
    }

    /** The last tray test that proves the present settings; null while there is none. */
    public @Nullable TrayTestResult proof() {
        return lastOf(TrayTestResult.TestProof::proves);
    }

    private @Nullable TrayTestResult lastOf(Predicate<TrayTestResult.TestProof> wanted) {
        return tests.stream()
                .filter(test -> wanted.test(test.proof()))
                .reduce((before, after) -> after)
                .orElse(null);
    }

    /** How even the last comparable tray test is; null while there is none. */
    public @Nullable Uniformity lastEvenness() {
        TrayTestResult last = last();
        return last == null ? null : last.evenness();
    }
}
