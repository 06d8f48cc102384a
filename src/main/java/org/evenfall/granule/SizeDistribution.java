package org.evenfall.granule;

/**
 * Log-normal size distribution by mass.
 *
 * @param d50Mm mass median diameter, mm
 * @param geometricSd geometric standard deviation, at least 1
 * @param lnD50StandardError standard error of ln d50
 * @param lnSdStandardError standard error of ln of the geometric standard deviation
 * @param spreadIsBound all mass lay in one or two classes: the spread is an upper bound, not a value
 */
public record SizeDistribution(
        double d50Mm, double geometricSd, double lnD50StandardError, double lnSdStandardError, boolean spreadIsBound) {}
