package org.evenfall.flight;

import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * Ballistic flight of one granule with drag, in a uniform wind. A model: a smooth sphere alone in still or evenly moving
 * air; bounce, roll, clouding, and the air that the disc drags along are left out.
 *
 * <p>Method: the flight is solved in the frame of the air, where it stays in one plane, by fixed steps of the classical
 * fourth-order Runge-Kutta method; step variable and accuracy: {@link Trajectory}.
 */
public final class Flight {

    /** Standard gravity, m/s². Source: BIPM, The International System of Units (SI), resolution of the 3rd CGPM 1901. */
    public static final double GRAVITY_M_PER_S2 = 9.80665;

    // terminal velocities are sought between these, m/s
    private static final double SLOWEST_FALL = 1e-6;
    private static final double FASTEST_FALL = 500;

    private Flight() {}

    /** Drag over the square of the speed, 1/m, at a speed through the air, m/s, above 0. */
    @FunctionalInterface
    public interface DragLaw {

        /** The value at a speed. */
        double perM(double speedMPerS);
    }

    /**
     * Flight of a sphere along the wind.
     *
     * @param windMPerS uniform wind along the throw, m/s, positive with it
     * @param gravityMPerS2 above 0
     * @throws IllegalArgumentException when gravity is not above 0 or the flight does not land
     */
    public static Landing fly(Granule granule, Launch launch, double windMPerS, double gravityMPerS2, Air air) {
        return fly(granule, launch, windMPerS, 0, gravityMPerS2, air);
    }

    /**
     * Flight of a sphere in wind from any side.
     *
     * @param windAlongMPerS wind with the throw, m/s
     * @param windAcrossMPerS wind to the right of the throw, m/s
     * @param gravityMPerS2 above 0
     * @throws IllegalArgumentException when gravity is not above 0 or the flight does not land
     */
    public static Landing fly(
            Granule granule,
            Launch launch,
            double windAlongMPerS,
            double windAcrossMPerS,
            double gravityMPerS2,
            Air air) {
        return land(Trajectory.sphere(granule, air), launch, windAlongMPerS, windAcrossMPerS, gravityMPerS2);
    }

    /**
     * Flight under any drag law in wind from any side. A drag of 0 is a flight in vacuum.
     *
     * @param windAlongMPerS wind with the throw, m/s
     * @param windAcrossMPerS wind to the right of the throw, m/s
     * @param gravityMPerS2 above 0
     * @throws IllegalArgumentException when gravity is not above 0 or the flight does not land
     */
    public static Landing fly(
            DragLaw drag, Launch launch, double windAlongMPerS, double windAcrossMPerS, double gravityMPerS2) {
        Trajectory.RelaxationRate rate = speedSquare -> {
            double speed = Math.sqrt(speedSquare);
            return speed > 0 ? drag.perM(speed) * speed : 0;
        };
        return land(rate, launch, windAlongMPerS, windAcrossMPerS, gravityMPerS2);
    }

    /** In the moving air the flight stays in the plane of its start; the air carries that plane along. */
    private static Landing land(
            Trajectory.RelaxationRate rate, Launch launch, double windAlong, double windAcross, double gravity) {
        Ranges.positive("gravityMPerS2", gravity);
        double angle = Math.toRadians(launch.angleDeg());
        double along = launch.speedMPerS() * Math.cos(angle) - windAlong;
        double level = Math.hypot(along, windAcross);
        double cosine = level == 0 ? 1 : along / level;
        double sine = level == 0 ? 0 : -windAcross / level;
        Trajectory.State end = Trajectory.integrateToGround(
                rate, gravity, launch.heightM(), level, launch.speedMPerS() * Math.sin(angle), Trajectory.FINE_STEP);
        double groundAlong = end.u() * cosine + windAlong;
        double groundAcross = end.u() * sine + windAcross;
        // without wind across, a granule that comes down against the throw has a negative speed
        double forward = windAcross == 0 ? groundAlong : Math.hypot(groundAlong, groundAcross);
        return new Landing(
                end.x() * cosine + windAlong * end.timeS(),
                end.x() * sine + windAcross * end.timeS(),
                end.timeS(),
                Math.hypot(forward, end.w()),
                Math.toDegrees(Math.atan2(-end.w(), forward)));
    }

    /**
     * Speed of a steady fall, m/s: the root of K v² = g.
     *
     * @param gravityMPerS2 above 0
     * @throws org.hipparchus.exception.MathIllegalArgumentException when it is not between 1e-6 and 500 m/s
     */
    public static double terminalVelocityMPerS(Granule granule, double gravityMPerS2, Air air) {
        return new BrentSolver(1e-9)
                .solve(
                        200,
                        v -> SphereDrag.dragPerM(granule, v, air) * v * v - gravityMPerS2,
                        SLOWEST_FALL,
                        FASTEST_FALL);
    }
}
