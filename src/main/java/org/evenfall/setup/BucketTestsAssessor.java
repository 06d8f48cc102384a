package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.granule.BulkDensity;
import org.evenfall.rate.BucketAssessment;
import org.evenfall.rate.BucketResult;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.RatePaths;
import org.jspecify.annotations.Nullable;

/** Step 5: the bucket tests that can be used, and what the last of them says. */
final class BucketTestsAssessor {

    private final ReadSetup read;
    private final BucketAssessment.Wanted wanted;
    private final @Nullable BulkDensity density;
    private final List<Finding> findings = new ArrayList<>();
    private final List<BucketAssessment.Catch> catches = new ArrayList<>();
    /** Which of the entered tests can be used, from 0. */
    private final List<Integer> usable = new ArrayList<>();
    /** Why the last test that was caught proves nothing; null where it counts. */
    private @Nullable Finding worthless;

    private BucketTestsAssessor(ReadSetup read, BucketAssessment.Wanted wanted, @Nullable BulkDensity density) {
        this.read = read;
        this.wanted = wanted;
        this.density = density;
    }

    /**
     * The tests that count.
     *
     * @param results oldest first
     * @param indexes which of the entered tests each is, from 0
     */
    record Tests(List<BucketResult> results, List<Integer> indexes) {}

    /** @param planned whether there is a plan against which the last test is reported */
    static Assessed<Tests> assess(
            ReadSetup read, BucketAssessment.Wanted wanted, ProductResult product, boolean planned) {
        BucketTestsAssessor assessor = new BucketTestsAssessor(read, wanted, product.density());
        List<BucketResult> tests = assessor.tests();
        if (assessor.worthless != null) {
            assessor.findings.add(assessor.worthless);
        } else if (tests.isEmpty()) {
            assessor.findings.add(
                    Finding.missing(Step.RATE, "missing.bucketTest").at(RatePaths.BUCKET_TESTS.pointer()));
        } else {
            EntryPath<BucketEntry> last = RatePaths.BUCKET_TESTS.item(assessor.usable.get(tests.size() - 1));
            assessor.findings.addAll(BucketFindings.of(tests.get(tests.size() - 1), wanted, planned, last.pointer()));
            assessor.findings.addAll(BucketCatchFindings.of(read, last, assessor.catches.get(tests.size() - 1)));
        }
        return new Assessed<>(new Tests(tests, assessor.usable), assessor.findings);
    }

    private List<BucketResult> tests() {
        BucketCatchReader reader = new BucketCatchReader(read, wanted.byFactor(), density);
        for (int i = 0; i < read.get(RatePaths.BUCKET_TESTS).size(); i++) {
            BucketAssessment.Catch test = reader.test(RatePaths.BUCKET_TESTS.item(i));
            if (test != null) {
                worthless = new BucketConditions(read, i).worthless(density).orElse(null);
                if (worthless == null) {
                    catches.add(test);
                    usable.add(i);
                }
            }
        }
        findings.addAll(reader.findings());
        return BucketAssessment.assess(catches, wanted);
    }
}
