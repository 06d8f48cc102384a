package org.evenfall.setup;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.WindLimits;

/**
 * What keeps the tray tests from proving the present settings, and what is to be known of the test that proves them. Only one
 * test is reported: the last that proves, else the last on this field with this product, else the last.
 */
final class ProofFindings {

    private static final Set<ConditionKind> FIELD_AND_PRODUCT =
            EnumSet.of(ConditionKind.TRAMLINE_WIDTH, ConditionKind.DRIVING_PATTERN, ConditionKind.PRODUCT);

    private final WindLimits wind;
    private final TestDifferences rules;
    private final MachineSet now;

    /** @param now what is set now */
    ProofFindings(WindLimits wind, TestDifferences rules, MachineSet now) {
        this.wind = wind;
        this.rules = rules;
        this.now = now;
    }

    /** @param results of the tests, in the same order */
    List<Finding> of(List<DrivenTest> tests, List<TrayTestResult> results) {
        List<Finding> findings = new ArrayList<>();
        if (results.isEmpty()) {
            return findings;
        }
        int proof = last(results, test -> test.proof().proves());
        int comparable = last(results, test -> test.proof().comparable());
        DrivenTest test = tests.get(proof >= 0 ? proof : comparable >= 0 ? comparable : results.size() - 1);
        if (proof < 0) {
            differences(test, comparable < 0)
                    .forEach(difference -> findings.add(Finding.missing(
                                    Step.TRAYS, "trays.differs." + difference.kind(), difference.args(test.number()))
                            .from(difference.kind().source())
                            .at(difference.field())));
        }
        findings.addAll(TestWeather.duringTest(
                wind,
                test.number(),
                test.conditions().windMPerS(),
                TrayPaths.TEST_WIND.at(test.at()).pointer()));
        List<String> assumed = test.conditions().assumed();
        if (!assumed.isEmpty()) {
            findings.add(Finding.warn(
                            Step.TRAYS,
                            "trays.assumed",
                            Arg.count(test.number()),
                            new Arg.Series(assumed.stream().map(Arg::word).toList()))
                    .at(test.at().pointer()));
        }
        return findings;
    }

    /** Of a test on another field or with another product only that is reported, not what else follows from it. */
    private List<ConditionDifference> differences(DrivenTest test, boolean elsewhere) {
        return rules
                .of(test.at(), test.conditions().set(), now, test.conditions().windMPerS())
                .stream()
                .filter(difference -> !elsewhere || FIELD_AND_PRODUCT.contains(difference.kind()))
                .toList();
    }

    private static int last(List<TrayTestResult> results, Predicate<TrayTestResult> wanted) {
        for (int i = results.size() - 1; i >= 0; i--) {
            if (wanted.test(results.get(i))) {
                return i;
            }
        }
        return -1;
    }
}
