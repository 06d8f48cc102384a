package org.evenfall.setup;

import org.evenfall.flight.ThrowConditions;
import org.evenfall.flight.ThrowModel;
import org.evenfall.granule.SizeDistribution;
import org.evenfall.machine.MachineProfile;
import org.evenfall.reference.RankContext;

/**
 * The disc and the height with which the flight model computes: the machine's own, else the usual ones.
 *
 * @param discRadiusM centre of the disc to the tip of the vane, m
 * @param discSpeedRpm disc speed at 540 rpm of the PTO, rpm
 * @param heightM height above the crop canopy, m
 */
record MachineDefaults(double discRadiusM, double discSpeedRpm, double heightM) {

    static MachineDefaults of(MachineProfile machine) {
        return new MachineDefaults(
                machine.discRadiusM() == null ? ThrowModel.USUAL_DISC_RADIUS_M : machine.discRadiusM(),
                machine.discSpeedAt540Rpm() == null ? ThrowModel.USUAL_DISC_RPM : machine.discSpeedAt540Rpm(),
                machine.wantedHeightM() == null ? RankContext.USUAL_HEIGHT_M : machine.wantedHeightM());
    }

    /** The throw of a product from this machine. */
    ThrowConditions throwOf(SizeDistribution sizes, double particleKgPerM3) {
        return new ThrowConditions(
                sizes, particleKgPerM3, ThrowModel.outletSpeedMPerS(discRadiusM, discSpeedRpm), heightM);
    }
}
