package org.evenfall.wizard.step.start;

import java.util.List;
import org.evenfall.setup.entry.MachineEntries;

/** The machines of the farm, for the prompt that chooses one. */
public interface KnownMachines {

    /** The machines, by name. */
    List<MachineEntries> all();

    /** Takes one of them into the open setup. */
    void choose(MachineEntries machine);

    /** Whether the machine of the open setup is one of them, unchanged. */
    boolean isKnown();
}
