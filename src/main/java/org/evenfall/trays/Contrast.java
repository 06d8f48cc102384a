package org.evenfall.trays;

/**
 * Mean catch of one part of the width less that of another.
 *
 * @param percent the difference, % of the mean of all trays, signed
 * @param noisePercent its standard error from counting and reading, %, at least 0
 */
public record Contrast(double percent, double noisePercent) {

    /** Whether the difference is above twice its standard error. */
    public boolean significant() {
        return Significance.of(percent, noisePercent);
    }
}
