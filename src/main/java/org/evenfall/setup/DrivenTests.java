package org.evenfall.setup;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.machine.MachineProfile;
import org.evenfall.quantity.DateText;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.path.CardPaths;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.Uniformity;
import org.evenfall.trays.WindLimits;
import org.jspecify.annotations.Nullable;

/** Step 6: every tray test with its conditions, and what it still proves of the present settings. */
final class DrivenTests {

    private final ReadSetup read;
    private final MachineProfile machine;
    private final WindLimits wind;
    private final TrayTestAssessor assessor;
    private final List<Finding> findings;

    /**
     * Reads the tests of one setup.
     *
     * @param findings takes what is to be reported
     */
    DrivenTests(
            ReadSetup read,
            MachineProfile machine,
            WindLimits wind,
            TrayTestAssessor assessor,
            List<Finding> findings) {
        this.read = read;
        this.machine = machine;
        this.wind = wind;
        this.assessor = assessor;
        this.findings = findings;
    }

    /**
     * All tests that can be read, oldest first.
     *
     * @param start what is set now, with the settings to start from
     */
    List<TrayTestResult> all(MachineSet start, TestDifferences rules) {
        List<DrivenTest> driven = new ArrayList<>();
        for (int i = 0; i < read.get(TrayPaths.TESTS).size(); i++) {
            DrivenTest test = driven(i, start);
            if (test != null) {
                driven.add(test);
            }
        }
        MachineSet now = withLeversOfLast(driven, start);
        List<TrayTestResult> results = new ArrayList<>();
        for (DrivenTest test : driven) {
            List<ConditionDifference> differences = rules.of(
                    test.at(), test.conditions().set(), now, test.conditions().windMPerS());
            results.add(result(test, differences, now));
        }
        findings.addAll(new ProofFindings(wind, rules, now).of(driven, results));
        return results;
    }

    private @Nullable DrivenTest driven(int index, MachineSet start) {
        EntryPath<TrayTestEntry> at = TrayPaths.TESTS.item(index);
        Assessed<ReadSettings> settings = SettingsAssessor.assess(read, TrayPaths.TEST_SETTINGS.at(at), machine);
        findings.addAll(settings.findings());
        afterCard(at);
        TestConditionReader.Conditions conditions = TestConditionReader.of(read, at, settings.present(), start);
        Uniformity evenness = assessor.evenness(at);
        return evenness == null ? null : new DrivenTest(index, evenness, settings.present(), conditions);
    }

    /** The machine is set as in the last test at this width with this product; a test without stated levers changes none. */
    private static MachineSet withLeversOfLast(List<DrivenTest> driven, MachineSet start) {
        MachineSet now = start;
        for (DrivenTest test : driven) {
            if (TestDifferences.comparable(test.conditions().set().conditions(), start.conditions())) {
                ReadSettings set = test.conditions().set().settings();
                now = new MachineSet(
                        start.conditions(),
                        new ReadSettings(
                                set.levers(),
                                start.settings().ptoRpm(),
                                start.settings().heightOverCropM(),
                                start.settings().tiltDeg()),
                        start.openings());
            }
        }
        return now;
    }

    private TrayTestResult result(DrivenTest test, List<ConditionDifference> differences, MachineSet now) {
        TestConditions conditions = test.conditions().set().conditions();
        return new TrayTestResult(
                test.index(),
                DateText.iso(test.at().get(read.setup()).date()),
                test.evenness(),
                test.stated(),
                read.number(TrayPaths.TEST_OPENING_LEFT, test.at()),
                // a factor is one number, typed once
                read.number(
                        machine.rateSetting().byFactor() ? TrayPaths.TEST_OPENING_LEFT : TrayPaths.TEST_OPENING_RIGHT,
                        test.at()),
                read.number(TrayPaths.TEST_WIND, test.at()),
                conditions,
                new TrayTestResult.TestProof(
                        TestDifferences.comparable(conditions, now.conditions()),
                        differences.stream().map(ConditionDifference::kind).toList(),
                        test.conditions().assumed()));
    }

    /** A test cannot be later than the card that it proves. */
    private void afterCard(EntryPath<TrayTestEntry> at) {
        LocalDate test = read.date(TrayPaths.TEST_DATE, at);
        LocalDate card = read.date(CardPaths.DATE);
        if (test != null && card != null && test.isAfter(card)) {
            findings.add(Finding.stop(Step.TRAYS, "trays.afterCard", new Arg.Day(test), new Arg.Day(card))
                    .at(TrayPaths.TEST_DATE.at(at).pointer()));
        }
    }
}
