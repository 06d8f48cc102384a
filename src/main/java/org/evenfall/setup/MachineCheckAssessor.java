package org.evenfall.setup;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.evenfall.machine.CheckAnswer;
import org.evenfall.machine.CheckItem;
import org.evenfall.machine.MachineCheck;
import org.evenfall.machine.MachineCheckResult;
import org.evenfall.machine.MachineProfile;
import org.evenfall.setup.entry.CheckEntry;
import org.evenfall.setup.entry.VaneEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.MachineCheckPaths;
import org.jspecify.annotations.Nullable;

/** Step 3: the machine check. */
final class MachineCheckAssessor {

    private MachineCheckAssessor() {}

    /** @param ptoWantedRpm PTO speed of the settings to start from; null while it is not typed */
    static Assessed<MachineCheckResult> assess(ReadSetup read, MachineProfile machine, @Nullable Double ptoWantedRpm) {
        Map<CheckItem, CheckAnswer> answers = new EnumMap<>(CheckItem.class);
        Set<CheckItem> withReason = EnumSet.noneOf(CheckItem.class);
        for (CheckEntry check : read.get(MachineCheckPaths.CHECKS)) {
            answers.put(check.item(), check.answer());
            if (!check.overrideReason().isBlank()) {
                withReason.add(check.item());
            }
        }
        MachineCheckResult result = MachineCheck.assess(
                new MachineCheck.Found(
                        vanes(read),
                        answers,
                        withReason,
                        !read.isBlank(MachineCheckPaths.VANE_OVERRIDE_REASON),
                        !read.isBlank(MachineCheckPaths.LEVEL_OVERRIDE_REASON),
                        read.number(MachineCheckPaths.HEIGHT_LEFT),
                        read.number(MachineCheckPaths.HEIGHT_RIGHT),
                        read.number(MachineCheckPaths.TYRE_LEFT),
                        read.number(MachineCheckPaths.TYRE_RIGHT),
                        read.number(MachineCheckPaths.PTO_MEASURED),
                        ptoWantedRpm),
                machine.discSpeedAt540Rpm());
        return new Assessed<>(result, new MachineCheckFindings(read, machine, result).all(ptoWantedRpm));
    }

    private static List<MachineCheck.MeasuredVane> vanes(ReadSetup read) {
        List<MachineCheck.MeasuredVane> vanes = new ArrayList<>();
        for (int i = 0; i < read.get(MachineCheckPaths.VANES).size(); i++) {
            EntryPath<VaneEntry> at = MachineCheckPaths.VANES.item(i);
            VaneEntry vane = at.get(read.setup());
            vanes.add(new MachineCheck.MeasuredVane(
                    vane.disc(),
                    vane.label(),
                    read.number(MachineCheckPaths.VANE_LENGTH, at),
                    read.number(MachineCheckPaths.VANE_LENGTH_NEW, at),
                    vane.straightSmoothUnholed()));
        }
        return vanes;
    }
}
