package org.evenfall.reference;

/**
 * What becomes of the pattern at the tramline width when a reference's settings are kept for the new product: by the
 * landing model, whose discs are set so that the reference lies as even as they can lay it. A model, for the difference;
 * the tray test decides.
 *
 * @param referenceCvPercent CV of the reference in the model, %
 * @param keptCvPercent CV of the new product with the settings kept, %
 * @param keptCvLowPercent lowest within the 90 % interval of the throw difference, %
 * @param keptCvHighPercent highest within it, %
 * @param cvChangePercent kept less reference, points of CV
 * @param resetCvPercent CV of the new product when the model's discs are set anew for it, %
 */
public record PatternChange(
        double referenceCvPercent,
        double keptCvPercent,
        double keptCvLowPercent,
        double keptCvHighPercent,
        double cvChangePercent,
        double resetCvPercent) {}
