package org.evenfall.granule;

import java.util.Arrays;
import java.util.OptionalDouble;

/** Readings of the measured passing curve between apertures. */
public final class SieveInterpolation {

    /** Shares nearer than this are equal, %: the sum of class shares is rounded by the computer. */
    private static final double SAME_PERCENT = 1e-9;

    private SieveInterpolation() {}

    /**
     * The diameter that a share of the mass passes, linear over the logarithm of the aperture. A share that equals a
     * measured one gives the finest aperture with it.
     *
     * @param aperturesMm apertures, finest first, mm
     * @param passingPercent share passing each aperture, %, rising
     * @param percent the share asked for, %
     * @return the diameter, mm; empty where the share lies outside the sieves
     */
    public static OptionalDouble diameterMm(double[] aperturesMm, double[] passingPercent, double percent) {
        double[] lnApertures = Arrays.stream(aperturesMm).map(Math::log).toArray();
        for (int i = 0; i < aperturesMm.length; i++) {
            if (same(passingPercent[i], percent)) {
                return OptionalDouble.of(aperturesMm[i]);
            }
        }
        OptionalDouble ln = along(passingPercent, lnApertures, percent);
        return ln.isPresent() ? OptionalDouble.of(Math.exp(ln.getAsDouble())) : ln;
    }

    /** The same, linear over the aperture itself, as the indices of the trade are defined. */
    public static OptionalDouble linearDiameterMm(double[] aperturesMm, double[] passingPercent, double percent) {
        return along(passingPercent, aperturesMm, percent);
    }

    /**
     * The share that passes a diameter, %, linear over the aperture; empty where the diameter lies outside the sieves.
     *
     * @param aperturesMm apertures, finest first, mm
     * @param passingPercent share passing each aperture, %, rising
     * @param diameterMm the diameter asked for, mm
     */
    public static OptionalDouble linearPassingPercent(
            double[] aperturesMm, double[] passingPercent, double diameterMm) {
        return along(aperturesMm, passingPercent, diameterMm);
    }

    /** The value at a place between rising places; the first of equal places counts; empty outside. */
    private static OptionalDouble along(double[] places, double[] values, double at) {
        for (int i = 0; i < places.length; i++) {
            if (same(places[i], at)) {
                return OptionalDouble.of(values[i]);
            }
            if (i > 0 && places[i - 1] < at && at < places[i]) {
                double part = (at - places[i - 1]) / (places[i] - places[i - 1]);
                return OptionalDouble.of(values[i - 1] + part * (values[i] - values[i - 1]));
            }
        }
        return OptionalDouble.empty();
    }

    private static boolean same(double a, double b) {
        return Math.abs(a - b) <= SAME_PERCENT;
    }
}
