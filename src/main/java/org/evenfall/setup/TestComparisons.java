package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.machine.Lever;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.LeverSettings;
import org.evenfall.trays.TestChange;
import org.evenfall.trays.TestChanges;

/** Each tray test compared with the one before it: more even or not, and whether a repeat repeats. */
final class TestComparisons {

    private TestComparisons() {}

    static Assessed<List<TestComparison>> of(List<TrayTestResult> tests, List<Lever> levers) {
        List<TestComparison> comparisons = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        for (int i = 1; i < tests.size(); i++) {
            TrayTestResult before = tests.get(i - 1);
            TrayTestResult after = tests.get(i);
            boolean same = before.conditions().partChanged()
                            == after.conditions().partChanged()
                    && LeverSettings.same(
                            levers, before.settings().levers(), after.settings().levers());
            TestComparison comparison = new TestComparison(
                    before.index(), after.index(), same, TestChanges.of(before.evenness(), after.evenness()));
            comparisons.add(comparison);
            findings.add(
                    finding(comparison).at(TrayPaths.TESTS.item(after.index()).pointer()));
        }
        return new Assessed<>(comparisons, findings);
    }

    private static Finding finding(TestComparison comparison) {
        Arg first = Arg.count(comparison.first() + 1L);
        Arg second = Arg.count(comparison.second() + 1L);
        TestChange change = comparison.change();
        if (comparison.sameSettings() && change.scatterPercent() != null) {
            Arg scatter = Arg.number(change.scatterPercent(), 0, Unit.PERCENT);
            Arg expected = Arg.number(change.expectedScatterPercent(), 0, Unit.PERCENT);
            return change.beyondNoise()
                    ? Finding.warn(Step.TRAYS, "trays.repeatsBadly", second, first, scatter, expected)
                            .from("source.repeatTest")
                    : Finding.note(Step.TRAYS, "trays.repeatsWell", second, first, scatter, expected)
                            .from("source.repeatTest");
        }
        return Finding.note(
                        Step.TRAYS,
                        "trays.against",
                        second,
                        first,
                        Arg.number(change.tellableChancePercent(), 0, Unit.PERCENT))
                .from("source.fieldCv");
    }
}
