package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.TrayEntries;
import org.evenfall.setup.path.Limits;
import org.evenfall.setup.path.Quantity;
import org.evenfall.setup.path.TrayPaths;

/**
 * Step 6: the distances of the discs from the headland tramline at which the outlets open and close. Plus is into the field,
 * minus toward its edge; a minus is reported, so that nobody types it unawares.
 */
final class SwitchFindings {

    private SwitchFindings() {}

    static List<Finding> of(ReadSetup read) {
        List<Finding> findings = new ArrayList<>();
        add(findings, read, TrayPaths.SWITCH_ON, "trays.switchOnShort");
        add(findings, read, TrayPaths.SWITCH_OFF, "trays.switchOffShort");
        return findings;
    }

    private static void add(List<Finding> findings, ReadSetup read, Quantity<TrayEntries> entry, String name) {
        Double metres = read.number(entry);
        if (metres == null || metres >= 0) {
            return;
        }
        Limits usual = entry.range(read.setup()).usual();
        findings.add(Finding.note(
                        Step.TRAYS,
                        "trays.switchBefore",
                        Arg.word(name),
                        Arg.number(metres, 1, Unit.M),
                        Arg.number(usual.low(), 0, Unit.NONE),
                        Arg.number(usual.high(), 0, Unit.M))
                .at(entry.pointer()));
    }
}
