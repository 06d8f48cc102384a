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
 * @param cvChangePercent kept less reference, points of CV
 * @param resetCvPercent CV of the new product when the model's discs are set anew for it, %
 */
public record PatternChange(
        double referenceCvPercent,
        double keptCvPercent,
        Interval keptCvIntervalPercent,
        double cvChangePercent,
        double resetCvPercent) {}
