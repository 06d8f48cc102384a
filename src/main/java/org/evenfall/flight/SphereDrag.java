package org.evenfall.flight;

/**
 * Drag coefficient of a smooth sphere over the Reynolds number, by the piecewise correlation of Clift, Grace and Weber,
 * "Bubbles, Drops and Particles", Academic Press 1978, Table 5.2, here with w = log10 Re. Against measured points it
 * stays within about 6 %; between pieces it steps by less than 1.5 %. Below Re 0.01 Stokes' law; from 44 000 to 200 000
 * the curve is flat and the last piece's end value is held, within about 10 % (ours).
 *
 * <p>A granule of urea flies at Re 800 to 6 000. Real granules are not smooth spheres and drag a little more.
 */
public final class SphereDrag {

    private static final double LOG10_E = 1 / Math.log(10);
    private static final double LN10 = Math.log(10);
    private static final double PLATEAU = at44000();

    private SphereDrag() {}

    /** Drag coefficient; Reynolds number above 0 and at most 200 000. */
    public static double coefficient(double reynolds) {
        if (!(reynolds > 0) || reynolds > 2e5) {
            throw new IllegalArgumentException("Reynolds number must be above 0 and at most 200000: " + reynolds);
        }
        if (reynolds < 0.01) {
            return 24 / reynolds * (1 + 3.0 / 16 * reynolds);
        }
        double w = Math.log(reynolds) * LOG10_E;
        if (reynolds <= 20) {
            return 24 / reynolds * (1 + 0.1315 * Math.pow(reynolds, 0.82 - 0.05 * w));
        }
        if (reynolds <= 260) {
            return 24 / reynolds * (1 + 0.1935 * Math.exp(0.6305 * LN10 * w));
        }
        return Math.exp(LN10 * exponent(reynolds, w));
    }

    private static double exponent(double reynolds, double w) {
        if (reynolds <= 1500) {
            return 1.6435 + w * (-1.1242 + w * 0.1558);
        }
        if (reynolds <= 12000) {
            return -2.4571 + w * (2.5558 + w * (-0.9295 + w * 0.1049));
        }
        if (reynolds <= 44000) {
            return -1.9181 + w * (0.6370 - w * 0.0636);
        }
        return PLATEAU;
    }

    private static double at44000() {
        double w = Math.log10(44000);
        return -1.9181 + w * (0.6370 - w * 0.0636);
    }

    /** Deceleration by drag over the square of the speed, 1/m: K = 3 C ρ_air / (4 d ρ). Speed through the air above 0. */
    public static double dragPerM(Granule granule, double speedMPerS, Air air) {
        double diameterM = granule.diameterMm() / 1000;
        double reynolds = Math.min(2e5, air.densityKgPerM3() * speedMPerS * diameterM / air.viscosityPaS());
        return 0.75 * coefficient(reynolds) * air.densityKgPerM3() / (diameterM * granule.densityKgPerM3());
    }

    /** Speed at which a granule falls steadily, m/s. */
    public static double terminalVelocityMPerS(Granule granule, double gravityMPerS2, Air air) {
        double low = 1e-6;
        double high = 200;
        for (int i = 0; i < 100; i++) {
            double middle = Math.sqrt(low * high);
            if (dragPerM(granule, middle, air) * middle * middle < gravityMPerS2) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Math.sqrt(low * high);
    }
}
