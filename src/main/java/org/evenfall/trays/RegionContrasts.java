package org.evenfall.trays;

/**
 * Mean catch of one part of the width less that of another, % of the mean.
 *
 * @param leftRightPercent left less right; a tray on the tramline counts to neither
 * @param centreOverlapPercent within a quarter of the width of the tramline, less the rest
 * @param quarterPointPercent around a quarter of the width, less the rest
 */
public record RegionContrasts(double leftRightPercent, double centreOverlapPercent, double quarterPointPercent) {}
