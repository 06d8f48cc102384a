package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.machine.CheckItem;
import org.evenfall.machine.MachineCheck;
import org.evenfall.machine.MachineCheckResult;
import org.evenfall.machine.MachineProfile;
import org.evenfall.machine.VaneCheck;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.CheckEntry;
import org.evenfall.setup.path.Entry;
import org.evenfall.setup.path.MachineCheckPaths;
import org.jspecify.annotations.Nullable;

/** Step 3 in findings: what was not checked, what failed, what was overridden with which reason. */
final class MachineCheckFindings {

    private static final String LEVEL = "yard.level";
    private static final String TYRES = "yard.tyres";
    private static final String PTO = "yard.pto";
    private static final List<String> MEASURES = List.of(LEVEL, TYRES, PTO);

    /** Added to a key where a reason to go on is typed. */
    private static final String WITH_REASON = "Overridden";

    /** Rounding room in which a difference still counts as within its limit. */
    private static final double ROUNDING = 1e-9;

    private final ReadSetup read;
    private final MachineProfile machine;
    private final MachineCheckResult result;
    private final List<Finding> findings = new ArrayList<>();

    MachineCheckFindings(ReadSetup read, MachineProfile machine, MachineCheckResult result) {
        this.read = read;
        this.machine = machine;
        this.result = result;
    }

    List<Finding> all(@Nullable Double ptoWantedRpm) {
        missing(result.unanswered().contains(CheckItem.GUARDS), "missing.guards", MachineCheckPaths.CHECKS);
        open(!result.unanswered().isEmpty(), "missing.checks", MachineCheckPaths.CHECKS);
        missing(result.ptoRpm() == null, "missing.pto", MachineCheckPaths.PTO_MEASURED);
        missing(read.isBlank(MachineCheckPaths.VANES), "missing.vanes", MachineCheckPaths.VANES);
        open(result.levelDifferenceM() == null, "missing.level", MachineCheckPaths.HEIGHT_LEFT);
        parts();
        result.vanes().stream().filter(VaneCheck::failed).forEach(this::vane);
        limit(
                new Difference(result.levelDifferenceM(), MachineCheck.WORST_LEVEL_M, Unit.M, Unit.CM),
                LEVEL,
                "source.level",
                MachineCheckPaths.HEIGHT_LEFT);
        limit(
                new Difference(result.tyreDifferenceBar(), MachineCheck.WORST_TYRE_BAR, Unit.BAR, Unit.BAR),
                TYRES,
                "source.tyres",
                MachineCheckPaths.TYRE_LEFT);
        limit(
                new Difference(
                        MachineCheck.ptoDeviationPercent(result.ptoRpm(), ptoWantedRpm),
                        MachineCheck.WORST_PTO_PERCENT,
                        Unit.PERCENT,
                        Unit.PERCENT),
                PTO,
                "source.pto",
                MachineCheckPaths.PTO_MEASURED);
        if (result.ptoRpm() != null && SettingsAssessor.beyond(machine, result.ptoRpm())) {
            findings.add(Finding.stop(Step.MACHINE, "settings.ptoBeyond", read.typed(MachineCheckPaths.PTO_MEASURED))
                    .at(MachineCheckPaths.PTO_MEASURED.pointer()));
        }
        return findings;
    }

    /** Whether a finding says that level, tyres or PTO speed is off, with a reason to go on or without. */
    static boolean isMeasureOff(Finding finding) {
        return MEASURES.stream()
                .anyMatch(key -> finding.key().equals(key) || finding.key().equals(key + WITH_REASON));
    }

    private void missing(boolean missing, String key, Entry<?, ?> entry) {
        if (missing) {
            findings.add(Finding.missing(Step.MACHINE, key).at(entry.pointer()));
        }
    }

    /** What is asked for, but not needed for the card. */
    private void open(boolean open, String key, Entry<?, ?> entry) {
        if (open) {
            findings.add(Finding.note(Step.MACHINE, key).at(entry.pointer()));
        }
    }

    private void parts() {
        String at = MachineCheckPaths.CHECKS.pointer();
        for (CheckItem item : result.failed()) {
            Arg part = Arg.word(wordKey(item));
            String key = item == CheckItem.GUARDS ? "yard.guards" : "yard.failed";
            findings.add((MachineCheck.spoilPattern().contains(item)
                            ? Finding.stop(Step.MACHINE, key, part)
                            : Finding.warn(Step.MACHINE, "yard.failedFlow", part))
                    .at(at));
        }
        for (CheckEntry check : read.get(MachineCheckPaths.CHECKS)) {
            if (result.overridden().contains(check.item())) {
                findings.add(Finding.warn(
                                Step.MACHINE,
                                "yard.overridden",
                                Arg.word(wordKey(check.item())),
                                Arg.text(check.overrideReason()))
                        .at(at));
            }
        }
    }

    private static String wordKey(Enum<?> word) {
        return "choice." + word.getDeclaringClass().getSimpleName() + "." + word.name();
    }

    private void vane(VaneCheck vane) {
        String reason = read.get(MachineCheckPaths.VANE_OVERRIDE_REASON);
        Arg label = Arg.text(vane.label());
        Arg side = Arg.word(wordKey(vane.side()));
        Arg wear = Arg.number(vane.wearM() == null ? 0 : Unit.M.to(Unit.MM, vane.wearM()), 0, Unit.MM);
        findings.add((reason.isBlank()
                        ? Finding.stop(Step.MACHINE, "yard.vane", label, side, wear)
                                .from("source.vaneWear")
                        : Finding.warn(Step.MACHINE, "yard.vaneOverridden", label, side, Arg.text(reason))
                                .from("source.vaneWear"))
                .at(MachineCheckPaths.VANES.pointer()));
    }

    /**
     * A difference and how far it may go.
     *
     * @param value null while it is not measured
     * @param worst the largest that passes, in the same unit
     * @param unit unit of both
     * @param shown unit in which it is shown
     */
    private record Difference(@Nullable Double value, double worst, Unit unit, Unit shown) {
        Arg shown(double number) {
            return Arg.number(unit.to(shown, number), 1, shown);
        }
    }

    private void limit(Difference difference, String key, String source, Entry<?, ?> entry) {
        if (difference.value() == null || Math.abs(difference.value()) <= difference.worst() + ROUNDING) {
            return;
        }
        String reason = read.get(MachineCheckPaths.LEVEL_OVERRIDE_REASON);
        Arg found = difference.shown(Math.abs(difference.value()));
        Arg allowed = difference.shown(difference.worst());
        findings.add((reason.isBlank()
                        ? Finding.stop(Step.MACHINE, key, found, allowed)
                        : Finding.warn(Step.MACHINE, key + WITH_REASON, found, allowed, Arg.text(reason)))
                .from(source)
                .at(entry.pointer()));
    }
}
