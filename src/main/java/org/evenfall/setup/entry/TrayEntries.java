package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import org.evenfall.machine.Side;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.trays.Surface;

/**
 * Step 6: the tray test.
 *
 * @param trayLength length of a tray along the travel, cm, m or in
 * @param trayWidth width of a tray across the travel, cm, m or in
 * @param trayCount number of trays; not typed: 7
 * @param catchKind how a catch is measured: MASS, VOLUME or HEIGHT
 * @param tubeBore inner diameter of the measuring tube, mm, cm or in
 * @param readingStep smallest step of the scale, cylinder or tube, in the unit of the catches
 * @param wheels wheels of the tractor
 * @param wind wind speed at the test site now, m/s, km/h or mph
 * @param windLimits own limits of the wind speed
 * @param surface surface under the trays
 * @param traysLevel whether the trays are level
 * @param tubesDry whether trays and tubes are dry
 * @param clearOfWheelmarks whether the trays are clear of wheel marks
 * @param tests tray tests, oldest first
 * @param line trays of the long line under one pass, in any order
 * @param twoLevers whether two levers may be changed at once
 * @param borderDevice border spreading device and its setting, free text
 * @param borderSide side of the border spreading device
 * @param switchOn distance from the discs to the headland tramline where spreading starts, m or ft; minus: toward the edge
 * @param switchOff distance from the discs to the headland tramline where spreading stops, m or ft; minus: toward the edge
 * @param unknownKeys keys of this object in the file that this version does not know
 */
@RecordBuilder
public record TrayEntries(
        EnteredQuantity trayLength,
        EnteredQuantity trayWidth,
        EnteredQuantity trayCount,
        AmountKind catchKind,
        EnteredQuantity tubeBore,
        EnteredQuantity readingStep,
        WheelEntries wheels,
        EnteredQuantity wind,
        WindLimitEntries windLimits,
        Surface surface,
        YesNo traysLevel,
        YesNo tubesDry,
        YesNo clearOfWheelmarks,
        List<TrayTestEntry> tests,
        List<SinglePassTrayEntry> line,
        YesNo twoLevers,
        String borderDevice,
        Side borderSide,
        EnteredQuantity switchOn,
        EnteredQuantity switchOff,
        UnknownKeys unknownKeys)
        implements TrayEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final TrayEntries EMPTY = Blank.of(TrayEntries.class);

    /** Copies what can change, so that no entry changes afterwards. */
    public TrayEntries {
        tests = List.copyOf(tests);
        line = List.copyOf(line);
    }
}
