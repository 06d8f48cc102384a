package org.evenfall.granule;

import java.util.OptionalDouble;

/** Diameters from the measured passing curve, linear over the logarithm of the aperture. */
public final class SieveInterpolation {

    private SieveInterpolation() {}

    /**
     * The diameter that a share of the mass passes. A share that equals a measured one gives the finest aperture with it.
     *
     * @param aperturesMm apertures, finest first, mm
     * @param passingPercent share passing each aperture, %, rising
     * @param percent the share asked for, %
     * @return the diameter, mm; empty where the share lies outside the sieves
     */
    public static OptionalDouble diameterMm(double[] aperturesMm, double[] passingPercent, double percent) {
        for (int i = 0; i < aperturesMm.length; i++) {
            if (passingPercent[i] == percent) {
                return OptionalDouble.of(aperturesMm[i]);
            }
            if (i > 0 && passingPercent[i - 1] < percent && percent < passingPercent[i]) {
                double part = (percent - passingPercent[i - 1]) / (passingPercent[i] - passingPercent[i - 1]);
                double low = Math.log(aperturesMm[i - 1]);
                return OptionalDouble.of(Math.exp(low + part * (Math.log(aperturesMm[i]) - low)));
            }
        }
        return OptionalDouble.empty();
    }
}
