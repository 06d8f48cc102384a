package org.evenfall.trays;

import java.util.List;

/**
 * How even one test is.
 *
 * @param catches the trays
 * @param cv coefficient of variation with its interval
 * @param contrasts one part of the width against another
 * @param shapes shapes of the unevenness with their noise
 */
public record Uniformity(CatchSummary catches, CvEstimate cv, RegionContrasts contrasts, ShapeFit shapes) {

    /** Coefficient of variation, n − 1, %. */
    public double cvPercent() {
        return cv.percent();
    }

    /** What the CV means. */
    public EvennessVerdict verdict() {
        return cv.verdict();
    }

    /** Places of the trays, m, negative left. */
    public List<Double> positionsM() {
        return catches.positionsM();
    }

    /** Each tray, % of the mean. */
    public List<Double> relativePercent() {
        return catches.relativePercent();
    }

    /** How many trays were read. */
    public int trays() {
        return catches.trays();
    }
}
