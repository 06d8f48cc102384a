package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Objects;
import org.evenfall.quantity.EnteredQuantity;

/**
 * Step 7: the card.
 *
 * @param paper sheet
 * @param language language of the card; unanswered: the program's own
 * @param measuredBy who measured
 * @param signedBy who signs
 * @param role role of who signs
 * @param date ISO date of the card
 * @param revision revision, 1 for the first
 * @param windStop stop spreading above this wind
 * @param remarks free text
 */
@RecordBuilder
public record CardEntries(
        Paper paper,
        CardLanguage language,
        String measuredBy,
        String signedBy,
        String role,
        String date,
        int revision,
        EnteredQuantity windStop,
        String remarks)
        implements CardEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final CardEntries EMPTY =
            new CardEntries(Paper.A5_LANDSCAPE, CardLanguage.UNANSWERED, "", "", "", "", 0, EnteredQuantity.EMPTY, "");

    public CardEntries {
        language = Objects.requireNonNullElse(language, CardLanguage.UNANSWERED);
        paper = Objects.requireNonNullElse(paper, Paper.A5_LANDSCAPE);
        measuredBy = Objects.requireNonNullElse(measuredBy, "");
        signedBy = Objects.requireNonNullElse(signedBy, "");
        role = Objects.requireNonNullElse(role, "");
        date = Objects.requireNonNullElse(date, "");
        windStop = EnteredQuantity.orEmpty(windStop);
        remarks = Objects.requireNonNullElse(remarks, "");
    }
}
