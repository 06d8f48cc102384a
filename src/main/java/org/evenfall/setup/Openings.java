package org.evenfall.setup;

import org.jspecify.annotations.Nullable;

/**
 * The opening of each side, or the factor of a terminal, which counts for both.
 *
 * @param left left; null where not known
 * @param right right; null where not known
 */
record Openings(@Nullable Double left, @Nullable Double right) {

    /** As typed: an opening typed for one side counts for both. */
    static Openings of(@Nullable Double left, @Nullable Double right) {
        return new Openings(left == null ? right : left, right == null ? left : right);
    }

    boolean known() {
        return left != null && right != null;
    }
}
