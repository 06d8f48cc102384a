package org.evenfall.trays.ground;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.evenfall.flight.SpreadPattern;
import org.evenfall.flight.ThrowConditions;

/**
 * A twin-disc machine with physics of its own: {@link SmoothVane}, {@link DragThrows}, a long and a short vane on each disc,
 * five size classes, scatter of direction and speed. The first lever swivels or lengthens the vanes, which changes throw and
 * direction; the second moves the drop point, which turns all.
 */
final class BallisticMachine implements PassMachine {

    private static final double[] SIZES = quantiles(5);
    private static final double[] SPEEDS = {-1.2247, 0, 1.2247};
    private static final double[] DIRECTIONS = quantiles(25);

    /** Terminal velocity of urea of 3.3 mm, about; K = g / v². Assumption. */
    private static final double USUAL_SIZE_MM = 3.3;

    private static final double SLOWEST_M_PER_S = 15;
    private static final double FASTEST_M_PER_S = 58;
    private static final double MOST_LEAD_DEG = 50;
    private static final double SHORTEST_OVER_DROP = 1.2;

    private final Job job;
    private final boolean swivels;
    private final double dropM;
    private final double longM;
    private final double shortM;
    private final double turnPerS;
    private final double dragPerM;
    private final double takeOffDeg;
    private final double heightM;
    private final double baseRad;
    private final double longShare;
    private final double rightShare;
    private final double spacingM;
    private final double scatterRad;
    private final double speedScatter;
    private final Answer vanes;
    private final Answer drop;
    private final DragThrows[] usual;

    BallisticMachine(Job job, Draws draws) {
        this.job = job;
        swivels = draws.unit() < 0.5;
        longM = draws.between(0.32, 0.46);
        shortM = longM * draws.between(0.7, 0.95);
        dropM = longM * draws.between(0.25, 0.45);
        // a machine for wide tramlines throws further: less drag, more take-off, more to the side
        double wide = (job.widthM() - 12) / 24;
        dragPerM = draws.between(0.05, 0.11 - 0.045 * wide);
        takeOffDeg = draws.between(4 + 4 * wide, 14 + wide);
        heightM = draws.between(0.6, 0.95);
        usual = throwsAt(takeOffDeg);
        turnPerS = speedFor(job.widthM() * draws.between(0.6, 1)) / new SmoothVane(dropM, longM, 0).speedPerTurnM();
        baseRad = Math.toRadians(draws.between(20 * wide, 70));
        longShare = draws.between(0.4, 0.6);
        rightShare = draws.between(0.488, 0.512);
        spacingM = draws.between(0.8, 1.3);
        scatterRad = Math.toRadians(draws.between(14, 28));
        speedScatter = draws.between(0.02, 0.1);
        vanes = swivels
                ? Answer.draw(draws, Answer.MOST_FIRST, 1.2, 4.5, job.first().up())
                : Answer.draw(draws, Answer.MOST_FIRST, 4, 13, job.first().up());
        drop = Answer.draw(draws, Answer.MOST_SECOND, 1, 4, job.second().up());
    }

    private static double[] quantiles(int count) {
        NormalDistribution standard = NormalDistribution.of(0, 1);
        double[] quantiles = new double[count];
        Arrays.setAll(quantiles, i -> standard.inverseCumulativeProbability((i + 0.5) / count));
        return quantiles;
    }

    private DragThrows[] throwsAt(double degrees) {
        double sigma = job.sizes().sigma();
        return Arrays.stream(SIZES)
                .mapToObj(z -> new DragThrows(
                        dragPerM * USUAL_SIZE_MM / (job.sizes().d50Mm() * Math.exp(sigma * z)), degrees, heightM))
                .toArray(DragThrows[]::new);
    }

    /** Outlet speed of a throw, m/s, within what discs do. */
    private double speedFor(double throwM) {
        double speed = SLOWEST_M_PER_S;
        while (speed < FASTEST_M_PER_S && usual[SIZES.length / 2].distanceM(speed) < throwM) {
            speed += 0.5;
        }
        return speed;
    }

    /** The vane at a setting of the first lever. */
    private SmoothVane vane(double tipM, int first, double wornShare) {
        double moved = vanes.at(first);
        if (swivels) {
            double lead = Math.max(-MOST_LEAD_DEG, Math.min(MOST_LEAD_DEG, moved));
            return new SmoothVane(dropM, tipM * (1 - wornShare), Math.toRadians(lead));
        }
        double setM = Math.max(SHORTEST_OVER_DROP * dropM, tipM + moved / 1000);
        return new SmoothVane(dropM, Math.max(1.01 * dropM, setM * (1 - wornShare)), 0);
    }

    @Override
    public SpreadPattern pass(int first, int second, Fault fault) {
        Cloud cloud = new Cloud();
        double goodRad = new SmoothVane(dropM, longM, 0).directionRad();
        for (int side = -1; side <= 1; side += 2) {
            DragThrows[] flown = fault.rollDeg() == 0 ? usual : throwsAt(takeOffDeg + side * fault.rollDeg());
            double given = side < 0 ? (1 - rightShare) * fault.leftOutlet() : rightShare;
            for (boolean longer : new boolean[] {true, false}) {
                SmoothVane vane = vane(longer ? longM : shortM, first, side < 0 && longer ? fault.wornShare() : 0);
                double direction = baseRad + vane.directionRad() - goodRad + Math.toRadians(drop.at(second));
                fan(
                        cloud,
                        flown,
                        side,
                        turnPerS * vane.speedPerTurnM(),
                        direction,
                        given * (longer ? longShare : 1 - longShare),
                        fault.windMPerS());
            }
        }
        return cloud.pattern();
    }

    private void fan(
            Cloud cloud, DragThrows[] flown, int side, double speed, double direction, double share, double wind) {
        double start = side * spacingM / 2;
        for (double z : DIRECTIONS) {
            double sine = Math.sin(direction + scatterRad * z);
            double cosine = Math.cos(direction + scatterRad * z);
            for (double faster : SPEEDS) {
                double outlet = speed * (1 + speedScatter * faster);
                // in the moving air
                double across = side * outlet * sine - wind;
                double behind = outlet * cosine;
                double level = Math.sqrt(across * across + behind * behind);
                for (DragThrows one : flown) {
                    double landed = one.distanceM(level) * across / level + wind * one.timeS(level);
                    cloud.add(start + landed, share);
                }
            }
        }
    }

    @Override
    public Job job() {
        return job;
    }

    @Override
    public ThrowConditions typed() {
        double speed = turnPerS * new SmoothVane(dropM, longM, 0).speedPerTurnM();
        return new ThrowConditions(job.sizes(), job.densityKgPerM3(), speed, heightM);
    }

    @Override
    public int goodFirst() {
        return vanes.good();
    }

    @Override
    public int goodSecond() {
        return drop.good();
    }
}
