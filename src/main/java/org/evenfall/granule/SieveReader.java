package org.evenfall.granule;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * Figures of the trade, read on the measured sieve curve where the sieves enclose them, else on the fit; never a mixture
 * of both in one figure.
 */
final class SieveReader {

    /** An aperture within this share of a diameter counts as that diameter. Assumption: so 5/64 in is 2 mm. */
    static final double SAME_APERTURE_SHARE = 0.015;

    /**
     * Fewest classes with mass for a reading between two apertures. Assumption: with one or two the curve has at most one
     * point inside, and a straight line would invent the spread.
     */
    private static final int FEWEST_CLASSES = 3;

    private static final double[] SPREAD_PERCENTS = {16, 50, 84};

    private static final double[] UNIFORMITY_PERCENTS = {5, 90};

    private final double[] aperturesMm;
    private final double[] passingPercent;
    private final SizeDistribution fit;
    private final boolean readable;

    /**
     * A reader of one analysis.
     *
     * @param aperturesMm apertures, mm, strictly rising
     * @param passingPercent share passing each, %
     * @param shares share of each class, finest first, summing to 1; one more than apertures
     * @param fit distribution fitted to them
     */
    SieveReader(double[] aperturesMm, double[] passingPercent, double[] shares, SizeDistribution fit) {
        this.aperturesMm = aperturesMm.clone();
        this.passingPercent = passingPercent.clone();
        this.fit = fit;
        this.readable = Arrays.stream(shares)
                        .filter(share -> share > LogNormalFit.EMPTY_SHARE)
                        .count()
                >= FEWEST_CLASSES;
    }

    /**
     * One figure.
     *
     * @param value the figure
     * @param from where it was read
     */
    record Figure(double value, SieveReading from) {}

    /**
     * Diameter that a share of the mass is finer than, mm. A value of the fit is limited by the sieves: where less than the
     * share passes the coarsest one, the diameter is no smaller than that aperture.
     *
     * @param percent the share, %, strictly between 0 and 100
     */
    Figure diameterMm(double percent) {
        OptionalDouble read = read(percent);
        if (read.isPresent()) {
            return new Figure(read.getAsDouble(), SieveReading.CURVE);
        }
        double fitted = fit.quantileMm(percent / 100);
        if (!readable) {
            return new Figure(fitted, SieveReading.FIT);
        }
        double limited = passingPercent[0] > percent
                ? Math.min(fitted, aperturesMm[0])
                : Math.max(fitted, aperturesMm[aperturesMm.length - 1]);
        return new Figure(limited, SieveReading.FIT);
    }

    private OptionalDouble read(double percent) {
        return readable
                ? SieveInterpolation.linearDiameterMm(aperturesMm, passingPercent, percent)
                : OptionalDouble.empty();
    }

    /** Granulometric spread index 100 (d84 − d16) / (2 d50), %; all three sizes from one source. */
    Figure spreadIndexPercent() {
        return enclosed(SPREAD_PERCENTS)
                ? new Figure(
                        100 * (read(84).orElseThrow() - read(16).orElseThrow()) / (2 * read(50).orElseThrow()),
                        SieveReading.CURVE)
                : new Figure(fit.spreadIndexPercent(), SieveReading.FIT);
    }

    /** Uniformity index 100 × d5 / d90, by percent finer; both sizes from one source. */
    Figure uniformityIndex() {
        return enclosed(UNIFORMITY_PERCENTS)
                ? new Figure(100 * read(5).orElseThrow() / read(90).orElseThrow(), SieveReading.CURVE)
                : new Figure(fit.uniformityIndex(), SieveReading.FIT);
    }

    private boolean enclosed(double[] percents) {
        return Arrays.stream(percents).allMatch(percent -> read(percent).isPresent());
    }

    /** Share finer than a diameter, %. */
    Figure shareUnderPercent(double diameterMm) {
        OptionalDouble measured = measured(diameterMm);
        return measured.isPresent()
                ? new Figure(measured.getAsDouble(), SieveReading.CURVE)
                : new Figure(100 * fit.shareFinerThan(diameterMm), SieveReading.FIT);
    }

    /** Share between two diameters, %: measured where both ends are, else both from the fit. */
    Figure shareBetweenPercent(double lowMm, double highMm) {
        OptionalDouble low = measured(lowMm);
        OptionalDouble high = measured(highMm);
        return low.isPresent() && high.isPresent()
                ? new Figure(high.getAsDouble() - low.getAsDouble(), SieveReading.CURVE)
                : new Figure(100 * (fit.shareFinerThan(highMm) - fit.shareFinerThan(lowMm)), SieveReading.FIT);
    }

    /** Share passing an aperture of that diameter, or read between two; empty outside the sieves. */
    private OptionalDouble measured(double diameterMm) {
        for (int i = 0; i < aperturesMm.length; i++) {
            if (Math.abs(aperturesMm[i] / diameterMm - 1) <= SAME_APERTURE_SHARE) {
                return OptionalDouble.of(passingPercent[i]);
            }
        }
        return readable
                ? SieveInterpolation.linearPassingPercent(aperturesMm, passingPercent, diameterMm)
                : OptionalDouble.empty();
    }
}
