package org.evenfall.trays.ground;

import org.evenfall.flight.DrivingPattern;
import org.evenfall.flight.ThrowConditions;

/**
 * A machine that shares nothing with any flight: its field is a sum of cosines. The first lever changes the centre shape by
 * so many percent a step and the quarter points a little; the second the quarter points, and the centre a little.
 */
final class CosinesMachine implements Machine {

    private final Job job;
    private final Answer vanes;
    private final Answer drop;
    private final double quarterPercent;
    private final double quarterOfVanes;
    private final double centreOfDrop;
    private final double sidePercent;

    CosinesMachine(Job job, Draws draws) {
        this.job = job;
        double usualPercent = draws.between(2.5, 6);
        double slopePercent = usualPercent * draws.between(0.4, 2);
        vanes = Answer.draw(
                draws,
                Answer.MOST_FIRST,
                slopePercent,
                slopePercent,
                job.first().up());
        drop = Answer.draw(draws, Answer.MOST_SECOND, 0.5, 3, job.second().up());
        quarterPercent = draws.between(-6, 6);
        quarterOfVanes = draws.normal(0.2);
        centreOfDrop = draws.between(0.3, 1.2);
        sidePercent = draws.normal(2);
    }

    @Override
    public TrueField field(int first, int second, Fault fault) {
        double centre = -vanes.at(first) - centreOfDrop * drop.at(second);
        double quarter = quarterPercent + quarterOfVanes * vanes.at(first) + drop.at(second);
        double side = sidePercent + 60 * fault.wornShare() + 3 * fault.rollDeg() + 35 * (1 - fault.leftOutlet());
        double shift = 0.1 * fault.windMPerS();
        int half = job.tramlines().pattern() == DrivingPattern.ROUND_AND_ROUND ? 2 : 1;
        return TrueField.of(job.tramlines(), x -> {
            double turn = Math.PI * (x - shift) / job.widthM();
            return 1
                    + centre / 100 * Math.cos(2 * turn)
                    + quarter / 100 * Math.cos(4 * turn)
                    + side / 100 * Math.sin(half * turn);
        });
    }

    @Override
    public double meanThrowM(int first, int second) {
        return vanes.at(first) + centreOfDrop * drop.at(second);
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
