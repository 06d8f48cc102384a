package org.evenfall.setup;

import java.util.List;
import org.evenfall.finding.Finding;
import org.evenfall.rate.BucketResult;
import org.evenfall.setup.path.RatePaths;

/**
 * Whether the last bucket test typed is done, and whether another one follows.
 *
 * @param complete every outlet of it was caught, or it counts no more
 * @param due it is not within the tolerance, or what it was done with has changed
 */
public record BucketProgress(boolean complete, boolean due) {

    /** Key of the finding that a test does not state all its conditions. */
    public static final String ASSUMED = "rate.assumed";

    /** Of an assessment. */
    public static BucketProgress of(Assessment assessment) {
        int last = RatePaths.BUCKET_TESTS.path().get(assessment.read().setup()).size() - 1;
        if (last < 0) {
            return new BucketProgress(false, false);
        }
        boolean changed = differs(assessment, last);
        List<Integer> counted = assessment.rate().bucketIndexes();
        BucketResult result = assessment.rate().lastBucket();
        if (result == null || counted.get(counted.size() - 1) != last) {
            return new BucketProgress(changed, changed);
        }
        boolean complete = assessment.machine().outlets() == 1 || (result.leftCaught() && result.rightCaught());
        boolean wanted = result.agreement().deviationPercent() != null;
        return new BucketProgress(
                complete, complete && (changed || (wanted && !result.agreement().withinTolerance())));
    }

    /** Whether something is set otherwise now than in a test, counted from 0. */
    static boolean differs(Assessment assessment, int index) {
        return conditions(assessment, index).stream().anyMatch(BucketProgress::isDifference);
    }

    /**
     * What is found about the conditions of a test: what it does not state, and what is set otherwise now.
     *
     * @param index of the test, from 0
     */
    public static List<Finding> conditions(Assessment assessment, int index) {
        String at = RatePaths.BUCKET_TESTS.item(index).pointer();
        return assessment.findings().stream()
                .filter(finding -> isDifference(finding)
                        ? finding.field().startsWith(at + "/")
                        : finding.key().equals(ASSUMED) && finding.field().equals(at))
                .toList();
    }

    private static boolean isDifference(Finding finding) {
        return finding.key().startsWith(BucketConditions.DIFFERS);
    }
}
