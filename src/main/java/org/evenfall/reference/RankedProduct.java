package org.evenfall.reference;

import org.evenfall.quantity.Interval;
import org.jspecify.annotations.Nullable;

/**
 * How one tested product compares with the new one. Differences are new product less reference.
 *
 * @param id id of the reference
 * @param name its name
 * @param widthM width it was tested at, m
 * @param own its own properties
 * @param testedCvPercent CV it was tested with, %; null where it is not known
 * @param difference differences of the properties
 * @param throwDifference difference of the throw
 * @param score size of the throw difference in its standard errors of measuring: 0 is the same
 * @param landingDistanceM mean difference between where the two land, at 16, 50 and 84 % of the mass, m; gaps filled with
 *     usual figures
 * @param closestShare chance that it is the product that lands closest, 0 to 1, simulated
 * @param sameWidth tested at this tramline width
 * @param verdict what that means for its settings
 * @param direction which way to go from its settings
 * @param pattern what becomes of the pattern at the tramline width if its settings are kept; null for a reference of
 *     another width and beyond the first {@value ProductRanking#PATTERNS}
 */
public record RankedProduct(
        String id,
        String name,
        double widthM,
        Properties own,
        @Nullable Double testedCvPercent,
        Difference difference,
        ThrowDifference throwDifference,
        double score,
        double landingDistanceM,
        double closestShare,
        boolean sameWidth,
        Verdict verdict,
        Direction direction,
        @Nullable PatternChange pattern) {

    /**
     * Properties of the reference; null where not measured.
     *
     * @param bulkDensityKgPerL bulk density, kg/L
     * @param d50Mm median diameter, mm
     * @param spreadIndexPercent granulometric spread index, %
     */
    public record Properties(
            @Nullable Double bulkDensityKgPerL,
            @Nullable Double d50Mm,
            @Nullable Double spreadIndexPercent) {}

    /**
     * Differences of the properties; null where one of the two was not measured.
     *
     * @param densityPercent bulk density, %
     * @param d50Percent median diameter, %
     * @param spreadIndexPoints spread index, points
     * @param flowPercent flow at the same opening, %
     */
    public record Difference(
            @Nullable Double densityPercent,
            @Nullable Double d50Percent,
            @Nullable Double spreadIndexPoints,
            @Nullable Double flowPercent) {}

    /**
     * Difference of the throw, by the flight model.
     *
     * @param metres difference, m; negative: the new product falls short
     * @param intervalM its 90 % interval, m
     * @param percent difference, % of the reference's throw
     */
    public record ThrowDifference(double metres, Interval intervalM, double percent) {}
}
