package org.evenfall.trays;

/**
 * One shape in the seven trays.
 *
 * @param name "centre-overlap", "quarter-points", "outer-detail", "left-right" …
 * @param amplitudePercent amplitude, % of the mean, signed
 * @param noisePercent its standard error from counting and reading, %
 * @param significant amplitude above twice its noise
 */
public record SpreadShape(String name, double amplitudePercent, double noisePercent, boolean significant) {}
