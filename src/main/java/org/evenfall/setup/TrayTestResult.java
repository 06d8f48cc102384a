package org.evenfall.setup;

import org.evenfall.trays.Uniformity;
import org.jspecify.annotations.Nullable;

/**
 * One tray test assessed.
 *
 * @param index which of the entered tests, from 0
 * @param date as typed
 * @param evenness how even
 * @param settings how the machine was set
 * @param openingLeft opening left; null while it is not typed
 * @param openingRight opening right; null while it is not typed
 * @param windMPerS wind during the test, m/s; null while it is not typed
 */
public record TrayTestResult(
        int index,
        String date,
        Uniformity evenness,
        ReadSettings settings,
        @Nullable Double openingLeft,
        @Nullable Double openingRight,
        @Nullable Double windMPerS) {}
