package org.evenfall.flight;

/**
 * How far a product is thrown by a disc: vane outlet, then flight. A model for differences between products on one
 * machine; what it assumes of the disc is listed in the constants and cancels largely in a difference.
 */
public final class ThrowModel {

    /** Disc radius where the owner gave none, m. Common practice: discs of wide machines. */
    public static final double USUAL_DISC_RADIUS_M = 0.40;

    /** Disc speed where the owner gave none, rpm. Common practice: at 540 rpm of the PTO. */
    public static final double USUAL_DISC_RPM = 850;

    /**
     * Friction on the vane, between ammonium nitrate 0.13 and NPK 0.14, rounded up. Source: Villette et al. 2010, equivalent
     * friction from measured outlet angles. Assumption: urea is alike; nothing is published for it.
     */
    public static final double FRICTION = 0.14;

    /** Where the product falls on the disc, share of the radius. Assumption: near the hub, so that the vane takes it up. */
    public static final double DROP_SHARE = 0.30;

    /** Angle above the horizontal at which granules leave, degrees. Assumption: a slightly dished disc. */
    public static final double TAKE_OFF_DEG = 5;

    /** Mass share finer than the edge granule: one standard deviation above the median. */
    private static final double EDGE_SHARE = 0.84;

    /** Half the change of density over which the slope of the throw is taken. */
    private static final double SLOPE_STEP = 0.02;

    private ThrowModel() {}

    /**
     * Speed at the vane tip, m/s.
     *
     * @throws IllegalArgumentException when the disc is so slow that a granule stays where it falls
     */
    public static double outletSpeedMPerS(double discRadiusM, double discRpm) {
        return new Vane(discRadiusM, DROP_SHARE * discRadiusM, 0, FRICTION)
                .outlet(discRpm, Flight.GRAVITY_M_PER_S2)
                .speedMPerS();
    }

    /** Landing distance of one granule at the usual take-off in still air, m. */
    public static double distanceM(
            double diameterMm, double particleDensityKgPerM3, double outletSpeedMPerS, double heightM) {
        return distanceM(diameterMm, particleDensityKgPerM3, outletSpeedMPerS, heightM, ThrowAssumptions.USUAL);
    }

    /**
     * Landing distance of one granule in still air under other assumptions, m.
     *
     * @param outletSpeedMPerS speed at the vane tip with the usual friction, m/s
     */
    public static double distanceM(
            double diameterMm,
            double particleDensityKgPerM3,
            double outletSpeedMPerS,
            double heightM,
            ThrowAssumptions assumed) {
        return Flight.fly(
                        new Granule(diameterMm, particleDensityKgPerM3, assumed.dragFactor()),
                        new Launch(outletSpeedMPerS * assumed.speedShare(), assumed.takeOffDeg(), heightM),
                        0,
                        Flight.GRAVITY_M_PER_S2,
                        Air.STANDARD)
                .landingM();
    }

    /**
     * The throw of a product. Its standard error is |slope| √(s²(ln d50) + (s(ρ)/ρ)²): the throw depends on d × ρ almost
     * alone, so that one slope against ln ρ serves both errors.
     *
     * @param particleDensitySe standard error of the apparent density, kg/m³, at least 0
     */
    public static Throw of(ThrowConditions conditions, double particleDensitySe) {
        double d50Mm = conditions.sizes().d50Mm();
        double density = conditions.particleDensityKgPerM3();
        double slope = (distanceM(d50Mm, (1 + SLOPE_STEP) * density, conditions)
                        - distanceM(d50Mm, (1 - SLOPE_STEP) * density, conditions))
                / (2 * SLOPE_STEP);
        double relative = Math.hypot(conditions.sizes().lnD50StandardError(), particleDensitySe / density);
        return new Throw(
                conditions.outletSpeedMPerS(),
                distanceM(d50Mm, density, conditions),
                distanceM(conditions.sizes().quantileMm(EDGE_SHARE), density, conditions),
                Math.abs(slope) * relative,
                Flight.terminalVelocityMPerS(new Granule(d50Mm, density), Flight.GRAVITY_M_PER_S2, Air.STANDARD));
    }

    private static double distanceM(double diameterMm, double densityKgPerM3, ThrowConditions conditions) {
        return distanceM(diameterMm, densityKgPerM3, conditions.outletSpeedMPerS(), conditions.heightM());
    }
}
