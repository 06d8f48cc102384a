package org.evenfall.setup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.evenfall.finding.Finding;
import org.evenfall.machine.HeightResult;
import org.evenfall.machine.MachineCheckResult;
import org.evenfall.machine.MachineProfile;
import org.evenfall.reference.MatchResult;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.LogPaths;
import org.evenfall.setup.path.MatchPaths;
import org.evenfall.setup.path.StartPaths;
import org.jspecify.annotations.Nullable;

/** Entries in, one immutable assessment out. Pure: the same setup gives the same assessment. */
public final class Assessor {

    private final List<Finding> findings = new ArrayList<>();

    private Assessor() {}

    /** Assesses a setup with the usual amount of simulation. */
    public static Assessment assess(Setup setup) {
        return assess(setup, AssessOptions.USUAL);
    }

    /** Assesses a setup: reads every entry once, then computes step by step what follows from what was read. */
    public static Assessment assess(Setup setup, AssessOptions options) {
        return new Assessor().assessment(ReadingPass.read(setup), options);
    }

    /** Only what the advice after the tray tests follows from: quicker than the whole assessment. */
    public static FieldResult assessField(Setup setup) {
        return new Assessor().field(ReadingPass.read(setup));
    }

    private FieldResult field(ReadSetup read) {
        MachineProfile machine = take(MachineAssessor.assess(read));
        ProductResult product = take(ProductAssessor.assess(read, machine));
        Double widthM = read.number(StartPaths.TRAMLINE_WIDTH);
        ReadSettings start = take(SettingsAssessor.assess(read, MatchPaths.SETTINGS.only(), machine));
        MachineCheckResult check = take(MachineCheckAssessor.assess(read, machine, start.ptoRpm()));
        HeightResult height = takeOrNull(HeightAssessor.assess(read, machine, product, start.heightOverCropM()));
        RateResult rate = take(RateAssessor.assess(read, machine, product));
        MachineSet now = widthM == null ? null : SetNow.of(read, widthM, machine, product, start, check, height, rate);
        TraysResult trays = take(TraysAssessor.assess(
                read,
                machine,
                product,
                rate,
                now,
                OrderOfCure.of(read, machine, check, rate, start.ptoRpm()),
                check.blocksFieldTest()));
        return new FieldResult(read, machine, widthM, product, start, check, height, rate, now, trays);
    }

    private Assessment assessment(ReadSetup read, AssessOptions options) {
        findings.addAll(read.findings());
        FieldResult field = field(read);
        MachineProfile machine = field.machine();
        ProductResult product = field.product();
        Double widthM = field.tramlineWidthM();
        HeightResult height = field.height();
        RateResult rate = field.rate();
        TraysResult trays = field.trays();
        MatchResult match = takeOrNull(MatchAssessor.assess(read, machine, product, options));
        findings.addAll(ReachFindings.ofProduct(match, widthM));
        findings.addAll(NitrogenLossFindings.of(read));
        findings.addAll(StorageFindings.of(read));
        findings.addAll(SwitchFindings.againstDense(match));
        FinalSettings settings =
                CardAssessor.settings(machine, field.start(), field.machineCheck(), height, rate, trays);
        if (!rate.bucketIndexes().isEmpty()) {
            int last = rate.bucketIndexes().get(rate.bucketIndexes().size() - 1);
            findings.addAll(new BucketConditions(read, last).settings(machine, settings, product.density()));
        }
        CardResult card = take(CardAssessor.assess(read, match, trays, settings, withoutLog(findings)));
        findings.addAll(ReachFindings.ofMatch(read, match, trays, widthM));
        SeasonLogResult log = take(SeasonLogAssessor.assess(read, product, rate));
        List<Finding> all = findings.stream()
                .distinct()
                .sorted(Comparator.comparing(Finding::step)
                        .thenComparing(finding -> finding.kind().weight()))
                .toList();
        return new Assessment(
                read,
                StepState.of(withoutLog(all), card),
                machine,
                widthM,
                field.now() == null ? null : field.now().conditions(),
                product,
                match,
                field.machineCheck(),
                height,
                rate,
                trays,
                card,
                log,
                all);
    }

    /** What is logged after the card keeps nobody from the card, and changes the state of no step. */
    private static List<Finding> withoutLog(List<Finding> findings) {
        return findings.stream()
                .filter(finding -> !LogPaths.holds(finding.field()))
                .toList();
    }

    private <T> T take(Assessed<T> assessed) {
        findings.addAll(assessed.findings());
        return assessed.present();
    }

    private <T> @Nullable T takeOrNull(Assessed<T> assessed) {
        findings.addAll(assessed.findings());
        return assessed.result();
    }
}
