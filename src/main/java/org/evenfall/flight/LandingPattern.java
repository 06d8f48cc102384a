package org.evenfall.flight;

import java.util.List;
import org.evenfall.granule.SizeDistribution;

/**
 * Where the granules of one pass land across the travel: a teaching model, no machine settings. A deterministic quadrature
 * ({@link PatternGrid}) with {@value #SECTORS} sectors a fan. No bounce, no roll, no clouding, no air dragged along by the
 * discs.
 *
 * <p>In wind the flights are solved in the moving air for {@value #NODES} launch speeds a stratum and fan and
 * interpolated: landing distance and time are smooth in the speed.
 */
public final class LandingPattern {

    private static final int SECTORS = 48;
    private static final int NODES = 5;
    private static final double[] SECTOR_SHARES = PatternGrid.shares(SECTORS, Fan.CUT);

    private final SizeDistribution sizes;
    private final double particleDensityKgPerM3;
    private final PassConditions pass;

    private LandingPattern(SizeDistribution sizes, double particleDensityKgPerM3, PassConditions pass) {
        this.sizes = sizes;
        this.particleDensityKgPerM3 = particleDensityKgPerM3;
        this.pass = pass;
    }

    /**
     * The pattern of one pass, as share of the stream for each metre across; its area is 1.
     *
     * @param sizes size distribution of the product
     * @param particleDensityKgPerM3 apparent density of a granule, kg/m³, above 0
     */
    public static SpreadPattern of(SizeDistribution sizes, double particleDensityKgPerM3, PassConditions pass) {
        return new LandingPattern(sizes, particleDensityKgPerM3, pass).pattern();
    }

    private SpreadPattern pattern() {
        List<Fan> fans = pass.fans();
        double[][][] landings = new double[fans.size()][][];
        for (int f = 0; f < landings.length; f++) {
            landings[f] = across(f, landings);
        }
        return PatternGrid.pattern(
                landings, SECTOR_SHARES, fans.stream().mapToDouble(Fan::share).toArray());
    }

    /** Landings across of a fan, m; in calm air the mirror image of an earlier one where there is one. */
    private double[][] across(int index, double[][][] before) {
        Fan fan = pass.fans().get(index);
        if (pass.calm()) {
            for (int f = 0; f < index; f++) {
                if (mirrored(pass.fans().get(f), fan)) {
                    return mirror(before[f]);
                }
            }
        }
        return across(fan);
    }

    /** Landing across of each bound of the strata (first index) at each bound of the sectors of a fan, m. */
    private double[][] across(Fan fan) {
        double start = fan.sign() * pass.discSpacingM() / 2;
        double takeOff = Math.toRadians(fan.takeOffDeg());
        double level = fan.outletSpeedMPerS() * Math.cos(takeOff);
        double up = fan.outletSpeedMPerS() * Math.sin(takeOff);
        double[] side = new double[SECTORS + 1];
        double[] speed = new double[SECTORS + 1];
        double slowest = Double.MAX_VALUE;
        double fastest = 0;
        for (int j = 0; j <= SECTORS; j++) {
            double angle = Math.toRadians(PatternGrid.sectorDeg(fan.directionDeg(), fan.spreadDeg(), j, SECTORS));
            double along = -level * Math.cos(angle) - pass.airAlongMPerS();
            side[j] = fan.sign() * level * Math.sin(angle) - pass.windAcrossMPerS();
            speed[j] = Math.hypot(along, side[j]);
            slowest = Math.min(slowest, speed[j]);
            fastest = Math.max(fastest, speed[j]);
        }
        double[][] across = new double[PatternGrid.BOUNDS.length][SECTORS + 1];
        for (int i = 0; i < across.length; i++) {
            Granule granule = new Granule(PatternGrid.boundMm(sizes, i), particleDensityKgPerM3);
            ThrowCurve curve = ThrowCurve.of(granule, slowest, fastest, pass.calm() ? 1 : NODES, up, pass.heightM());
            for (int j = 0; j <= SECTORS; j++) {
                double perSpeed = speed[j] > 0 ? curve.distanceM(speed[j]) / speed[j] : 0;
                across[i][j] = start + perSpeed * side[j] + pass.windAcrossMPerS() * curve.timeS(speed[j]);
            }
        }
        return across;
    }

    private static boolean mirrored(Fan one, Fan other) {
        return one.right() != other.right()
                && one.outletSpeedMPerS() == other.outletSpeedMPerS()
                && one.directionDeg() == other.directionDeg()
                && one.spreadDeg() == other.spreadDeg()
                && one.takeOffDeg() == other.takeOffDeg();
    }

    private static double[][] mirror(double[][] across) {
        double[][] mirrored = new double[across.length][];
        for (int i = 0; i < across.length; i++) {
            mirrored[i] = new double[across[i].length];
            for (int j = 0; j < across[i].length; j++) {
                mirrored[i][j] = -across[i][j];
            }
        }
        return mirrored;
    }
}
