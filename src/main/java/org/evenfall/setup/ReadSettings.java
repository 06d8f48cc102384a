package org.evenfall.setup;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How the machine is set, as numbers.
 *
 * @param levers lever label to setting, only those typed and within limits
 * @param ptoRpm PTO speed
 * @param heightOverCropM height over the crop
 * @param tiltDeg tilt
 */
public record ReadSettings(
        Map<String, Double> levers,
        @Nullable Double ptoRpm,
        @Nullable Double heightOverCropM,
        @Nullable Double tiltDeg) {

    /** Copies the map, in its order. */
    public ReadSettings {
        levers = Collections.unmodifiableMap(new LinkedHashMap<>(levers));
    }
}
