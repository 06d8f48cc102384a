package org.evenfall.setup;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.machine.Lever;
import org.evenfall.machine.MachineProfile;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.SettingsEntries;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.QuantityMap;
import org.evenfall.setup.path.SettingsPaths;
import org.jspecify.annotations.Nullable;

/** How the machine is set, at one of the places where a setup has settings: levers and PTO speed within their limits. */
final class SettingsAssessor {

    private SettingsAssessor() {}

    static Assessed<ReadSettings> assess(ReadSetup read, EntryPath<SettingsEntries> at, MachineProfile machine) {
        List<Finding> findings = new ArrayList<>();
        Map<String, Double> levers = new LinkedHashMap<>();
        for (Lever lever : machine.levers()) {
            EntryPath<EnteredQuantity> path = QuantityMap.item(SettingsPaths.LEVERS.at(at), lever.label());
            Double value = read.number(path);
            if (value != null && lever.reaches(value)) {
                levers.put(lever.label(), value);
            } else if (value != null) {
                findings.add(Finding.stop(
                                at.step(),
                                "settings.leverBeyond",
                                Arg.text(lever.label()),
                                read.typed(SettingsPaths.LEVERS, path),
                                scale(lever.lowest()),
                                scale(lever.highest()))
                        .at(path.pointer()));
            }
        }
        Double pto = read.number(SettingsPaths.PTO_SPEED, at);
        if (pto != null && beyond(machine, pto)) {
            findings.add(Finding.stop(
                            at.step(),
                            "settings.ptoBeyond",
                            read.typed(SettingsPaths.PTO_SPEED, SettingsPaths.PTO_SPEED.at(at)))
                    .at(SettingsPaths.PTO_SPEED.at(at).pointer()));
        }
        return new Assessed<>(
                new ReadSettings(
                        levers,
                        pto,
                        read.number(SettingsPaths.HEIGHT_OVER_CROP, at),
                        read.number(SettingsPaths.TILT, at)),
                findings);
    }

    private static Arg scale(double value) {
        return Arg.number(value, ExactNumber.decimals(value), Unit.NONE);
    }

    /** Whether a PTO speed is outside what the machine's handbook allows. */
    static boolean beyond(MachineProfile machine, double ptoRpm) {
        return below(ptoRpm, machine.ptoLowestRpm()) || above(ptoRpm, machine.ptoHighestRpm());
    }

    private static boolean below(double value, @Nullable Double limit) {
        return limit != null && value < limit;
    }

    private static boolean above(double value, @Nullable Double limit) {
        return limit != null && value > limit;
    }
}
