package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Objects;
import org.evenfall.machine.Side;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.trays.Surface;

/**
 * Step 6: the tray test.
 *
 * @param trayLength tray along the travel, cm, m or in
 * @param trayWidth tray across, cm, m or in
 * @param trayCount number of trays, 7 unless told
 * @param catchKind MASS, VOLUME or HEIGHT
 * @param tubeBore inner diameter of the tube, mm
 * @param readingStep smallest step read on scale, cylinder or tube
 * @param wheels where the tractor's wheels run
 * @param wind wind at the test place now
 * @param windLimits the owner's limits for it
 * @param surface what is under the trays
 * @param traysLevel trays level
 * @param tubesDry trays and tubes dry
 * @param clearOfWheelmarks aside from wheel marks
 * @param tests tests, oldest first
 * @param line trays of the long line under one pass, in any order
 * @param twoLevers whether two levers may be moved at once
 * @param borderDevice border device and how it is set
 * @param borderSide which side
 * @param switchOn switch-on distance from the headland line, m or ft
 * @param switchOff switch-off distance
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
        EnteredQuantity switchOff)
        implements TrayEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final TrayEntries EMPTY = new TrayEntries(
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            AmountKind.UNANSWERED,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            WheelEntries.EMPTY,
            EnteredQuantity.EMPTY,
            WindLimitEntries.EMPTY,
            Surface.UNANSWERED,
            YesNo.UNANSWERED,
            YesNo.UNANSWERED,
            YesNo.UNANSWERED,
            List.of(),
            List.of(),
            YesNo.UNANSWERED,
            "",
            Side.UNANSWERED,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY);

    public TrayEntries {
        borderSide = Objects.requireNonNullElse(borderSide, Side.UNANSWERED);
        trayLength = EnteredQuantity.orEmpty(trayLength);
        trayWidth = EnteredQuantity.orEmpty(trayWidth);
        trayCount = EnteredQuantity.orEmpty(trayCount);
        catchKind = Objects.requireNonNullElse(catchKind, AmountKind.UNANSWERED);
        tubeBore = EnteredQuantity.orEmpty(tubeBore);
        readingStep = EnteredQuantity.orEmpty(readingStep);
        wheels = Objects.requireNonNullElse(wheels, WheelEntries.EMPTY);
        wind = EnteredQuantity.orEmpty(wind);
        windLimits = Objects.requireNonNullElse(windLimits, WindLimitEntries.EMPTY);
        surface = Objects.requireNonNullElse(surface, Surface.UNANSWERED);
        traysLevel = Objects.requireNonNullElse(traysLevel, YesNo.UNANSWERED);
        tubesDry = Objects.requireNonNullElse(tubesDry, YesNo.UNANSWERED);
        clearOfWheelmarks = Objects.requireNonNullElse(clearOfWheelmarks, YesNo.UNANSWERED);
        tests = Lists.of(tests);
        line = Lists.of(line);
        twoLevers = Objects.requireNonNullElse(twoLevers, YesNo.UNANSWERED);
        borderDevice = Objects.requireNonNullElse(borderDevice, "");
        switchOn = EnteredQuantity.orEmpty(switchOn);
        switchOff = EnteredQuantity.orEmpty(switchOff);
    }
}
