package org.evenfall.setup.entry;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.evenfall.quantity.EnteredQuantity;

/**
 * Settings of the machine, the same in every step.
 *
 * @param levers number set on each lever, by the name of the lever
 * @param ptoSpeed PTO speed, rpm
 * @param heightOverCrop height above the crop canopy, cm, m or in
 * @param tilt tilt, °; positive: rear higher
 * @param unknownKeys keys of this object in the file that this version does not know
 */
@RecordBuilder
public record SettingsEntries(
        Map<String, EnteredQuantity> levers,
        EnteredQuantity ptoSpeed,
        EnteredQuantity heightOverCrop,
        EnteredQuantity tilt,
        UnknownKeys unknownKeys)
        implements SettingsEntriesBuilder.With {

    /** Nothing typed yet. */
    public static final SettingsEntries EMPTY = Blank.of(SettingsEntries.class);

    /** Copies what can change, so that no entry changes afterwards. */
    public SettingsEntries {
        levers = Collections.unmodifiableMap(new LinkedHashMap<>(levers));
    }
}
