package org.evenfall.machine;

/**
 * One lever of the machine, in the owner's words.
 *
 * @param label the owner's label
 * @param unit unit or scale, may be empty
 * @param lowest lowest setting
 * @param highest highest setting
 * @param step smallest step, above 0
 * @param widerWhen which way throws wider
 */
public record Lever(String label, String unit, double lowest, double highest, double step, Widening widerWhen) {}
