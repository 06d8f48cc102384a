package org.evenfall.granule;

/**
 * Apparent density of a granule, estimated from bulk density through an assumed packing.
 *
 * @param kgPerM3 kg/m³
 * @param standardErrorKgPerM3 standard error, kg/m³
 * @param packingShare assumed bulk over particle density
 * @param plausible particle density agrees with the published range for this form
 */
public record ParticleDensity(double kgPerM3, double standardErrorKgPerM3, double packingShare, boolean plausible) {}
