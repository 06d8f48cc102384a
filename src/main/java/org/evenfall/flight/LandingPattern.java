package org.evenfall.flight;

import java.util.List;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.evenfall.granule.SizeDistribution;

/**
 * Where the granules of one pass land across the travel: a teaching model, no machine settings. Deterministic
 * quadrature: the product is cut into {@value #STRATA} strata of size, each fan into {@value #SECTORS} sectors; the mass of
 * a stratum in a sector comes down evenly over the patch between the landings of its corners, seen from behind a trapezium.
 * All mass lands on the grid, so it is conserved to rounding. No bounce, no roll, no clouding, no air dragged along by the
 * discs.
 *
 * <p>In wind the flights are solved in the moving air for {@value #NODES} launch speeds a stratum and fan and
 * interpolated: landing distance and time are smooth in the speed (error below 1e-5 of the throw).
 */
public final class LandingPattern {

    /** Width of a grid cell, m. */
    public static final double CELL_M = 0.25;

    private static final int STRATA = 12;
    static final int SECTORS = 48;
    private static final int NODES = 5;

    /** Where the sizes are cut, standard deviations of ln d; what lies beyond, 0.7 %, is left out and the rest scaled. */
    private static final double SIZE_CUT = 2.7;

    /** Standard normal quantiles between the strata. */
    static final double[] BOUNDS = bounds();

    private static final double[] STRATUM_SHARES = shares(STRATA, SIZE_CUT);
    private static final double[] SECTOR_SHARES = shares(SECTORS, Fan.CUT);

    /** A narrower choice of sectors for calm patterns by the dozen. */
    static final int FEW_SECTORS = 24;

    private static final double[] FEW_SHARES = shares(FEW_SECTORS, Fan.CUT);

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
        return new LandingPattern(sizes, particleDensityKgPerM3, pass).lay();
    }

    private SpreadPattern lay() {
        List<Fan> fans = pass.fans();
        double[][][] landings = new double[fans.size()][][];
        for (int f = 0; f < landings.length; f++) {
            landings[f] = across(f, landings);
        }
        return lay(landings, fans.stream().mapToDouble(Fan::share).toArray());
    }

    /** Lays fans given by the landings of their corners: fan, stratum bound, sector bound, m. */
    static SpreadPattern lay(double[][][] landings, double[] shares) {
        int half = 0;
        for (double[][] across : landings) {
            half = Math.max(half, halfCells(across));
        }
        double[] mass = new double[2 * half + 1];
        for (int f = 0; f < landings.length; f++) {
            deposit(landings[f], SECTOR_SHARES, shares[f], mass, half);
        }
        return pattern(mass, half);
    }

    /** Lays one fan, given by few sectors, and its mirror image. */
    static SpreadPattern layMirrored(double[][] right) {
        int half = halfCells(right);
        double[] mass = new double[2 * half + 1];
        deposit(right, FEW_SHARES, 1, mass, half);
        double[] both = new double[mass.length];
        for (int i = 0; i < mass.length; i++) {
            both[i] = (mass[i] + mass[mass.length - 1 - i]) / 2;
        }
        return pattern(both, half);
    }

    private static int halfCells(double[][] across) {
        double reach = CELL_M;
        for (double[] ring : across) {
            for (double y : ring) {
                reach = Math.max(reach, Math.abs(y));
            }
        }
        return (int) Math.ceil(reach / CELL_M) + 1;
    }

    private static SpreadPattern pattern(double[] mass, int half) {
        double[] positions = new double[mass.length];
        for (int i = 0; i < mass.length; i++) {
            positions[i] = (i - half) * CELL_M;
            mass[i] /= CELL_M;
        }
        return new SpreadPattern(positions, mass);
    }

    /** Direction at a sector bound, degrees. */
    static double sectorDeg(double directionDeg, double spreadDeg, int bound, int sectors) {
        return directionDeg + spreadDeg * Fan.CUT * (2.0 * bound / sectors - 1);
    }

    /** Landing across of each stratum bound (first index) at each sector bound of a fan, m. */
    private double[][] across(int index, double[][][] before) {
        Fan fan = pass.fans().get(index);
        if (pass.calm()) {
            // in calm air the other side is the mirror image and two vanes may share their throws
            for (int f = 0; f < index; f++) {
                if (mirrored(pass.fans().get(f), fan)) {
                    return mirror(before[f]);
                }
            }
        }
        double[][] across = new double[BOUNDS.length][SECTORS + 1];
        double start = fan.sign() * pass.discSpacingM() / 2;
        double takeOff = Math.toRadians(fan.takeOffDeg());
        double level = fan.outletSpeedMPerS() * Math.cos(takeOff);
        double up = fan.outletSpeedMPerS() * Math.sin(takeOff);
        double[] along = new double[SECTORS + 1];
        double[] side = new double[SECTORS + 1];
        double slowest = Double.MAX_VALUE;
        double fastest = 0;
        for (int j = 0; j <= SECTORS; j++) {
            double angle = Math.toRadians(sectorDeg(fan.directionDeg(), fan.spreadDeg(), j, SECTORS));
            along[j] = -level * Math.cos(angle) - pass.airAlongMPerS();
            side[j] = fan.sign() * level * Math.sin(angle) - pass.windAcrossMPerS();
            double speed = Math.hypot(along[j], side[j]);
            slowest = Math.min(slowest, speed);
            fastest = Math.max(fastest, speed);
        }
        for (int i = 0; i < BOUNDS.length; i++) {
            double diameterMm = sizes.d50Mm() * Math.exp(sizes.sigma() * BOUNDS[i]);
            ThrowCurve curve = ThrowCurve.of(
                    new Granule(diameterMm, particleDensityKgPerM3),
                    slowest,
                    fastest,
                    pass.calm() ? 1 : NODES,
                    up,
                    pass.heightM());
            for (int j = 0; j <= SECTORS; j++) {
                double speed = Math.hypot(along[j], side[j]);
                double factor = speed > 0 ? curve.distanceM(speed) / speed : 0;
                across[i][j] = start + factor * side[j] + pass.windAcrossMPerS() * curve.timeS(speed);
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

    static double[][] mirror(double[][] across) {
        double[][] mirrored = new double[across.length][];
        for (int i = 0; i < across.length; i++) {
            mirrored[i] = new double[across[i].length];
            for (int j = 0; j < across[i].length; j++) {
                mirrored[i][j] = -across[i][j];
            }
        }
        return mirrored;
    }

    private static void deposit(double[][] across, double[] sectorShares, double share, double[] mass, int half) {
        for (int i = 0; i < STRATA; i++) {
            double[] inner = across[i];
            double[] outer = across[i + 1];
            double stratum = share * STRATUM_SHARES[i];
            for (int j = 0; j < sectorShares.length; j++) {
                double middle = (inner[j] + inner[j + 1] + outer[j] + outer[j + 1]) / 4;
                double alongSector = Math.abs(inner[j + 1] + outer[j + 1] - inner[j] - outer[j]) / 4;
                double alongSize = Math.abs(outer[j] + outer[j + 1] - inner[j] - inner[j + 1]) / 4;
                spread(
                        middle / CELL_M + half + 0.5,
                        alongSector / CELL_M,
                        alongSize / CELL_M,
                        stratum * sectorShares[j],
                        mass);
            }
        }
    }

    /** Lays a mass as a trapezium, the sum of two even spreads of the given half widths; all in cells. */
    private static void spread(double middle, double one, double other, double amount, double[] mass) {
        double a = Math.max(one, other);
        // a trapezium with upright sides has no slope to divide by
        double b = Math.max(Math.min(one, other), 1e-4);
        a = Math.max(a, b);
        int first = (int) (middle - a - b);
        int last = (int) (middle + a + b);
        double before = 0;
        double scale = 1 / (4 * a * b);
        for (int cell = first; cell < last; cell++) {
            double z = cell + 1 - middle;
            double until = scale * (half(z + a + b) - half(z + a - b) - half(z - a + b) + half(z - a - b));
            mass[cell] += amount * (until - before);
            before = until;
        }
        mass[last] += amount * (1 - before);
    }

    /** Half the square of what is above 0. */
    private static double half(double z) {
        return z > 0 ? 0.5 * z * z : 0;
    }

    private static double[] bounds() {
        double[] bounds = new double[STRATA + 1];
        for (int i = 0; i <= STRATA; i++) {
            bounds[i] = SIZE_CUT * (2.0 * i / STRATA - 1);
        }
        return bounds;
    }

    /** Share of a normal distribution in each even piece between its cuts; they add up to 1. */
    private static double[] shares(int pieces, double cut) {
        NormalDistribution normal = NormalDistribution.of(0, 1);
        double all = normal.probability(-cut, cut);
        double[] shares = new double[pieces];
        for (int j = 0; j < pieces; j++) {
            shares[j] = normal.probability(cut * (2.0 * j / pieces - 1), cut * (2.0 * (j + 1) / pieces - 1)) / all;
        }
        return shares;
    }
}
