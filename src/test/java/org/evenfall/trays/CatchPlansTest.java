package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.evenfall.granule.SizeDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CatchPlansTest {

    private static final Offset<Double> TINY = within(1e-9);

    /** Computed apart by the formula of the counting noise: 150 kg/ha, 0.25 m², 3.3 mm, 1 300 kg/m³, g 1.2. */
    @Test
    void countingNoise() {
        double granule = CatchPlans.meanGranuleG(new SizeDistribution(3.3, 1.2, 0, 0, false), 1300);
        CatchPlan plan = CatchPlans.of(150, 0.25, granule, 0);
        assertThat(plan.countingNoisePercent()).isCloseTo(8.7, within(0.05));
        assertThat(CatchPlans.noisePercent(3 * plan.catchPerRunG(), granule, 0)).isCloseTo(5.0, within(0.05));
        assertThat(plan.runsNeeded()).isEqualTo(4);
        assertThat(plan.noiseAtRunsPercent()).isLessThanOrEqualTo(5);
    }

    /** Exact for equal granules: 10 mm spheres of 1 000 kg/m³ weigh π/6 g. */
    @Test
    void equalGranulesWeighTheirVolume() {
        assertThat(CatchPlans.meanGranuleG(new SizeDistribution(10, 1, 0, 0, false), 1000))
                .isCloseTo(Math.PI / 6, within(1e-12));
    }

    /** Exact: rounding to a step has the standard deviation step / √12; 0.2 √12 g on 10 g is 2 %. */
    @Test
    void readingNoise() {
        double step = 0.2 * Math.sqrt(12);
        CatchPlan plan = CatchPlans.of(400, 0.25, 1e-12, step);
        assertThat(plan.catchPerRunG()).isCloseTo(10, TINY);
        assertThat(plan.readingNoisePercent()).isCloseTo(2, TINY);
        assertThat(CatchPlans.noisePercent(10, 1e-12, step)).isCloseTo(2, within(1e-6));
        // 3-4-5 triangle of counting (3 %) and reading (4 %)
        assertThat(CatchPlans.noisePercent(10, 0.009, 2 * step)).isCloseTo(5, TINY);
    }

    /** Ten grams a run and granules of 0.025 g times a number: so many runs until the noise is at most 5 %. */
    @ParameterizedTest
    @CsvSource({"0.99, 1", "1, 1", "1.01, 2", "2, 2", "2.01, 3", "19.99, 20", "20, 20", "20.01, 20", "100, 20"})
    void asManyRunsAsTheNoiseNeedsButTwentyAtMost(double times, int runs) {
        CatchPlan plan = CatchPlans.of(400, 0.25, 0.025 * times, 0);
        assertThat(plan.runsNeeded()).isEqualTo(runs);
        assertThat(plan.noiseAtRunsPercent()).isCloseTo(5 * Math.sqrt(times / runs), TINY);
        assertThat(plan.granulesPerRun()).isCloseTo(10 / (0.025 * times), within(1e-6));
        assertThat(plan.countingNoisePercent()).isCloseTo(5 * Math.sqrt(times), TINY);
    }

    /**
     * Ten grams a run, granules of 0.025 g times a number, so that 10 g times that number are needed: trays of 0.25 m² times
     * that number, up to 1 m², else two trays of today's size.
     */
    @ParameterizedTest
    @CsvSource({
        "1.01, 1, 0.2525, 0.51, 2",
        "2, 1, 0.5, 0.71, 2",
        "2.01, 1, 0.5025, 0.71, 3",
        "3.24, 1, 0.81, 0.9, 4",
        "4, 1, 1, 1, 4",
        "4.01, 3, 0.5, 0.71, 2",
        "6, 3, 0.5, 0.71, 2",
        "6.01, 4, 0.5, 0.71, 2",
        "20.01, 11, 0.5, 0.71, 2",
        "100, 20, 0.5, 0.71, 2"
    })
    void largerTraysInPlaceOfRuns(double times, int runs, double area, double side, int together) {
        LargerTrays larger = CatchPlans.of(400, 0.25, 0.025 * times, 0).largerTrays();
        assertThat(larger.runs()).isEqualTo(runs);
        assertThat(larger.areaM2()).isCloseTo(area, TINY);
        assertThat(larger.sideM()).isCloseTo(side, TINY);
        assertThat(larger.traysTogether()).isEqualTo(together);
        CatchPlan with = CatchPlans.of(400, larger.areaM2() * (1 + 1e-12), 0.025 * times, 0);
        assertThat(with.runsNeeded()).isEqualTo(runs);
    }

    /** Counting 3 % and reading 4 % of 10 g make 5 %: so much is needed, and 5 g a run needs twice the tray. */
    @Test
    void theReadingCountsForLargerTraysToo() {
        LargerTrays larger =
                CatchPlans.of(200, 0.25, 0.009, 0.4 * Math.sqrt(12)).largerTrays();
        assertThat(larger.areaM2()).isCloseTo(0.5, TINY);
        assertThat(larger.runs()).isEqualTo(1);
        assertThat(larger.traysTogether()).isEqualTo(2);
    }

    @Test
    void whereOneRunIsEnoughNoLargerTraysAreProposed() {
        assertThat(CatchPlans.of(400, 0.25, 0.025, 0).largerTrays()).isNull();
    }

    @ParameterizedTest
    @CsvSource({"0, 1, 1, 0", "1, 0, 1, 0", "1, 1, 0, 0", "1, 1, 1, -0.1", "NaN, 1, 1, 0", "1, 1, 1, NaN"})
    void outOfRangeIsRefused(double rate, double area, double granule, double step) {
        assertThatThrownBy(() -> CatchPlans.of(rate, area, granule, step)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Exact: 20 ml at 0.75 kg/L; 100 mm in a bore of 20 mm hold 10 π ml. */
    @Test
    void volumesAndHeightsBecomeGrams() {
        assertThat(CatchConversion.gramsOfMl(20, 0.75)).isCloseTo(15, TINY);
        assertThat(CatchConversion.gramsOfHeightMm(100, 20, 0.75)).isCloseTo(7.5 * Math.PI, TINY);
    }
}
