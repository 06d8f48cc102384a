package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Objects;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.quantity.EnteredQuantity;

/**
 * Step 0: where and what for.
 *
 * @param farm farm, as it shall stand on the card
 * @param field field or block, may be empty
 * @param crop crop
 * @param season season, for example 2027
 * @param tramlineWidth distance between tramlines, m or ft; 9 to 60 m
 * @param drivingPattern how the passes follow each other
 */
@RecordBuilder
public record StartEntries(
        String farm,
        String field,
        String crop,
        String season,
        EnteredQuantity tramlineWidth,
        DrivingPattern drivingPattern)
        implements StartEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final StartEntries EMPTY =
            new StartEntries("", "", "", "", EnteredQuantity.EMPTY, DrivingPattern.UNANSWERED);

    public StartEntries {
        farm = Objects.requireNonNullElse(farm, "");
        field = Objects.requireNonNullElse(field, "");
        crop = Objects.requireNonNullElse(crop, "");
        season = Objects.requireNonNullElse(season, "");
        tramlineWidth = EnteredQuantity.orEmpty(tramlineWidth);
        drivingPattern = Objects.requireNonNullElse(drivingPattern, DrivingPattern.UNANSWERED);
    }
}
