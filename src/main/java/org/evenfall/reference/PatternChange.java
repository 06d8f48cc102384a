package org.evenfall.reference;

import org.evenfall.quantity.Interval;

/**
 * What becomes of the pattern at the tramline width when a reference's settings are kept for the new product: by the
 * landing model, whose discs are set so that the reference spreads as evenly as the model can. A model, for the
 * difference; the tray test decides.
 *
 * @param referenceCvPercent CV of the reference in the model, %
 * @param keptCvPercent CV of the new product with the settings kept, %
 * @param keptCvIntervalPercent lowest and highest CV within the 90 % interval of the throw difference, %
 * @param cvChangePercent kept less reference, points of CV: the figure to show, on top of the CV that was tested
 * @param resetCvPercent CV of the new product when the model's discs are set anew for it, %
 */
public record PatternChange(
        double referenceCvPercent,
        double keptCvPercent,
        Interval keptCvIntervalPercent,
        double cvChangePercent,
        double resetCvPercent) {

    /** Assumption: a pattern whose CV changes by less counts as the same, points. */
    public static final double SAME_CV_POINTS = 2;

    /** Whether the model expects the settings to spread the new product about as evenly. */
    public boolean alike() {
        return cvChangePercent < SAME_CV_POINTS;
    }

    /** Lowest and highest change of the CV within the 90 % interval of the throw difference, points. */
    public Interval changeIntervalPercent() {
        return new Interval(
                keptCvIntervalPercent.low() - referenceCvPercent, keptCvIntervalPercent.high() - referenceCvPercent);
    }
}
