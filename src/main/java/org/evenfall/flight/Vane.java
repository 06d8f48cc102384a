package org.evenfall.flight;

/**
 * A straight vane on a flat turning disc, parallel to a radius at an offset c, with dry friction μ on vane and disc. A
 * model: one granule from rest, no others in its way.
 *
 * <ul>
 *   <li>c ≤ 0: the vane presses the granule from the start. With x along the vane
 *       x″ + 2μω x′ − ω²(x + μc) + μg = 0, so x = A e^(λ₁t) + B e^(λ₂t) + μg/ω² − μc with λ = ω(−μ ± √(1 + μ²)).
 *   <li>c > 0: the granule first slides on the disc alone ({@link FreeSlide}). Where it meets the vane, its speed across
 *       the vane is lost. It may leave the disc before.
 * </ul>
 *
 * @param radiusM centre of the disc to the tip, m, above the drop radius
 * @param dropRadiusM centre of the disc to where the granule falls on, m, above |offset|
 * @param offsetM distance c of the vane from the radius it is parallel to, m; positive: ahead of it in the sense of turning
 * @param friction coefficient of friction μ, 0 to {@value #MOST_FRICTION}
 */
public record Vane(double radiusM, double dropRadiusM, double offsetM, double friction) {

    /** Assumption: dry granules on steel stay far below. */
    static final double MOST_FRICTION = 1.5;

    private static final double SETTLED_S = 1e-15;
    private static final int MOST_ITERATIONS = 50;

    /** @throws IllegalArgumentException unless |offset| &lt; drop radius &lt; radius and friction is in its range */
    public Vane {
        if (!(dropRadiusM > Math.abs(offsetM)) || !(dropRadiusM < radiusM)) {
            throw new IllegalArgumentException(
                    "need |offsetM| < dropRadiusM < radiusM: " + offsetM + ", " + dropRadiusM + ", " + radiusM);
        }
        Ranges.within("friction", friction, 0, MOST_FRICTION);
    }

    /**
     * Whether a granule at rest on the drop radius starts to move at all: the centrifugal acceleration along its way has to
     * exceed the friction on the disc, and on the vane where the vane presses it.
     */
    public boolean moves(double discRpm, double gravityMPerS2) {
        double omega = omega(discRpm);
        double driving = offsetM > 0 ? dropRadiusM : start() + friction * offsetM;
        return driving * omega * omega > friction * gravityMPerS2;
    }

    /**
     * How the granule leaves.
     *
     * @param discRpm speed of the disc, rpm, high enough that the granule {@link #moves}
     * @throws IllegalArgumentException when the granule stays where it falls
     */
    public VaneOutlet outlet(double discRpm, double gravityMPerS2) {
        if (!(discRpm > 0) || !moves(discRpm, gravityMPerS2)) {
            throw new IllegalArgumentException("the granule stays where it falls at " + discRpm + " rpm");
        }
        double omega = omega(discRpm);
        if (offsetM <= 0) {
            return pressed(omega, gravityMPerS2, start(), 0, 0);
        }
        FreeSlide slide = new FreeSlide(radiusM, offsetM, friction, omega, gravityMPerS2);
        FreeSlide.State end = slide.from(start());
        if (slide.hasLeftDisc(end)) {
            return tip(end.timeS(), end.x(), end.y(), end.vx(), end.vy(), omega);
        }
        return pressed(omega, gravityMPerS2, end.x(), end.vx(), end.timeS());
    }

    private static double omega(double discRpm) {
        return discRpm * Math.PI / 30;
    }

    /** Where on the vane the granule falls on, x. */
    private double start() {
        return Math.sqrt(dropRadiusM * dropRadiusM - offsetM * offsetM);
    }

    /** Along the vane in closed form; the time at the tip by Newton's method from the growing part alone. */
    private VaneOutlet pressed(double omega, double gravity, double startX, double startSpeed, double timeBefore) {
        double root = Math.sqrt(1 + friction * friction);
        double fast = omega * (root - friction);
        double slow = -omega * (root + friction);
        double rest = friction * gravity / (omega * omega) - friction * offsetM;
        double a = (startSpeed - slow * (startX - rest)) / (fast - slow);
        double b = startX - rest - a;
        double end = Math.sqrt(radiusM * radiusM - offsetM * offsetM);
        double t = Math.max(0, Math.log(Math.max(1, (end - rest) / a)) / fast);
        double change = Double.MAX_VALUE;
        double v = 0;
        for (int i = 0; i < MOST_ITERATIONS && Math.abs(change) > SETTLED_S; i++) {
            double growing = a * Math.exp(fast * t);
            double fading = b * Math.exp(slow * t);
            v = fast * growing + slow * fading;
            change = (growing + fading + rest - end) / v;
            t -= change;
        }
        return tip(timeBefore + t, end, offsetM, v, 0, omega);
    }

    /** Velocity over the ground of a granule at (x, y) on the rim that moves with (vx, vy) in the frame of the disc. */
    private VaneOutlet tip(double timeS, double x, double y, double vx, double vy, double omega) {
        double radial = (vx * x + vy * y) / radiusM;
        double tangential = omega * radiusM + (vy * x - vx * y) / radiusM;
        return new VaneOutlet(timeS, radial, tangential, Math.toDegrees(Math.atan2(radial, tangential)));
    }
}
