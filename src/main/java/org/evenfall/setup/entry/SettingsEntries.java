package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Map;
import org.evenfall.quantity.Typed;

/**
 * How the machine is set: one place in which every step keeps settings.
 *
 * @param levers lever label to the number it stands at
 * @param ptoSpeed shaft speed, rpm
 * @param heightOverCrop height over the crop, cm, m or in
 * @param tilt tilt, °; positive: rear higher
 */
@RecordBuilder
public record SettingsEntries(Map<String, Typed> levers, Typed ptoSpeed, Typed heightOverCrop, Typed tilt)
        implements SettingsEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final SettingsEntries EMPTY = new SettingsEntries(Map.of(), Typed.EMPTY, Typed.EMPTY, Typed.EMPTY);

    public SettingsEntries {
        levers = Lists.map(levers);
        ptoSpeed = Typed.orEmpty(ptoSpeed);
        heightOverCrop = Typed.orEmpty(heightOverCrop);
        tilt = Typed.orEmpty(tilt);
    }
}
