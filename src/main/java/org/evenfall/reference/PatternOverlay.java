package org.evenfall.reference;

import java.util.List;

/**
 * The landing patterns of the new product and of what it is compared with, with the same settings, on one grid: one pass,
 * by the landing model.
 *
 * @param otherId id of the reference; empty for a dense 27 % N product
 * @param otherName its name; empty for that
 * @param positionsM across the travel, m, rising
 * @param productPerM share of the stream for each metre, the new product, 1/m
 * @param otherPerM the other, 1/m
 */
public record PatternOverlay(
        String otherId, String otherName, List<Double> positionsM, List<Double> productPerM, List<Double> otherPerM) {

    /** Copies the lists. */
    public PatternOverlay {
        positionsM = List.copyOf(positionsM);
        productPerM = List.copyOf(productPerM);
        otherPerM = List.copyOf(otherPerM);
    }
}
