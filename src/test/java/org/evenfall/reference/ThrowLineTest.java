package org.evenfall.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.evenfall.flight.ThrowModel;
import org.evenfall.granule.ParticleDensities;
import org.evenfall.granule.ProductForm;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ThrowLineTest {

    private static final EstimatedProperties UREA =
            EstimatedProperties.of(ProductForm.GRANULAR_UREA, 0.75, 0.02, Examples.sizes(3.2), null, null);
    private static final double EDGE_MM = 3.2 * Math.exp(0.99446 * Math.log(1.2));
    private static final double KG_PER_M3 = ParticleDensities.kgPerM3(0.75, ProductForm.GRANULAR_UREA);
    private static final ThrowLine LINE = ThrowLine.of(UREA, ThrowLine.EDGE_Z, 45, 0.75);

    private static double flown(double density, double diameter) {
        return ThrowModel.distanceM(EDGE_MM * diameter, KG_PER_M3 * density, 45, 0.75);
    }

    @Test
    void theEdgeIsTheGranuleThatEightyFourPercentAreFinerThan() {
        assertThat(LINE.metres()).isCloseTo(flown(1, 1), within(1e-9));
        assertThat(Examples.sizes(3.2).shareFinerThan(EDGE_MM)).isCloseTo(0.84, within(1e-4));
    }

    /** Within 10 % of density or size the line is off by less than 0.5 % of the throw. */
    @ParameterizedTest
    @CsvSource({"0.9, 1", "1.1, 1", "1, 0.9", "1, 1.1", "0.95, 1.05"})
    void isCloseToFlights(double density, double diameter) {
        double line = LINE.metres() + LINE.shiftM(Math.log(density), Math.log(diameter), 0);
        assertThat(line).isCloseTo(flown(density, diameter), within(0.005 * LINE.metres()));
        assertThat(LINE.perLnDensity()).isPositive();
        assertThat(LINE.perLnDiameter()).isPositive();
    }

    @Test
    void aWiderSpreadMovesTheEdge() {
        ThrowLine line = new ThrowLine(0.99446, 20, 8, 10);
        assertThat(line.shiftM(0.1, 0.2, 0.3)).isCloseTo(0.8 + 2 + 3 * 0.99446, within(1e-9));
    }

    @Test
    void independentErrorsAddInQuadrature() {
        ThrowLine line = new ThrowLine(0.99446, 20, 8, 10);
        assertThat(line.errorM(0.1, 0, 0)).isCloseTo(0.8, within(1e-12));
        assertThat(line.errorM(0, 0.2, 0)).isCloseTo(2, within(1e-12));
        assertThat(line.errorM(0, 0, 0.3)).isCloseTo(3 * 0.99446, within(1e-12));
        assertThat(line.errorM(0.1, 0.2, 0.3)).isCloseTo(Math.sqrt(0.64 + 4 + Math.pow(3 * 0.99446, 2)), within(1e-12));
    }
}
