package org.evenfall.setup;

import org.evenfall.trays.TestChange;

/**
 * A tray test compared with the one before it.
 *
 * @param first which of the entered tests, from 0
 * @param second which came after
 * @param sameSettings the levers were set alike, and no part was changed in between: a repeat
 * @param change how they differ
 */
public record TestComparison(int first, int second, boolean sameSettings, TestChange change) {}
