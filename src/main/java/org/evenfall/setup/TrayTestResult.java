package org.evenfall.setup;

import org.evenfall.trays.Uniformity;

/**
 * One tray test assessed.
 *
 * @param index which of the entered tests, from 0
 * @param date as typed
 * @param evenness how even
 */
public record TrayTestResult(int index, String date, Uniformity evenness) {}
