package org.evenfall.reference;

import java.util.List;
import java.util.stream.IntStream;
import org.evenfall.flight.ThrowAssumptions;
import org.evenfall.flight.ThrowModel;

/**
 * Where one product lands on this machine.
 *
 * @param fine granules that 16 % of the mass is finer than
 * @param median the median granule
 * @param edge granules that 84 % of the mass is finer than: they make the edge of the pattern
 * @param edgesM distance of the edge under each of {@link ThrowAssumptions#RANGE}, m
 * @param sensitivities change of the edge for 1 of ln density under each, over that under the usual assumptions
 */
record ProductThrow(ThrowLine fine, ThrowLine median, ThrowLine edge, List<Double> edgesM, List<Double> sensitivities) {

    /** Step of ln density for the sensitivities. */
    private static final double STEP = 0.05;

    ProductThrow {
        edgesM = List.copyOf(edgesM);
        sensitivities = List.copyOf(sensitivities);
    }

    /** The throw of a product at an outlet speed, m/s, and a height above the crop canopy, m. */
    static ProductThrow of(EstimatedProperties product, double outletSpeedMPerS, double heightM) {
        ThrowLine edge = ThrowLine.of(product, ThrowLine.EDGE_Z, outletSpeedMPerS, heightM);
        double density = product.granuleKgPerM3();
        double diameter = product.diameterMm(ThrowLine.EDGE_Z);
        List<Double> edges = ThrowAssumptions.RANGE.stream()
                .map(assumed -> ThrowModel.distanceM(diameter, density, outletSpeedMPerS, heightM, assumed))
                .toList();
        List<Double> denser = ThrowAssumptions.RANGE.stream()
                .map(assumed ->
                        ThrowModel.distanceM(diameter, density * Math.exp(STEP), outletSpeedMPerS, heightM, assumed))
                .toList();
        return new ProductThrow(
                ThrowLine.of(product, -ThrowLine.EDGE_Z, outletSpeedMPerS, heightM),
                ThrowLine.of(product, 0, outletSpeedMPerS, heightM),
                edge,
                edges,
                IntStream.range(0, edges.size())
                        .mapToObj(i -> (denser.get(i) - edges.get(i)) / STEP / edge.perLnDensity())
                        .toList());
    }

    /** The lines of the three granule sizes, finest first. */
    List<ThrowLine> lines() {
        return List.of(fine, median, edge);
    }
}
