package org.evenfall.flight;

/**
 * A straight vane on a flat turning disc, parallel to a radius at an offset, with dry friction on vane and disc. A model:
 * one granule from rest, no others in its way.
 *
 * @param radiusM centre of the disc to the tip, m, above 0
 * @param dropRadiusM centre of the disc to where the granule falls on, m, from |offset| to radius
 * @param offsetM distance of the vane from the radius it is parallel to, m; positive: ahead of it in the sense of turning
 * @param friction coefficient of friction, 0 to 1.5
 */
public record Vane(double radiusM, double dropRadiusM, double offsetM, double friction) {

    public Vane {
        if (!(radiusM > 0)
                || !(dropRadiusM > Math.abs(offsetM))
                || !(dropRadiusM < radiusM)
                || !(friction >= 0 && friction <= 1.5)) {
            throw new IllegalArgumentException("need |offset| < drop radius < radius and friction 0 to 1.5: " + radiusM
                    + ", " + dropRadiusM + ", " + offsetM + ", " + friction);
        }
    }

    /** Whether a granule at rest on the drop radius starts to move at all. */
    public boolean moves(double discRpm, double gravityMPerS2) {
        double omega = discRpm * Math.PI / 30;
        double start = Math.sqrt(dropRadiusM * dropRadiusM - offsetM * offsetM);
        return start + friction * offsetM > friction * gravityMPerS2 / (omega * omega);
    }

    /**
     * How the granule leaves. Closed form while the granule is pressed on the vane (x = A e^(λ₁t) + B e^(λ₂t) + const);
     * a granule that the vane does not press at first slides on the disc alone, stepped numerically, until it meets the
     * vane.
     *
     * @param discRpm speed of the disc, rpm, high enough that the granule {@link #moves}
     */
    public VaneOutlet outlet(double discRpm, double gravityMPerS2) {
        if (!(discRpm > 0) || !moves(discRpm, gravityMPerS2)) {
            throw new IllegalArgumentException("the granule stays where it falls at " + discRpm + " rpm");
        }
        double omega = discRpm * Math.PI / 30;
        double start = Math.sqrt(dropRadiusM * dropRadiusM - offsetM * offsetM);
        if (offsetM <= 0) {
            return pressed(omega, gravityMPerS2, start, 0, 0);
        }
        FreeSlide slide = new FreeSlide(radiusM, offsetM, friction, omega, gravityMPerS2).from(start);
        if (slide.hasLeftDisc()) {
            return slide.outlet();
        }
        return pressed(omega, gravityMPerS2, slide.x(), slide.vx(), slide.timeS());
    }

    private VaneOutlet pressed(double omega, double gravity, double start, double startSpeed, double timeBefore) {
        double root = Math.sqrt(1 + friction * friction);
        double fast = omega * (root - friction);
        double slow = -omega * (root + friction);
        double rest = friction * gravity / (omega * omega) - friction * offsetM;
        double k = start - rest;
        double a = (startSpeed - slow * k) / (fast - slow);
        double b = k - a;
        double end = Math.sqrt(radiusM * radiusM - offsetM * offsetM);
        double t = Math.max(0, Math.log(Math.max(1, (end - rest) / a)) / fast);
        for (int i = 0; i < 50; i++) {
            double x = a * Math.exp(fast * t) + b * Math.exp(slow * t) + rest;
            double v = a * fast * Math.exp(fast * t) + b * slow * Math.exp(slow * t);
            double next = Math.max(0, t - (x - end) / v);
            boolean settled = Math.abs(next - t) < 1e-15;
            t = next;
            if (settled) {
                break;
            }
        }
        double v = a * fast * Math.exp(fast * t) + b * slow * Math.exp(slow * t);
        return tip(timeBefore + t, end, offsetM, v, 0, omega, radiusM);
    }

    /** Velocity over the ground of a granule at (x, y) that moves with (vx, vy) in the disc's frame. */
    static VaneOutlet tip(double timeS, double x, double y, double vx, double vy, double omega, double radius) {
        double radial = (vx * x + vy * y) / radius;
        double tangential = omega * radius + (vy * x - vx * y) / radius;
        return new VaneOutlet(timeS, radial, tangential, Math.toDegrees(Math.atan2(radial, tangential)));
    }
}
