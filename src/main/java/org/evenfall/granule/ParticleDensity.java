package org.evenfall.granule;

/**
 * Apparent density of a granule, estimated from bulk density through an assumed packing.
 *
 * @param kgPerM3 granule density, kg/m³
 * @param standardErrorKgPerM3 standard error, kg/m³
 * @param packingShare bulk over the published density of one granule of this form; the assumed share where none is published
 * @param plausible that share lies in 0.50 to 0.66; outside, a weight or the volume was mistyped
 */
public record ParticleDensity(double kgPerM3, double standardErrorKgPerM3, double packingShare, boolean plausible) {}
