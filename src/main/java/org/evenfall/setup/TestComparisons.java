package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.machine.Lever;
import org.evenfall.quantity.Unit;
import org.evenfall.trays.AdviceInput;
import org.evenfall.trays.LeverSettings;
import org.evenfall.trays.TestChange;
import org.evenfall.trays.TestChanges;

/** Each tray test beside the one before it: more even or not, and whether a repeat repeats. */
final class TestComparisons {

    private TestComparisons() {}

    static List<TestComparison> of(
            List<TrayTestResult> tests, List<AdviceInput.DoneTest> done, List<Lever> levers, EntryReader reader) {
        List<TestComparison> comparisons = new ArrayList<>();
        for (int i = 1; i < tests.size(); i++) {
            TrayTestResult before = tests.get(i - 1);
            TrayTestResult after = tests.get(i);
            Map<String, Double> stood = done.get(i - 1).settings();
            boolean same = LeverSettings.same(levers, stood, done.get(i).settings());
            TestComparison comparison = new TestComparison(
                    before.index(), after.index(), same, TestChanges.of(before.evenness(), after.evenness()));
            comparisons.add(comparison);
            reader.add(told(comparison).at("/trays/tests/" + after.index()));
        }
        return comparisons;
    }

    private static Finding told(TestComparison comparison) {
        Arg first = Arg.count(comparison.first() + 1L);
        Arg second = Arg.count(comparison.second() + 1L);
        TestChange change = comparison.change();
        if (comparison.sameSettings() && change.scatterPercent() != null) {
            Arg scatter = Arg.number(change.scatterPercent(), 0, Unit.PERCENT);
            Arg expected = Arg.number(change.expectedScatterPercent(), 0, Unit.PERCENT);
            return change.beyondNoise()
                    ? Finding.warn(Step.TRAYS, "trays.repeatsBadly", second, first, scatter, expected)
                    : Finding.note(Step.TRAYS, "trays.repeatsWell", second, first, scatter, expected);
        }
        return Finding.note(
                Step.TRAYS,
                "trays.against",
                second,
                first,
                Arg.number(change.tellableChancePercent(), 0, Unit.PERCENT));
    }
}
