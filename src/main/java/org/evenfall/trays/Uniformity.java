package org.evenfall.trays;

import java.util.List;

/**
 * How even one test is.
 *
 * @param catches the trays
 * @param cv tray CV with the noise in it
 * @param field estimate of the variation across the whole field
 * @param contrasts one part of the width against another
 * @param shapes shapes of the unevenness with their noise
 */
public record Uniformity(
        CatchSummary catches, CvEstimate cv, FieldCv field, RegionContrasts contrasts, ShapeFit shapes) {

    /** Tray CV: of the catches, n − 1, %. */
    public double cvPercent() {
        return cv.percent();
    }

    /** What the field CV means. */
    public EvennessVerdict verdict() {
        return field.verdict();
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
