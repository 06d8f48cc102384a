package org.evenfall.granule;

/**
 * A published range for a kind of product.
 *
 * @param form for which form
 * @param quantity "bulkDensityKgPerL", "shareUnder2MmPercent" …
 * @param low lower end
 * @param high upper end
 * @param sourceKey bundle key of the source
 */
public record PublishedBand(ProductForm form, String quantity, double low, double high, String sourceKey) {}
