package org.evenfall.granule;

/**
 * Apparent density of a granule, estimated from bulk density through an assumed packing.
 *
 * @param kgPerM3 granule density, kg/m³; at most that of the solid
 * @param standardErrorKgPerM3 standard error, kg/m³
 * @param packingShare bulk over the published density of one granule of this form; the assumed share where none is published
 * @param plausible that share lies in 0.50 to 0.66; outside, a weight or the volume was mistyped
 * @param uncappedKgPerM3 bulk density over assumed packing, before it is limited to the solid, kg/m³
 * @param denserThanSolid that estimate lies above the solid by more than its standard error: bulk density or packing is not
 *     that of this form
 */
public record ParticleDensity(
        double kgPerM3,
        double standardErrorKgPerM3,
        double packingShare,
        boolean plausible,
        double uncappedKgPerM3,
        boolean denserThanSolid) {}
