package org.evenfall.trays.ground;

import java.util.List;
import org.evenfall.trays.AdviceInput.DoneTest;

/** A way to set a machine by tray tests. One object serves one loop and may remember. */
interface Rule {

    /** What to do after these tests, oldest first, at least one. */
    Decision next(List<DoneTest> tests);

    /** Tests at most. */
    default int mostTests() {
        return 6;
    }

    /** Whether the last setting was tested already at least twice in a row. */
    static boolean repeated(List<DoneTest> tests) {
        int last = tests.size() - 1;
        return last > 0 && tests.get(last).settings().equals(tests.get(last - 1).settings());
    }
}
