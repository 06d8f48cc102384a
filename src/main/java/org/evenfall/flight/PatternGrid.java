package org.evenfall.flight;

import org.apache.commons.statistics.distribution.NormalDistribution;
import org.evenfall.granule.SizeDistribution;

/**
 * The quadrature of a landing pattern: the product is cut into {@value #STRATA} strata of size, each fan into sectors; the
 * mass of a stratum in a sector comes down evenly over the patch between the landings of its corners, across the travel a
 * trapezium, on cells of {@value #CELL_M} m. All mass is on the grid, so it is conserved to rounding.
 */
final class PatternGrid {

    /** Width of a cell, m. */
    static final double CELL_M = 0.25;

    private static final int STRATA = 12;

    /** Where the sizes are cut, standard deviations of ln d; what is beyond, 0.7 %, is left out and the rest scaled. */
    private static final double SIZE_CUT = 2.7;

    /** Narrower patches are spread over this half width, cells: a trapezium with upright sides has no slope to divide by. */
    private static final double NARROWEST = 1e-4;

    /** Standard normal quantiles between the strata. */
    static final double[] BOUNDS = bounds();

    private static final double[] STRATUM_SHARES = shares(STRATA, SIZE_CUT);

    private final double[] mass;
    private final int half;

    private PatternGrid(int half) {
        this.half = half;
        this.mass = new double[2 * half + 1];
    }

    /** Diameter at a bound between the strata of a product, mm. */
    static double boundMm(SizeDistribution sizes, int bound) {
        return sizes.d50Mm() * Math.exp(sizes.sigma() * BOUNDS[bound]);
    }

    /** Direction at a bound of a fan's sectors, degrees. */
    static double sectorDeg(double directionDeg, double spreadDeg, int bound, int sectors) {
        return directionDeg + spreadDeg * Fan.CUT * (2.0 * bound / sectors - 1);
    }

    /** Shares of a normal distribution in even pieces between its cuts; they add up to 1. */
    static double[] shares(int pieces, double cut) {
        NormalDistribution normal = NormalDistribution.of(0, 1);
        double all = normal.probability(-cut, cut);
        double[] shares = new double[pieces];
        for (int j = 0; j < pieces; j++) {
            shares[j] = normal.probability(cut * (2.0 * j / pieces - 1), cut * (2.0 * (j + 1) / pieces - 1)) / all;
        }
        return shares;
    }

    private static double[] bounds() {
        double[] bounds = new double[STRATA + 1];
        for (int i = 0; i <= STRATA; i++) {
            bounds[i] = SIZE_CUT * (2.0 * i / STRATA - 1);
        }
        return bounds;
    }

    /**
     * The pattern of fans given by the landings across of their corners, m: fan, bound of the strata, bound of the sectors.
     *
     * @param sectorShares share of a fan in each sector
     * @param fanShares share of the stream in each fan
     */
    static SpreadPattern pattern(double[][][] landings, double[] sectorShares, double[] fanShares) {
        int half = 0;
        for (double[][] across : landings) {
            half = Math.max(half, halfCells(across));
        }
        PatternGrid grid = new PatternGrid(half);
        for (int f = 0; f < landings.length; f++) {
            grid.deposit(landings[f], sectorShares, fanShares[f]);
        }
        return grid.pattern(grid.mass);
    }

    /** The pattern of one fan, as above, and its mirror image, half of the stream each. */
    static SpreadPattern mirrored(double[][] right, double[] sectorShares) {
        PatternGrid grid = new PatternGrid(halfCells(right));
        grid.deposit(right, sectorShares, 1);
        double[] both = new double[grid.mass.length];
        for (int i = 0; i < both.length; i++) {
            both[i] = (grid.mass[i] + grid.mass[both.length - 1 - i]) / 2;
        }
        return grid.pattern(both);
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

    private SpreadPattern pattern(double[] masses) {
        double[] positions = new double[masses.length];
        double[] perM = new double[masses.length];
        for (int i = 0; i < masses.length; i++) {
            positions[i] = (i - half) * CELL_M;
            perM[i] = masses[i] / CELL_M;
        }
        return new SpreadPattern(positions, perM);
    }

    private void deposit(double[][] across, double[] sectorShares, double share) {
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
                        stratum * sectorShares[j]);
            }
        }
    }

    /** Adds a mass as a trapezium, the sum of two even spreads of the given half widths; all in cells. */
    private void spread(double middle, double one, double other, double amount) {
        double b = Math.max(Math.min(one, other), NARROWEST);
        double a = Math.max(Math.max(one, other), b);
        int first = (int) (middle - a - b);
        int last = (int) (middle + a + b);
        double before = 0;
        double scale = 1 / (4 * a * b);
        for (int cell = first; cell < last; cell++) {
            double z = cell + 1 - middle;
            double until = scale * (ramp(z + a + b) - ramp(z + a - b) - ramp(z - a + b) + ramp(z - a - b));
            mass[cell] += amount * (until - before);
            before = until;
        }
        mass[last] += amount * (1 - before);
    }

    /** Half the square of what is above 0: the integral of a ramp. */
    private static double ramp(double z) {
        return z > 0 ? 0.5 * z * z : 0;
    }
}
