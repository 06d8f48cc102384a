package org.evenfall.reference;

import org.evenfall.granule.SizeDistribution;
import org.jspecify.annotations.Nullable;

/**
 * A product tested on this machine.
 *
 * @param id unique in the library
 * @param name name
 * @param form form
 * @param widthM working width tested at, m
 * @param bulkDensityKgPerL bulk density, kg/L
 * @param sizes size distribution, or null
 */
public record TestedProduct(
        String id,
        String name,
        org.evenfall.granule.ProductForm form,
        double widthM,
        @Nullable Double bulkDensityKgPerL,
        @org.jspecify.annotations.Nullable SizeDistribution sizes) {}
