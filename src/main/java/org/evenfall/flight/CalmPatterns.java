package org.evenfall.flight;

/**
 * The landing patterns of one product in calm air from two mirrored discs, for any direction and spread of the fans: the
 * flights do not depend on the direction and are computed once. The same quadrature as {@link LandingPattern} with half as
 * many sectors: the CV at ordinary widths is within 0.5 points of that one's.
 */
public final class CalmPatterns {

    private static final int SECTORS = 24;
    private static final double[] SECTOR_SHARES = PatternGrid.shares(SECTORS, Fan.CUT);

    private final double[] throwsM;

    /** @param takeOffDeg angle above the horizontal, degrees */
    public CalmPatterns(ThrowConditions conditions, double takeOffDeg) {
        double takeOff = Math.toRadians(takeOffDeg);
        double level = conditions.outletSpeedMPerS() * Math.cos(takeOff);
        double up = conditions.outletSpeedMPerS() * Math.sin(takeOff);
        throwsM = new double[PatternGrid.BOUNDS.length];
        for (int i = 0; i < throwsM.length; i++) {
            Granule granule =
                    new Granule(PatternGrid.boundMm(conditions.sizes(), i), conditions.particleDensityKgPerM3());
            throwsM[i] = ThrowCurve.of(granule, level, level, 1, up, conditions.heightM())
                    .distanceM(level);
        }
    }

    /**
     * The pattern for one setting, as share of the stream for each metre across; its area is 1.
     *
     * @param directionDeg mean direction of both fans, degrees from straight behind outward
     * @param spreadDeg its standard deviation, degrees
     * @param discSpacingM distance between the centres of the discs, m
     */
    public SpreadPattern of(double directionDeg, double spreadDeg, double discSpacingM) {
        double[][] right = new double[throwsM.length][SECTORS + 1];
        for (int j = 0; j <= SECTORS; j++) {
            double sine = Math.sin(Math.toRadians(PatternGrid.sectorDeg(directionDeg, spreadDeg, j, SECTORS)));
            for (int i = 0; i < throwsM.length; i++) {
                right[i][j] = discSpacingM / 2 + throwsM[i] * sine;
            }
        }
        return PatternGrid.mirrored(right, SECTOR_SHARES);
    }
}
