package org.evenfall.setup;

import org.evenfall.reference.TestedProduct;
import org.evenfall.setup.entry.MatchEntries;
import org.evenfall.setup.entry.Setup;

/** What choosing a tested product changes: it is noted, and its settings are taken over unless levers are typed already. */
public final class TakeOverSettings {

    private TakeOverSettings() {}

    /**
     * The setup with this tested product chosen.
     *
     * @param id of an entry in the setup's library, or of today's settings; an id that is not there is noted, nothing is
     *     taken over
     */
    public static Setup from(Setup setup, String id) {
        MatchEntries match = setup.match().withChosen(id);
        if (!match.settings().levers().isEmpty()) {
            return setup.withMatch(match);
        }
        if (id.equals(TestedProduct.TODAY_ID)) {
            return setup.withMatch(match.withSettings(
                    match.today().settings().withUnknownKeys(match.settings().unknownKeys())));
        }
        return setup.withMatch(match.library().stream()
                .filter(entry -> entry.id().equals(id))
                .findFirst()
                .map(entry -> match.withSettings(
                        entry.settings().withUnknownKeys(match.settings().unknownKeys())))
                .orElse(match));
    }
}
