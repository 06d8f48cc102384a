package org.evenfall.machine;

/**
 * One row of an opening table.
 *
 * @param opening number on the scale
 * @param kgPerMin flow of all outlets together, kg/min
 */
public record FlowPoint(double opening, double kgPerMin) {}
