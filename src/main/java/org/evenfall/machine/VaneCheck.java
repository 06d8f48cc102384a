package org.evenfall.machine;

import org.jspecify.annotations.Nullable;

/**
 * One vane compared with new.
 *
 * @param side which disc
 * @param label which vane
 * @param wearM length lost, m
 * @param wearPercent length lost, % of new
 * @param failed to be put right before the tray test
 */
public record VaneCheck(
        Side side,
        String label,
        @Nullable Double wearM,
        @Nullable Double wearPercent,
        boolean failed) {}
