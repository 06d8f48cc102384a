package org.evenfall.trays;

/**
 * How much of one shape is in the trays.
 *
 * @param kind which shape
 * @param amplitudePercent amplitude, % of the mean, signed
 * @param noisePercent its standard error from counting and reading, %, at least 0
 * @param significant the amplitude is above twice its standard error
 */
public record SpreadShape(ShapeKind kind, double amplitudePercent, double noisePercent, boolean significant) {

    /** A shape with its significance. */
    static SpreadShape of(ShapeKind kind, double amplitudePercent, double noisePercent) {
        return new SpreadShape(kind, amplitudePercent, noisePercent, Significance.of(amplitudePercent, noisePercent));
    }

    /** Size without sign where it is significant, %; else 0. */
    double significantSizePercent() {
        return significant ? Math.abs(amplitudePercent) : 0;
    }
}
