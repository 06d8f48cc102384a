package org.evenfall.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.evenfall.flight.ThrowAssumptions;
import org.evenfall.granule.ProductForm;
import org.evenfall.quantity.Interval;
import org.junit.jupiter.api.Test;

class ThrowRangeTest {

    private static final int RANGE = ThrowAssumptions.RANGE.size();

    private static final ThrowLine NO_LINE = new ThrowLine(0, 0, 0, 0);

    /** A throw whose distances under the assumptions rise by a step. */
    private static ProductThrow thrown(double edgeM, double firstM, double stepM, double sensitivityStep) {
        return new ProductThrow(
                NO_LINE,
                NO_LINE,
                new ThrowLine(ThrowLine.EDGE_Z, edgeM, 8, 8),
                IntStream.range(0, RANGE).mapToObj(i -> firstM + i * stepM).toList(),
                IntStream.range(0, RANGE)
                        .mapToObj(i -> 0.5 + i * sensitivityStep)
                        .toList());
    }

    /** Twelve differences from −1 to −3.2 m, errors from 0.5 to 1.6 times 0.4 m; the outer ends by hand. */
    @Test
    void theWidestEndsOfAllAssumptionsCount() {
        ProductThrow other = thrown(20, 20, 0, 0);
        ProductThrow product = thrown(18, 19, -0.2, 0.1);
        Interval found = ThrowRange.differenceM(product, other, 0.4);
        assertThat(found.low()).isCloseTo(-3.2 - 1.6449 * 1.6 * 0.4, within(1e-9));
        assertThat(found.high()).isCloseTo(-1 + 1.6449 * 0.5 * 0.4, within(1e-9));
        assertThat(ThrowRange.farthestPercent(product, other, 0.4))
                .isCloseTo(100 * (3.2 + 1.6449 * 1.6 * 0.4) / 20, within(1e-9));
    }

    @Test
    void theUsualDifferenceIsAlwaysEnclosed() {
        Interval found = ThrowRange.differenceM(thrown(22, 19, 0, 0), thrown(20, 20, 0, 0), 0);
        assertThat(found).isEqualTo(new Interval(-1, 2));
    }

    /** Urea against a dense product at the same size: at 0° less than half, at 10° 1.4 times the difference at 5°. */
    @Test
    void theTakeOffScalesADifference() {
        EstimatedProperties urea =
                EstimatedProperties.of(ProductForm.GRANULAR_UREA, 0.75, 0.01, Examples.sizes(3.3), null, null);
        EstimatedProperties dense = EstimatedProperties.of(
                ProductForm.CALCIUM_AMMONIUM_NITRATE, 1.0, 0.01, Examples.sizes(3.3), null, null);
        ProductThrow light = ProductThrow.of(urea, 45, 0.75);
        ProductThrow heavy = ProductThrow.of(dense, 45, 0.75);
        double usualM = light.edge().metres() - heavy.edge().metres();
        Interval found = ThrowRange.differenceM(light, heavy, 0);
        assertThat(found.low() / usualM).isBetween(1.3, 1.6);
        assertThat(found.high() / usualM).isBetween(0.3, 0.55);
        assertThat(light.sensitivities()).allSatisfy(share -> assertThat(share).isBetween(0.3, 1.7));
        assertThat(List.of(
                        light.fine().metres(),
                        light.median().metres(),
                        light.edge().metres()))
                .isSorted();
    }
}
