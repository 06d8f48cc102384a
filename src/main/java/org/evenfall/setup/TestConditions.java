package org.evenfall.setup;

import org.evenfall.trays.Tramlines;
import org.jspecify.annotations.Nullable;

/**
 * What a tray test was driven under, or what is set now.
 *
 * @param tramlines width and driving pattern
 * @param heightOverRimM height over the place where the granules land, m; null where not known
 * @param speedKmPerH forward speed, km/h; null where not known
 * @param productKgPerHa product rate, kg/ha; null where not known
 * @param product name of the product
 * @param delivery delivery of the product
 * @param bulkDensityKgPerL its measured bulk density, kg/L; null where not known
 * @param medianMm its measured median granule size, mm; null where not known
 * @param partChanged whether a part of the machine was worn or replaced afterwards
 */
public record TestConditions(
        Tramlines tramlines,
        @Nullable Double heightOverRimM,
        @Nullable Double speedKmPerH,
        @Nullable Double productKgPerHa,
        String product,
        String delivery,
        @Nullable Double bulkDensityKgPerL,
        @Nullable Double medianMm,
        boolean partChanged) {}
