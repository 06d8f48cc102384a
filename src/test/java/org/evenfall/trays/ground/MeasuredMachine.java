package org.evenfall.trays.ground;

import org.evenfall.flight.SpreadPattern;
import org.evenfall.flight.ThrowConditions;

/**
 * A machine without physics, by patterns as they are measured ({@link MeasuredShape}) with a fine structure of its own. The
 * first lever stretches the pattern about the middle, the second moves mass between the inner and the outer part; the first
 * does a little of that too. Both answer along a bent line.
 */
final class MeasuredMachine implements PassMachine {

    private static final int WAVES = 5;
    private static final int CELLS = 240;

    private final Job job;
    private final MeasuredShape one;
    private final MeasuredShape other;
    private final double mix;
    private final double reachM;
    private final double[] waves = new double[2 * WAVES];
    private final double rightShare;
    private final double tiltOfVanes;
    private final Answer vanes;
    private final Answer drop;

    MeasuredMachine(Job job, Draws draws) {
        this.job = job;
        MeasuredShape[] shapes = MeasuredShape.values();
        one = shapes[draws.whole(0, shapes.length - 1)];
        other = shapes[draws.whole(0, shapes.length - 1)];
        mix = draws.between(0.5, 1);
        reachM = job.widthM() * draws.between(0.6, 1.2);
        rightShare = draws.between(0.485, 0.515);
        tiltOfVanes = draws.between(-1, 3);
        vanes = Answer.draw(draws, Answer.MOST_FIRST, 0.018, 0.07, job.first().up());
        drop = Answer.draw(draws, Answer.MOST_SECOND, 0.03, 0.14, job.second().up());
        for (int i = 0; i < waves.length; i++) {
            waves[i] = draws.normal(0.03);
        }
    }

    @Override
    public SpreadPattern pass(int first, int second, Fault fault) {
        double stretched = reachM * Math.exp(vanes.at(first));
        double tilt = drop.at(second) + tiltOfVanes * vanes.at(first);
        // what a side's throw loses by wear and roll, and how far wind carries; rough sizes
        double left = stretched * (1 - 0.6 * fault.wornShare()) * (1 - 0.025 * fault.rollDeg());
        double right = stretched * (1 + 0.025 * fault.rollDeg());
        double shift = 0.35 * fault.windMPerS();
        double ends = Math.max(left, right) + Math.abs(shift) + 0.1;
        double[] places = new double[CELLS + 1];
        double[] amounts = new double[CELLS + 1];
        for (int i = 0; i <= CELLS; i++) {
            places[i] = ends * (2.0 * i / CELLS - 1);
            double x = places[i] - shift;
            double given = x < 0 ? (1 - rightShare) * fault.leftOutlet() : rightShare;
            double reach = x < 0 ? left : right;
            amounts[i] = given / reach * at(x / reach, tilt);
        }
        return new SpreadPattern(places, amounts);
    }

    /** Amount at a place over the reach, −1 to 1. */
    private double at(double place, double tilt) {
        double share = Math.abs(place);
        if (share >= 1) {
            return 0;
        }
        double outline = mix * one.at(share) + (1 - mix) * other.at(share);
        double fine = 1;
        for (int k = 0; k < WAVES; k++) {
            double turn = Math.PI * (k + 1.5) * place;
            fine += waves[2 * k] * Math.cos(turn) + waves[2 * k + 1] * Math.sin(turn);
        }
        return Math.max(0, outline * fine * Math.max(0.1, 1 + tilt * (2.5 * share - 1)));
    }

    @Override
    public Job job() {
        return job;
    }

    @Override
    public ThrowConditions typed() {
        return new ThrowConditions(job.sizes(), job.densityKgPerM3(), 32, 0.75);
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
