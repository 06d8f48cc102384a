package org.evenfall.flight;

import java.util.ArrayList;
import java.util.List;

/**
 * A twin-disc machine of the teaching model and how its parts become fans. Each disc has a long and a short vane, each
 * throwing half. A granule falls on at the drop point, is carried round while it slides along the vane, and leaves at the
 * tip: time on the vane, speed and direction come from {@link Vane}. That the direction scatters by {@value #SPREAD_DEG}°
 * is an assumption of the model, as are the drop radius, the friction and the dish of the disc ({@link ThrowModel}).
 *
 * @param longRadiusM centre of the disc to the tip of the long vane, m
 * @param shortRadiusM to the tip of the short vane, m
 * @param discRpm speed of the discs, rpm
 * @param dropPointDeg where the product falls on: turns the fan of both vanes, degrees outward
 * @param longPitchM how far the long vane is set ahead of the radius (negative: behind), m
 * @param shortPitchM the same for the short vane, m
 * @param tiltDeg roll of the machine, degrees, positive: right side up
 * @param rightShare share of the stream that the right outlet gives, 0 to 1; 0.5 alike
 * @param wornShare how much shorter the long vane of the left disc is worn, share of its radius, 0 to 0.3
 */
public record TwinDisc(
        double longRadiusM,
        double shortRadiusM,
        double discRpm,
        double dropPointDeg,
        double longPitchM,
        double shortPitchM,
        double tiltDeg,
        double rightShare,
        double wornShare) {

    /** Scatter of the direction within a fan, degrees: drop point, clouding, vane edge. Assumption. */
    public static final double SPREAD_DEG = 24;

    /** Distance between the centres of the discs, m. Assumption. */
    public static final double DISC_SPACING_M = 1.0;

    /** Where the two vanes of a straight, new, radial set at 850 rpm throw. Assumption: whoever builds the disc chooses it. */
    private static final double LONG_DEG = 28;

    private static final double SHORT_DEG = 14;

    /** An ordinary machine: the short vane throws more behind, the long one more to the side. Assumption. */
    public static TwinDisc usual(double radiusM, double discRpm) {
        return new TwinDisc(radiusM, 0.8 * radiusM, discRpm, 0, 0, 0, 0, 0.5, 0);
    }

    public TwinDisc {
        if (!(longRadiusM > 0.1 && longRadiusM <= 1)
                || !(shortRadiusM > 0.1 && shortRadiusM <= longRadiusM)
                || !(discRpm >= 200 && discRpm <= 1500)
                || !(Math.abs(dropPointDeg) <= 90)
                || !(Math.abs(longPitchM) < 0.25 * longRadiusM)
                || !(Math.abs(shortPitchM) < 0.25 * shortRadiusM)
                || !(Math.abs(tiltDeg) <= 15)
                || !(rightShare >= 0 && rightShare <= 1)
                || !(wornShare >= 0 && wornShare <= 0.3)) {
            throw new IllegalArgumentException("a part is out of its range: " + longRadiusM + ", " + shortRadiusM + ", "
                    + discRpm + ", " + dropPointDeg + ", " + longPitchM + ", " + shortPitchM + ", " + tiltDeg + ", "
                    + rightShare + ", " + wornShare);
        }
    }

    /** The fans of both discs. */
    public List<Fan> fans() {
        List<Fan> fans = new ArrayList<>();
        for (boolean right : new boolean[] {false, true}) {
            double share = (right ? rightShare : 1 - rightShare) / 2;
            double takeOff = ThrowModel.TAKE_OFF_DEG + (right ? tiltDeg : -tiltDeg);
            double wear = right ? 1 : 1 - wornShare;
            fans.add(fan(right, longRadiusM * wear, longPitchM, takeOff, share, LONG_DEG));
            fans.add(fan(right, shortRadiusM, shortPitchM, takeOff, share, SHORT_DEG));
        }
        return fans;
    }

    private Fan fan(boolean right, double radiusM, double pitchM, double takeOffDeg, double share, double baseDeg) {
        VaneOutlet outlet = outlet(radiusM, pitchM, discRpm);
        VaneOutlet base = outlet(radiusM, 0, ThrowModel.USUAL_DISC_RPM);
        double turned = turnDeg(outlet, discRpm) - turnDeg(base, ThrowModel.USUAL_DISC_RPM);
        double direction = Math.max(-90, Math.min(150, baseDeg + dropPointDeg + turned));
        return new Fan(right, outlet.speedMPerS(), direction, SPREAD_DEG, takeOffDeg, share);
    }

    private static VaneOutlet outlet(double radiusM, double pitchM, double rpm) {
        return new Vane(radiusM, ThrowModel.DROP_SHARE * radiusM, pitchM, ThrowModel.FRICTION)
                .outlet(rpm, Flight.GRAVITY_M_PER_S2);
    }

    /** Direction of leaving, from the radius on which the granule fell, degrees in the sense of turning. */
    private static double turnDeg(VaneOutlet outlet, double rpm) {
        return 6 * rpm * outlet.timeS() + 90 - outlet.angleFromTangentDeg();
    }
}
