package org.evenfall.flight;

import org.evenfall.granule.SizeDistribution;

/**
 * How far a product is thrown by a disc: vane outlet, then flight. A model for differences between products on one
 * machine; what it assumes of the disc is listed in the constants and cancels largely in a difference.
 */
public final class ThrowModel {

    /** Disc radius where the owner gave none, m. Common practice, no source. */
    public static final double USUAL_DISC_RADIUS_M = 0.40;

    /** Disc speed where the owner gave none, rpm. Common practice, no source. */
    public static final double USUAL_DISC_RPM = 850;

    /** Friction on the vane: between ammonium nitrate 0.13 and NPK 0.14 (Villette et al., seen), rounded. Assumption. */
    public static final double FRICTION = 0.14;

    /** Where the product falls on the disc, share of the radius. Assumption. */
    public static final double DROP_SHARE = 0.30;

    /** Upward angle at which granules leave, °: a slightly dished disc. Assumption. */
    public static final double TAKE_OFF_DEG = 5;

    private ThrowModel() {}

    /** Speed at the vane tip, m/s. */
    public static double outletSpeedMPerS(double discRadiusM, double discRpm) {
        return new Vane(discRadiusM, DROP_SHARE * discRadiusM, 0, FRICTION)
                .outlet(discRpm, Flight.GRAVITY_M_PER_S2)
                .speedMPerS();
    }

    /** Landing distance of one granule, m. */
    public static double distanceM(
            double diameterMm, double particleDensityKgPerM3, double outletSpeedMPerS, double heightM) {
        return Flight.fly(
                        new Granule(diameterMm, particleDensityKgPerM3),
                        new Launch(outletSpeedMPerS, TAKE_OFF_DEG, heightM),
                        0,
                        Flight.GRAVITY_M_PER_S2,
                        Air.STANDARD)
                .landingM();
    }

    /**
     * @param particleDensityKgPerM3 apparent density of a granule, kg/m³
     * @param particleDensitySe its standard error, kg/m³
     * @param heightM height of the disc over the crop, m
     */
    public static Throw of(
            SizeDistribution sizes,
            double particleDensityKgPerM3,
            double particleDensitySe,
            double discRadiusM,
            double discRpm,
            double heightM) {
        double speed = outletSpeedMPerS(discRadiusM, discRpm);
        double d50 = sizes.d50Mm();
        double median = distanceM(d50, particleDensityKgPerM3, speed, heightM);
        double edge = distanceM(sizes.quantileMm(0.84), particleDensityKgPerM3, speed, heightM);
        // throw depends on d × ρ almost alone, so one slope serves both errors
        double slope = (distanceM(d50, 1.02 * particleDensityKgPerM3, speed, heightM)
                        - distanceM(d50, 0.98 * particleDensityKgPerM3, speed, heightM))
                / 0.04;
        double relative = Math.hypot(sizes.lnD50StandardError(), particleDensitySe / particleDensityKgPerM3);
        return new Throw(
                speed,
                median,
                edge,
                Math.abs(slope) * relative,
                SphereDrag.terminalVelocityMPerS(
                        new Granule(d50, particleDensityKgPerM3), Flight.GRAVITY_M_PER_S2, Air.STANDARD));
    }
}
