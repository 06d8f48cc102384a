package org.evenfall.fuzz;

import org.evenfall.reference.ProgressMonitor;
import org.evenfall.setup.AssessOptions;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.InputFileException;
import org.evenfall.store.InputText;
import org.evenfall.store.SetupJson;

/** A setup file: read, assessed, and written so that it can be read again. */
final class SetupTarget {

    private static final SetupJson JSON = new SetupJson();

    /** Two simulated repeats instead of hundreds; the path through the program is the same. */
    private static final AssessOptions QUICK = new AssessOptions(1, 2, ProgressMonitor.NONE);

    private SetupTarget() {}

    static void take(byte[] input) {
        Setup setup;
        try {
            setup = JSON.read(InputText.decode(input, "input"), "input");
        } catch (InputFileException refused) {
            return;
        }
        assess(setup);
        String written = JSON.write(setup);
        try {
            Targets.require(
                    JSON.write(JSON.read(written, "written")).equals(written), "changed by reading: " + written);
        } catch (InputFileException refused) {
            throw new AssertionError("written, but not read again: " + written, refused);
        }
    }

    static void assess(Setup setup) {
        Assessor.assess(setup, QUICK);
    }
}
