package org.evenfall.setup;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Severity;
import org.evenfall.finding.Step;
import org.evenfall.machine.HeightResult;
import org.evenfall.machine.MachineCheckResult;
import org.evenfall.machine.MachineProfile;
import org.evenfall.reference.MatchResult;
import org.evenfall.setup.entry.Setup;

/** Entries in, one immutable assessment out. Pure: the same setup gives the same assessment. */
public final class Assessor {

    private Assessor() {}

    public static Assessment assess(Setup setup) {
        return assess(setup, AssessOptions.USUAL);
    }

    public static Assessment assess(Setup setup, AssessOptions options) {
        EntryReader reader = new EntryReader();
        Double width = StartAssessor.tramlineWidthM(setup, reader);
        MachineProfile machine = StartAssessor.machine(setup, width, reader);
        ProductResult product = ProductAssessor.assess(setup, machine, reader);
        MatchResult match = MatchAssessor.assess(setup, machine, width, product, options, reader);
        ReadSettings start =
                MatchAssessor.settings(setup.match().settings(), machine, "", new EntryReader(), Step.MATCH);
        MachineCheckResult machineCheck = MachineCheckAssessor.assess(setup, machine, start.ptoRpm(), reader);
        HeightResult height = HeightAssessor.assess(setup, machine, product, start.heightOverCropM(), reader);
        RateResult rate = RateAssessor.assess(setup, machine, width, product, reader);
        TraysResult trays = TraysAssessor.assess(setup, machine, width, product, rate, machineCheck, reader);
        CardResult card = CardAssessor.assess(setup, machine, match, machineCheck, height, rate, trays, reader);
        List<Finding> findings = reader.findings().stream()
                .distinct()
                .sorted(Comparator.comparing(Finding::step).thenComparing(Finding::severity))
                .toList();
        return new Assessment(
                states(findings, card),
                machine,
                width,
                product,
                match,
                machineCheck,
                height,
                rate,
                trays,
                card,
                findings);
    }

    private static Map<Step, StepState> states(List<Finding> findings, CardResult card) {
        Map<Step, StepState> states = new EnumMap<>(Step.class);
        for (Step step : Step.values()) {
            states.put(step, state(step, findings, card));
        }
        return states;
    }

    private static StepState state(Step step, List<Finding> findings, CardResult card) {
        Severity worst = null;
        boolean open = step == Step.CARD && !card.cardAllowed() && !card.findingOnly();
        for (Finding finding : findings) {
            if (finding.step() == step) {
                worst = worst == null || finding.severity().compareTo(worst) < 0 ? finding.severity() : worst;
                open |= finding.key().startsWith("missing.");
            }
        }
        if (worst == Severity.STOP) {
            return StepState.STOPPED;
        }
        if (open) {
            return StepState.OPEN;
        }
        return worst == Severity.WARN ? StepState.WARNED : StepState.DONE;
    }
}
