package org.evenfall.store;

import org.evenfall.setup.entry.Setup;

/**
 * A setup of a file.
 *
 * @param setup what was typed
 */
public record SetupFile(Setup setup) {

    public static SetupFile of(Setup setup) {
        return new SetupFile(setup);
    }

    public SetupFile with(Setup changed) {
        return new SetupFile(changed);
    }
}
