package org.evenfall.reference;

import org.jspecify.annotations.Nullable;

/**
 * How one tested product compares with the new one. Differences are new product less reference.
 *
 * @param id id of the reference
 * @param name its name
 * @param widthM width it was tested at, m
 * @param score standardised difference: 0 is the same, 1 one standard error of measuring
 * @param densityDifferencePercent bulk density
 * @param d50DifferencePercent median diameter
 * @param spreadIndexDifference spread index, points
 * @param flowDifferencePercent flow at the same opening
 * @param throwDifferenceM throw, m; negative: the new product falls short
 * @param throwLowM lower end of its 90 % interval
 * @param throwHighM upper end
 * @param throwDifferencePercent throw, %
 * @param closestShare how often it would rank first if the measurements were redone, 0 to 1, simulated
 * @param sameWidth tested at this tramline width
 * @param verdict what that means for its settings
 * @param direction which way to go from its settings
 * @param bulkDensityKgPerL its own bulk density, kg/L; null where not known
 * @param d50Mm its own median diameter, mm; null where not known
 * @param spreadIndexPercent its own spread index, %; null where not known
 * @param pattern what becomes of the pattern at the tramline width if its settings are kept; null for a reference of
 *     another width and beyond the first {@value NearestProducts#PATTERNS}
 */
public record RankedProduct(
        String id,
        String name,
        double widthM,
        double score,
        @Nullable Double densityDifferencePercent,
        @Nullable Double d50DifferencePercent,
        @Nullable Double spreadIndexDifference,
        @Nullable Double flowDifferencePercent,
        @Nullable Double throwDifferenceM,
        @Nullable Double throwLowM,
        @Nullable Double throwHighM,
        @Nullable Double throwDifferencePercent,
        double closestShare,
        boolean sameWidth,
        Verdict verdict,
        Direction direction,
        @Nullable Double bulkDensityKgPerL,
        @Nullable Double d50Mm,
        @Nullable Double spreadIndexPercent,
        @Nullable PatternChange pattern) {}
