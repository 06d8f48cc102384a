package org.evenfall.flight;

import java.util.ArrayList;
import java.util.List;

/**
 * A twin-disc machine of the teaching model and how its parts become fans. Each disc has a long and a short vane, each
 * throwing half. A granule falls on at the drop point, is carried round while it slides along the vane, and leaves at the
 * tip: time on the vane, speed and direction come from {@link Vane}. Directions are counted outward, so that the same
 * setting of both discs gives a pattern with equal sides. The scatter of the direction, the drop radius, the friction and
 * the dish of the disc are assumptions of the model ({@link ThrowModel}).
 *
 * @param longVane the long vane of both discs
 * @param shortVane the short one, at most as long
 * @param discRpm speed of the discs, 200 to 1500 rpm
 * @param dropPointDeg where the product falls on, −90 to 90 degrees: turns the fans of both vanes outward by as much
 * @param tiltDeg roll of the machine, −15 to 15 degrees, positive: right side up
 * @param rightShare share of the stream that the right outlet gives, 0 to 1; 0.5: outlets alike
 * @param wornShare how much shorter the long vane of the left disc is worn, share of its radius, 0 to 0.3
 */
public record TwinDisc(
        VaneSetting longVane,
        VaneSetting shortVane,
        double discRpm,
        double dropPointDeg,
        double tiltDeg,
        double rightShare,
        double wornShare) {

    /** Scatter of the direction within a fan, degrees: drop point, clouding, vane edge. Assumption: no measurement read. */
    public static final double SPREAD_DEG = 24;

    /** Distance between the centres of the discs, m. Assumption: an ordinary frame. */
    public static final double DISC_SPACING_M = 1.0;

    /** Radius of the short vane of an ordinary machine over that of the long one. Assumption: it reaches past its neighbour. */
    private static final double SHORT_OVER_LONG = 0.8;

    // where the two vanes of a new, radial set at 850 rpm throw, degrees; Assumption: whoever builds the disc chooses
    // it
    private static final double LONG_DEG = 28;
    private static final double SHORT_DEG = 14;

    /** An ordinary machine: the short vane throws more behind, the long one more to the side. */
    public static TwinDisc usual(double radiusM, double discRpm) {
        return new TwinDisc(
                new VaneSetting(radiusM, 0), new VaneSetting(SHORT_OVER_LONG * radiusM, 0), discRpm, 0, 0, 0.5, 0);
    }

    /** @throws IllegalArgumentException when a part is out of its range */
    public TwinDisc {
        if (!(shortVane.radiusM() <= longVane.radiusM())) {
            throw new IllegalArgumentException(
                    "the short vane is longer than the long one: " + shortVane + ", " + longVane);
        }
        Ranges.within("discRpm", discRpm, 200, 1500);
        Ranges.within("dropPointDeg", dropPointDeg, -90, 90);
        Ranges.within("tiltDeg", tiltDeg, -15, 15);
        Ranges.within("rightShare", rightShare, 0, 1);
        Ranges.within("wornShare", wornShare, 0, 0.3);
    }

    /** The fans: long and short vane of the left disc, then of the right one. */
    public List<Fan> fans() {
        List<Fan> fans = new ArrayList<>();
        for (boolean right : new boolean[] {false, true}) {
            double share = (right ? rightShare : 1 - rightShare) / 2;
            double takeOff = ThrowModel.TAKE_OFF_DEG + (right ? tiltDeg : -tiltDeg);
            double wear = right ? 1 : 1 - wornShare;
            fans.add(fan(right, longVane.radiusM() * wear, longVane.pitchM(), takeOff, share, LONG_DEG));
            fans.add(fan(right, shortVane.radiusM(), shortVane.pitchM(), takeOff, share, SHORT_DEG));
        }
        return fans;
    }

    private Fan fan(boolean right, double radiusM, double pitchM, double takeOffDeg, double share, double baseDeg) {
        VaneOutlet outlet = outlet(radiusM, pitchM, discRpm);
        VaneOutlet base = outlet(radiusM, 0, ThrowModel.USUAL_DISC_RPM);
        double turned = turnDeg(outlet, discRpm) - turnDeg(base, ThrowModel.USUAL_DISC_RPM) + aheadDeg(radiusM, pitchM);
        double direction = Math.max(
                Fan.LOWEST_DIRECTION_DEG, Math.min(Fan.HIGHEST_DIRECTION_DEG, baseDeg + dropPointDeg + turned));
        return new Fan(right, outlet.speedMPerS(), direction, SPREAD_DEG, takeOffDeg, share);
    }

    private static VaneOutlet outlet(double radiusM, double pitchM, double rpm) {
        return new Vane(radiusM, ThrowModel.DROP_SHARE * radiusM, pitchM, ThrowModel.FRICTION)
                .outlet(rpm, Flight.GRAVITY_M_PER_S2);
    }

    /** Turn of the disc during the slide and of the direction against the radius at the tip, degrees, outward positive. */
    private static double turnDeg(VaneOutlet outlet, double rpm) {
        double degreesPerS = 6 * rpm;
        return degreesPerS * outlet.timeS() + 90 - outlet.angleFromTangentDeg();
    }

    /** How far the tip of a vane is ahead of the radius on which the granule fell, degrees. */
    private static double aheadDeg(double radiusM, double pitchM) {
        return Math.toDegrees(Math.asin(pitchM / radiusM) - Math.asin(pitchM / (ThrowModel.DROP_SHARE * radiusM)));
    }
}
