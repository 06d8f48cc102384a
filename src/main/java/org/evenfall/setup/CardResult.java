package org.evenfall.setup;

import java.util.List;

/**
 * Step 7 assessed: may a card be made, and of what kind.
 *
 * @param cardAllowed a card may be made and signed
 * @param findingOnly only a one-page finding may be made: not at this width
 * @param missing bundle keys of what is missing for a card
 * @param settings the settings that go on it
 */
public record CardResult(boolean cardAllowed, boolean findingOnly, List<String> missing, FinalSettings settings) {

    /** Copies the list. */
    public CardResult {
        missing = List.copyOf(missing);
    }
}
