package org.evenfall.trays.ground;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.flight.Fan;
import org.evenfall.flight.LandingPattern;
import org.evenfall.flight.PassConditions;
import org.evenfall.flight.SpreadPattern;
import org.evenfall.flight.ThrowConditions;
import org.evenfall.flight.ThrowModel;
import org.evenfall.flight.TwinDisc;
import org.evenfall.flight.VaneSetting;

/**
 * A machine of the landing model of room {@code flight}, which the advice shares: constants of the advice may be set on this
 * family only. The first lever turns the fans of the long vanes, and those of the short ones by less; the second turns all.
 */
final class LandingMachine implements PassMachine {

    private final Job job;
    private final double radiusM;
    private final double rpm;
    private final double heightM;
    private final double rightShare;
    private final double cross;
    private final double baseDeg;
    private final Answer vanes;
    private final Answer drop;

    LandingMachine(Job job, Draws draws) {
        this.job = job;
        radiusM = draws.between(0.36, 0.44);
        boolean wide = job.widthM() >= 28;
        rpm = wide ? draws.between(850, 1100) : draws.between(750, 950);
        heightM = draws.between(0.65, 0.85);
        rightShare = draws.between(0.49, 0.51);
        cross = draws.between(0, 0.5);
        baseDeg = wide ? draws.between(-20, 45) : draws.between(-40, 60);
        vanes = Answer.draw(draws, Answer.MOST_FIRST, 0.8, 4, job.first().up());
        drop = Answer.draw(draws, Answer.MOST_SECOND, 0.8, 4, job.second().up());
    }

    @Override
    public SpreadPattern pass(int first, int second, Fault fault) {
        return pass(vanes.at(first), baseDeg + drop.at(second), fault);
    }

    private SpreadPattern pass(double vaneDeg, double allDeg, Fault fault) {
        double left = (1 - rightShare) * fault.leftOutlet();
        List<Fan> usual = new TwinDisc(
                        new VaneSetting(radiusM, 0),
                        new VaneSetting(0.8 * radiusM, 0),
                        rpm,
                        0,
                        fault.rollDeg(),
                        rightShare / (rightShare + left),
                        fault.wornShare())
                .fans();
        List<Fan> fans = new ArrayList<>();
        for (int i = 0; i < usual.size(); i++) {
            Fan fan = usual.get(i);
            double turned = fan.directionDeg() + allDeg + (i % 2 == 0 ? vaneDeg : cross * vaneDeg);
            fans.add(new Fan(
                    fan.right(),
                    fan.outletSpeedMPerS(),
                    Math.max(-90, Math.min(150, turned)),
                    fan.spreadDeg(),
                    fan.takeOffDeg(),
                    fan.share()));
        }
        return LandingPattern.of(
                job.sizes(),
                job.densityKgPerM3(),
                new PassConditions(fans, heightM, TwinDisc.DISC_SPACING_M, 0, 0, fault.windMPerS()));
    }

    /** Set as one sets a machine: at the good setting a little wider takes from the centre. */
    @Override
    public boolean plausible() {
        return centre(baseDeg + 4) < centre(baseDeg - 4);
    }

    private double centre(double allDeg) {
        SpreadPattern pass = pass(0, allDeg, Fault.NONE);
        TrueField field = TrueField.of(job.tramlines(), pass, pass);
        return field.overTray(0) - field.overTray(job.widthM() / 2);
    }

    @Override
    public Job job() {
        return job;
    }

    @Override
    public ThrowConditions typed() {
        return new ThrowConditions(
                job.sizes(), job.densityKgPerM3(), ThrowModel.outletSpeedMPerS(radiusM, rpm), heightM);
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
