package org.evenfall.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import org.evenfall.setup.entry.Setup;

/**
 * A setup as it stands in its file.
 *
 * @param setup what was typed
 * @param unknown keys of the file that this version does not know, in their places; they survive a save
 */
public record SetupFile(Setup setup, JsonNode unknown) {

    /** A setup that was never saved. */
    public static SetupFile of(Setup setup) {
        return new SetupFile(setup, JsonNodeFactory.instance.objectNode());
    }

    public SetupFile with(Setup changed) {
        return new SetupFile(changed, unknown);
    }
}
