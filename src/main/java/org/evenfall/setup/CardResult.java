package org.evenfall.setup;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Step 7 assessed: may a card be made, and of what kind.
 *
 * @param cardAllowed a card may be made and signed
 * @param findingOnly only a one-page finding may be made: too uneven, or not at this width
 * @param missing bundle keys of what is missing for a card
 * @param settings the settings that go on it
 * @param unevenPercent field CV where it is not even enough and a card needs a reason, %; else null
 * @param testedDelivery the delivery of the tray test, where it is another one than now; else empty
 */
public record CardResult(
        boolean cardAllowed,
        boolean findingOnly,
        List<String> missing,
        FinalSettings settings,
        @Nullable Double unevenPercent,
        String testedDelivery) {

    /** Copies the list. */
    public CardResult {
        missing = List.copyOf(missing);
    }
}
