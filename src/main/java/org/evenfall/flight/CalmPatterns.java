package org.evenfall.flight;

import org.evenfall.granule.SizeDistribution;

/**
 * The landing patterns of one product in calm air from two mirrored discs, for any direction and spread of the fans: the
 * flights do not depend on the direction and are flown once. The same quadrature as {@link LandingPattern} with half as
 * many sectors: a CV at any ordinary width is within 0.5 points.
 */
public final class CalmPatterns {

    private final double[] throwsM;

    /**
     * @param particleDensityKgPerM3 apparent density of a granule, kg/m³, above 0
     * @param outletSpeedMPerS speed at the vane tip, m/s, above 0
     * @param takeOffDeg angle above the horizontal, degrees
     * @param heightM height of the discs over the crop, m, above 0
     */
    public CalmPatterns(
            SizeDistribution sizes,
            double particleDensityKgPerM3,
            double outletSpeedMPerS,
            double takeOffDeg,
            double heightM) {
        double takeOff = Math.toRadians(takeOffDeg);
        double level = outletSpeedMPerS * Math.cos(takeOff);
        double up = outletSpeedMPerS * Math.sin(takeOff);
        throwsM = new double[LandingPattern.BOUNDS.length];
        for (int i = 0; i < throwsM.length; i++) {
            Granule granule = new Granule(
                    sizes.d50Mm() * Math.exp(sizes.sigma() * LandingPattern.BOUNDS[i]), particleDensityKgPerM3);
            throwsM[i] = ThrowCurve.of(granule, level, level, 1, up, heightM).distanceM(level);
        }
    }

    /**
     * @param directionDeg mean direction of both fans, degrees from straight behind outward
     * @param spreadDeg its standard deviation, degrees
     * @param discSpacingM distance between the centres of the discs, m
     */
    public SpreadPattern of(double directionDeg, double spreadDeg, double discSpacingM) {
        int sectors = LandingPattern.FEW_SECTORS;
        double[][] right = new double[throwsM.length][sectors + 1];
        for (int j = 0; j <= sectors; j++) {
            double sine = Math.sin(Math.toRadians(LandingPattern.sectorDeg(directionDeg, spreadDeg, j, sectors)));
            for (int i = 0; i < throwsM.length; i++) {
                right[i][j] = discSpacingM / 2 + throwsM[i] * sine;
            }
        }
        return LandingPattern.layMirrored(right);
    }
}
