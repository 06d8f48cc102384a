package org.evenfall.flight;

/**
 * Ballistic flight of one granule with drag, in a uniform wind. A model: a smooth sphere alone in still or evenly moving
 * air; bounce, roll, clouding, and the air that the disc drags along are left out.
 *
 * <p>Method: the flight is solved in the air's own frame, where it stays in one plane, with the Runge-Kutta pair of
 * Dormand and Prince 5(4) (J. Comput. Appl. Math. 6:19-26, 1980); steps end where one piece of the drag correlation
 * meets the next, and the landing is found on a quintic through both ends of the last step. Landing distance is within
 * 6e-6 of the exact solution of the same equations, relative.
 */
public final class Flight {

    /** Standard gravity, m/s². */
    public static final double GRAVITY_M_PER_S2 = 9.80665;

    private Flight() {}

    /** Drag over the square of the speed, 1/m, at a speed through the air, m/s. */
    @FunctionalInterface
    public interface DragLaw {
        double perM(double speedMPerS);
    }

    /** Flight of a sphere along the wind; the wind is positive with the throw. */
    public static Landing fly(Granule granule, Launch launch, double windMPerS, double gravityMPerS2, Air air) {
        return fly(new SphereLaw(granule, air), launch, windMPerS, gravityMPerS2);
    }

    /**
     * Flight of a sphere in wind from any side.
     *
     * @param windAlongMPerS wind with the throw, m/s
     * @param windAcrossMPerS wind to the right of the throw, m/s
     */
    public static Landing fly(
            Granule granule,
            Launch launch,
            double windAlongMPerS,
            double windAcrossMPerS,
            double gravityMPerS2,
            Air air) {
        return fly(new SphereLaw(granule, air), launch, windAlongMPerS, windAcrossMPerS, gravityMPerS2);
    }

    /** Flight with a constant drag over the square of the speed, 1/m, at least 0. */
    public static Landing flyConstantDrag(double dragPerM, Launch launch, double windMPerS, double gravityMPerS2) {
        if (!(dragPerM >= 0)) {
            throw new IllegalArgumentException("drag must be at least 0 per m: " + dragPerM);
        }
        return fly(speed -> dragPerM, launch, windMPerS, gravityMPerS2);
    }

    /**
     * Flight under any drag law.
     *
     * @param windMPerS uniform wind along the throw, m/s, positive with it
     * @param gravityMPerS2 above 0
     */
    public static Landing fly(DragLaw drag, Launch launch, double windMPerS, double gravityMPerS2) {
        return fly(drag, launch, windMPerS, 0, gravityMPerS2);
    }

    /**
     * Flight under any drag law in wind from any side. In the moving air the flight stays in the plane of its start; the
     * air carries that plane with it.
     */
    public static Landing fly(
            DragLaw drag, Launch launch, double windAlongMPerS, double windAcrossMPerS, double gravityMPerS2) {
        if (!(gravityMPerS2 > 0)) {
            throw new IllegalArgumentException("gravity must be above 0 m/s²: " + gravityMPerS2);
        }
        double angle = Math.toRadians(launch.angleDeg());
        double along = launch.speedMPerS() * Math.cos(angle) - windAlongMPerS;
        double level = windAcrossMPerS == 0 ? along : Math.hypot(along, windAcrossMPerS);
        double shareAlong = level == 0 ? 1 : along / level;
        double shareAcross = level == 0 ? 0 : (windAcrossMPerS == 0 ? 0 : -windAcrossMPerS / level);
        DormandPrince flight = new DormandPrince(drag, gravityMPerS2);
        flight.fall(launch.heightM(), level, launch.speedMPerS() * Math.sin(angle));
        double timeS = flight.timeS();
        double groundAlong = flight.u() * shareAlong + windAlongMPerS;
        double groundAcross = flight.u() * shareAcross + windAcrossMPerS;
        double forward = windAcrossMPerS == 0 ? groundAlong : Math.hypot(groundAlong, groundAcross);
        return new Landing(
                flight.xM() * shareAlong + windAlongMPerS * timeS,
                flight.xM() * shareAcross + windAcrossMPerS * timeS,
                timeS,
                Math.sqrt(forward * forward + flight.w() * flight.w()),
                Math.toDegrees(Math.atan2(-flight.w(), forward)));
    }
}
