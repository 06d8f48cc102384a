package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import org.evenfall.quantity.EnteredQuantity;

/**
 * One tray test. Catches are listed from left to right in the direction of travel of the middle pass.
 *
 * @param date date of the test as typed (30.4.2027, 2027-04-30), may be empty
 * @param settings settings of the machine in the test
 * @param openingLeft opening on the left, number on the opening scale, or the factor of a terminal
 * @param openingRight opening on the right, number on the opening scale
 * @param runs number of times the three passes were driven
 * @param wind wind speed, m/s, km/h or mph
 * @param positions measured positions of the trays, negative left, m or ft; empty: the planned positions
 * @param catches catch of each tray, all runs together; an empty text: spilt
 * @param remark remark, free text
 * @param conditions what else the test was driven under
 * @param unknownKeys keys of this object in the file that this version does not know
 */
@RecordBuilder
public record TrayTestEntry(
        String date,
        SettingsEntries settings,
        EnteredQuantity openingLeft,
        EnteredQuantity openingRight,
        EnteredQuantity runs,
        EnteredQuantity wind,
        List<EnteredQuantity> positions,
        List<EnteredQuantity> catches,
        String remark,
        TestConditionEntries conditions,
        UnknownKeys unknownKeys)
        implements TrayTestEntryBuilder.With {

    /** Nothing typed yet. */
    public static final TrayTestEntry EMPTY = Blank.of(TrayTestEntry.class);

    /** Copies what can change, so that no entry changes afterwards. */
    public TrayTestEntry {
        positions = List.copyOf(positions);
        catches = List.copyOf(catches);
    }
}
