package org.evenfall.reference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The references in their order: those of the tramline width before all others; then the greatest chance of landing
 * closest; then the smallest distance; then by id.
 *
 * @param places the references, the likeliest first
 * @param redraws how often the measurements were redrawn
 */
record ReferenceOrder(List<Place> places, int redraws) {

    ReferenceOrder {
        places = List.copyOf(places);
    }

    /**
     * One reference.
     *
     * @param comparison the new product compared with it
     * @param chance chance that it lands closest to the new product; 0 for one that does not compete
     * @param distanceM distance of the two landings by the figures as they are, m
     */
    record Place(Comparison comparison, double chance, double distanceM) {}

    /** Those of the tramline width compete, or all where there is none of that width. */
    static ReferenceOrder of(
            Comparisons product, List<Comparison> comparisons, long seed, int redraws, ProgressMonitor monitor) {
        List<Comparison> sameWidth =
                comparisons.stream().filter(product::sameWidth).toList();
        List<Comparison> competing = sameWidth.isEmpty() ? comparisons : sameWidth;
        ClosestShares closest = ClosestShares.simulate(
                product.landing(),
                competing.stream().map(comparison -> comparison.landing).toList(),
                seed,
                redraws,
                monitor);
        double[] own = product.landing().metres();
        List<Place> places = new ArrayList<>();
        for (Comparison comparison : comparisons) {
            int index = competing.indexOf(comparison);
            places.add(new Place(
                    comparison,
                    index < 0 ? 0 : closest.chances().get(index),
                    LandingEstimate.distanceM(own, comparison.landing.metres())));
        }
        places.sort(Comparator.comparing((Place place) -> !product.sameWidth(place.comparison()))
                .thenComparing(Comparator.comparingDouble(Place::chance).reversed())
                .thenComparingDouble(Place::distanceM)
                .thenComparing(place -> place.comparison().reference.id()));
        return new ReferenceOrder(places, closest.redraws());
    }

    /** The comparisons in this order. */
    List<Comparison> comparisons() {
        return places.stream().map(Place::comparison).toList();
    }
}
