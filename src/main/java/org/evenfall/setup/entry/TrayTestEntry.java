package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Objects;
import org.evenfall.quantity.EnteredQuantity;

/**
 * One tray test. Catches are listed from left to right in the direction of travel of the middle pass.
 *
 * @param date ISO date, may be empty
 * @param settings how the machine stood
 * @param openingLeft opening left
 * @param openingRight opening right
 * @param runs how many times the three passes were driven
 * @param wind wind speed, m/s, km/h or mph
 * @param positions true positions, m, negative left; empty: the layout's own
 * @param catches catch of each tray, all runs together; an empty text: spilt
 * @param remark free text
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
        String remark)
        implements TrayTestEntryBuilder.With {

    /** Nothing typed yet. */
    public static final TrayTestEntry EMPTY = new TrayTestEntry(
            "",
            SettingsEntries.EMPTY,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            EnteredQuantity.EMPTY,
            List.of(),
            List.of(),
            "");

    public TrayTestEntry {
        date = Objects.requireNonNullElse(date, "");
        settings = Objects.requireNonNullElse(settings, SettingsEntries.EMPTY);
        openingLeft = EnteredQuantity.orEmpty(openingLeft);
        openingRight = EnteredQuantity.orEmpty(openingRight);
        runs = EnteredQuantity.orEmpty(runs);
        wind = EnteredQuantity.orEmpty(wind);
        positions = Lists.typed(positions);
        catches = Lists.typed(catches);
        remark = Objects.requireNonNullElse(remark, "");
    }
}
