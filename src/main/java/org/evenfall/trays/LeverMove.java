package org.evenfall.trays;

/**
 * One move of one lever.
 *
 * @param lever owner's label
 * @param unit its unit
 * @param from its setting now
 * @param to setting to try
 * @param steps whole small steps, signed by the scale
 * @param wider the move throws wider
 */
public record LeverMove(String lever, String unit, double from, double to, int steps, boolean wider) {}
