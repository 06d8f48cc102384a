package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.quantity.EnteredQuantity;

/**
 * Step 0: farm, field and crop.
 *
 * @param farm name of the farm, as printed on the card
 * @param field field or block, may be empty
 * @param crop crop
 * @param season season, for example 2027
 * @param tramlineWidth distance between tramlines, m or ft; 9 to 60 m
 * @param drivingPattern order and direction of the passes
 * @param units units that are offered first
 * @param unknownKeys keys of this object in the file that this version does not know
 */
@RecordBuilder
public record StartEntries(
        String farm,
        String field,
        String crop,
        String season,
        EnteredQuantity tramlineWidth,
        DrivingPattern drivingPattern,
        UnitSystem units,
        UnknownKeys unknownKeys)
        implements StartEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final StartEntries EMPTY = Blank.of(StartEntries.class);
}
