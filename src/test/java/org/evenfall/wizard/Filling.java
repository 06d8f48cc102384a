package org.evenfall.wizard;

import java.nio.file.Path;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.SetupJson;
import org.evenfall.store.SetupStore;

/** How much is typed in a setup that is looked at. */
enum Filling {
    EMPTY,
    HALF,
    DEMO,
    UNEVEN,
    WORST;

    /** Such a setup. */
    Setup setup() throws Exception {
        return switch (this) {
            case EMPTY -> Setup.EMPTY;
            case HALF -> demo("unfinished.json");
            case DEMO -> demo("setup.json");
            case UNEVEN -> demo("uneven.json");
            case WORST -> WorstCase.setup();
        };
    }

    private static Setup demo(String name) throws Exception {
        return new SetupStore(new SetupJson()).read(Path.of("demo", name));
    }
}
