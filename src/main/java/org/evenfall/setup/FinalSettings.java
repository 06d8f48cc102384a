package org.evenfall.setup;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The settings that go on the card: those of the last tray test, else those chosen at the match.
 *
 * @param levers lever label to setting, in the order of the machine
 * @param ptoRpm PTO speed
 * @param openingLeft opening left
 * @param openingRight opening right
 * @param heightOverCropM height over the crop
 * @param tiltDeg tilt
 * @param speedKmPerH forward speed
 */
public record FinalSettings(
        Map<String, Double> levers,
        @Nullable Double ptoRpm,
        @Nullable Double openingLeft,
        @Nullable Double openingRight,
        @Nullable Double heightOverCropM,
        @Nullable Double tiltDeg,
        @Nullable Double speedKmPerH) {

    /** Copies the map, in its order. */
    public FinalSettings {
        levers = Collections.unmodifiableMap(new LinkedHashMap<>(levers));
    }
}
