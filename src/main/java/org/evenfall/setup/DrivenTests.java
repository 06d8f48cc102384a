package org.evenfall.setup;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.machine.MachineProfile;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.path.CardPaths;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.Uniformity;
import org.evenfall.trays.WindLimits;
import org.jspecify.annotations.Nullable;

/** Step 6: every tray test with its conditions, and what it still proves of the present settings. */
final class DrivenTests {

    private static final Set<ConditionKind> FIELD_AND_PRODUCT =
            EnumSet.of(ConditionKind.TRAMLINE_WIDTH, ConditionKind.DRIVING_PATTERN, ConditionKind.PRODUCT);

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

    /** A test as driven, before it is compared with the present settings. */
    private record Driven(
            int index,
            Uniformity evenness,
            ReadSettings stated,
            TestConditionReader.Conditions conditions,
            @Nullable Double windMPerS) {

        EntryPath<TrayTestEntry> at() {
            return TrayPaths.TESTS.item(index);
        }
    }

    /**
     * All tests that can be read, oldest first.
     *
     * @param start what is set now, with the settings to start from
     */
    List<TrayTestResult> all(MachineSet start, TestDifferences rules) {
        List<Driven> driven = new ArrayList<>();
        for (int i = 0; i < read.get(TrayPaths.TESTS).size(); i++) {
            Driven test = driven(i, start);
            if (test != null) {
                driven.add(test);
            }
        }
        MachineSet now = withLeversOfLast(driven, start);
        List<TrayTestResult> results = new ArrayList<>();
        for (Driven test : driven) {
            List<ConditionDifference> differences =
                    rules.of(test.at(), test.conditions().set(), now, test.windMPerS());
            results.add(result(test, differences, now));
        }
        report(driven, results, rules, now);
        return results;
    }

    private @Nullable Driven driven(int index, MachineSet start) {
        EntryPath<TrayTestEntry> at = TrayPaths.TESTS.item(index);
        Assessed<ReadSettings> settings = SettingsAssessor.assess(read, TrayPaths.TEST_SETTINGS.at(at), machine);
        findings.addAll(settings.findings());
        Double windMPerS = read.number(TrayPaths.TEST_WIND, at);
        afterCard(at);
        TestConditionReader.Conditions conditions = TestConditionReader.of(read, at, settings.present(), start);
        Uniformity evenness = assessor.evenness(at);
        return evenness == null ? null : new Driven(index, evenness, settings.present(), conditions, windMPerS);
    }

    /** The machine is set as in the last test at this width with this product; a test without stated levers changes none. */
    private static MachineSet withLeversOfLast(List<Driven> driven, MachineSet start) {
        MachineSet now = start;
        for (Driven test : driven) {
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

    private TrayTestResult result(Driven test, List<ConditionDifference> differences, MachineSet now) {
        TestConditions conditions = test.conditions().set().conditions();
        return new TrayTestResult(
                test.index(),
                test.at().get(read.setup()).date(),
                test.evenness(),
                test.stated(),
                read.number(TrayPaths.TEST_OPENING_LEFT, test.at()),
                // a factor is one number, typed once
                read.number(
                        machine.rateSetting().byFactor() ? TrayPaths.TEST_OPENING_LEFT : TrayPaths.TEST_OPENING_RIGHT,
                        test.at()),
                test.windMPerS(),
                conditions,
                new TrayTestResult.TestProof(
                        TestDifferences.comparable(conditions, now.conditions()),
                        differences.stream().map(ConditionDifference::kind).toList(),
                        test.conditions().assumed()));
    }

    /**
     * What keeps the tests from proving the present settings, reported of the last comparable test, without one of the last;
     * what the test that counts does not state.
     */
    private void report(List<Driven> driven, List<TrayTestResult> results, TestDifferences rules, MachineSet now) {
        if (results.isEmpty()) {
            return;
        }
        int proof = last(results, test -> test.proof().proves());
        int comparable = last(results, test -> test.proof().comparable());
        int counts = proof >= 0 ? proof : comparable >= 0 ? comparable : results.size() - 1;
        Driven test = driven.get(counts);
        if (proof < 0) {
            List<ConditionDifference> differences =
                    rules.of(test.at(), test.conditions().set(), now, test.windMPerS());
            for (ConditionDifference difference : comparable >= 0 ? differences : fieldOrProduct(differences)) {
                findings.add(Finding.missing(
                                Step.TRAYS, "trays.differs." + difference.kind(), difference.args(test.index() + 1))
                        .at(difference.field()));
            }
        }
        findings.addAll(TestWeather.duringTest(
                wind,
                test.index() + 1,
                test.windMPerS(),
                TrayPaths.TEST_WIND.at(test.at()).pointer()));
        List<String> assumed = test.conditions().assumed();
        if (!assumed.isEmpty()) {
            findings.add(Finding.warn(
                            Step.TRAYS,
                            "trays.assumed",
                            Arg.count(test.index() + 1L),
                            new Arg.Series(assumed.stream().map(Arg::word).toList()))
                    .at(test.at().pointer()));
        }
    }

    /** Of a test on another field or with another product only that is reported, not what else follows from it. */
    private static List<ConditionDifference> fieldOrProduct(List<ConditionDifference> differences) {
        return differences.stream()
                .filter(difference -> FIELD_AND_PRODUCT.contains(difference.kind()))
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

    /** A test cannot be later than the card that it proves. */
    private void afterCard(EntryPath<TrayTestEntry> at) {
        LocalDate test = read.date(TrayPaths.TEST_DATE, at);
        LocalDate card = read.date(CardPaths.DATE);
        if (test != null && card != null && test.isAfter(card)) {
            findings.add(
                    Finding.stop(Step.TRAYS, "trays.afterCard", Arg.text(test.toString()), Arg.text(card.toString()))
                            .at(TrayPaths.TEST_DATE.at(at).pointer()));
        }
    }
}
