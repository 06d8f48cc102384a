package org.evenfall.setup;

import org.evenfall.granule.BulkDensity;
import org.evenfall.granule.SieveResult;
import org.evenfall.quantity.NinetyPercent;
import org.jspecify.annotations.Nullable;

/**
 * Whether a test on one delivery still proves another: only where density and sieves were measured again on the other one
 * and are alike within their errors.
 */
final class DeliveryCheck {

    /** Two errors of a difference: nineteen equal deliveries in twenty lie within. */
    private static final double ERRORS = 2;

    /** Assumption: the density kept with the test had the same error as the one measured now, so the difference has √2. */
    private static final double OF_DIFFERENCE = Math.sqrt(2);

    /** Assumption: two samples of one delivery differ by this, share of the density. */
    private static final double SAMPLES_DENSITY_SHARE = 0.01;

    /** Assumption: two samples of one delivery differ by this, share of the median size. */
    private static final double SAMPLES_MEDIAN_SHARE = 0.02;

    /** Densities written with four decimals are one measurement when they are nearer than this, kg/L. */
    private static final double SAME_KG_PER_L = 6e-5;

    /** Sizes written with four decimals are one measurement when they are nearer than this, mm. */
    private static final double SAME_MM = 6e-5;

    /** What is known of another delivery. */
    enum Answer {
        /** Density or sieves are still those of the delivery that was tested, or one was never measured. */
        NOT_MEASURED,
        /** Measured again, and alike within the errors. */
        ALIKE,
        /** Measured again, and different. */
        DIFFERENT
    }

    private DeliveryCheck() {}

    /**
     * Compares what was measured on the tested delivery with the product as measured now.
     *
     * @param tested density and median size kept with the test
     */
    static Answer of(TestConditions tested, ProductResult now) {
        BulkDensity density = now.density();
        SieveResult sieve = now.sieve();
        Double densityThen = tested.bulkDensityKgPerL();
        Double medianThen = tested.medianMm();
        if (density == null
                || sieve == null
                || densityThen == null
                || medianThen == null
                || Math.abs(density.meanKgPerL() - densityThen) < SAME_KG_PER_L
                || Math.abs(sieve.distribution().d50Mm() - medianThen) < SAME_MM) {
            return Answer.NOT_MEASURED;
        }
        double medianError =
                Math.log(sieve.d50IntervalMm().high() / sieve.d50IntervalMm().low()) / (2 * NinetyPercent.Z);
        boolean alike = isAlike(densityThen, density)
                && Math.abs(Math.log(sieve.distribution().d50Mm() / medianThen))
                        <= Math.max(ERRORS * OF_DIFFERENCE * medianError, SAMPLES_MEDIAN_SHARE);
        return alike ? Answer.ALIKE : Answer.DIFFERENT;
    }

    /** Whether a density differs from the one measured now by no more than their errors; true while none is measured. */
    static boolean isAlike(double thenKgPerL, @Nullable BulkDensity now) {
        return now == null
                || Math.abs(now.meanKgPerL() - thenKgPerL)
                        <= Math.max(
                                ERRORS * OF_DIFFERENCE * now.standardErrorKgPerL(),
                                SAMPLES_DENSITY_SHARE * now.meanKgPerL());
    }
}
