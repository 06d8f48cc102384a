package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.evenfall.quantity.EnteredQuantity;

/**
 * Step 7: the card.
 *
 * @param paper sheet the card is printed on
 * @param language language of the card; unanswered: the language of the program
 * @param measuredBy name of the person who measured
 * @param signedBy name of the person who signs
 * @param role role of the person who signs
 * @param date date of the card as typed (30.4.2027, 2027-04-30)
 * @param revision revision of the card, 1 for the first; 0: none yet
 * @param previousDate date of the card before this revision, 2027-04-30; empty in the first
 * @param windStop wind speed above which spreading stops, m/s, km/h or mph
 * @param remarks remarks, free text
 * @param unevenReason reason to spread although the field CV is above 15 %; printed on the card
 * @param unknownKeys keys of this object in the file that this version does not know
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
        String previousDate,
        EnteredQuantity windStop,
        String remarks,
        String unevenReason,
        UnknownKeys unknownKeys)
        implements CardEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final CardEntries EMPTY = Blank.of(CardEntries.class);
}
