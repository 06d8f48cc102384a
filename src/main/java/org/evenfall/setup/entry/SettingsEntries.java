package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Map;
import org.evenfall.quantity.EnteredQuantity;

/**
 * How the machine is set: one place in which every step keeps settings.
 *
 * @param levers lever label to the number it stands at
 * @param ptoSpeed shaft speed, rpm
 * @param heightOverCrop height over the crop, cm, m or in
 * @param tilt tilt, °; positive: rear higher
 */
@RecordBuilder
public record SettingsEntries(
        Map<String, EnteredQuantity> levers,
        EnteredQuantity ptoSpeed,
        EnteredQuantity heightOverCrop,
        EnteredQuantity tilt)
        implements SettingsEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final SettingsEntries EMPTY =
            new SettingsEntries(Map.of(), EnteredQuantity.EMPTY, EnteredQuantity.EMPTY, EnteredQuantity.EMPTY);

    public SettingsEntries {
        levers = Lists.map(levers);
        ptoSpeed = EnteredQuantity.orEmpty(ptoSpeed);
        heightOverCrop = EnteredQuantity.orEmpty(heightOverCrop);
        tilt = EnteredQuantity.orEmpty(tilt);
    }
}
