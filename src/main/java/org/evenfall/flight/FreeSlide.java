package org.evenfall.flight;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * A granule that slides on a flat turning disc without touching the vane. In the frame of the disc, x along the vane, y
 * ahead of the radius to which the vane is parallel: r″ = ω² r − 2 ω × r′ − μ g r′/|r′|. Fixed steps of the classical
 * fourth-order Runge-Kutta method; the last one ends where the granule meets the vane or the rim.
 */
final class FreeSlide {

    /** Time, s, place, m, and velocity, m/s, in the frame of the disc. */
    record State(double timeS, double x, double y, double vx, double vy) {

        private State plus(double h, State slope) {
            return new State(
                    timeS + h * slope.timeS, x + h * slope.x, y + h * slope.y, vx + h * slope.vx, vy + h * slope.vy);
        }

        private double radius() {
            return Math.hypot(x, y);
        }
    }

    private static final int STEPS_PER_TURN = 500;

    /** A granule leaves the disc or meets the vane within a turn; more turns are no slide. */
    private static final int MOST_TURNS = 10;

    private final double radiusM;
    private final double vaneY;
    private final double brake;
    private final double omega;

    FreeSlide(double radiusM, double vaneY, double friction, double omega, double gravity) {
        this.radiusM = radiusM;
        this.vaneY = vaneY;
        this.brake = friction * gravity;
        this.omega = omega;
    }

    /**
     * The end of a slide from rest at the vane; the start itself where the granule meets the vane again within a step.
     *
     * @throws IllegalArgumentException when the granule neither meets the vane nor leaves the disc
     */
    State from(double startX) {
        double h = 2 * Math.PI / omega / STEPS_PER_TURN;
        State start = new State(0, startX, vaneY, 0, 0);
        State state = step(start, h);
        if (state.y <= vaneY) {
            return start;
        }
        for (int i = 0; i < MOST_TURNS * STEPS_PER_TURN; i++) {
            State before = state;
            state = step(before, h);
            if (hasLeftDisc(state)) {
                return cut(before, h, at -> step(before, at).radius() - radiusM);
            }
            if (state.y <= vaneY) {
                return cut(before, h, at -> vaneY - step(before, at).y);
            }
        }
        throw new IllegalArgumentException("the granule stays on the disc");
    }

    /** Whether a slide has ended on the rim, not at the vane. */
    boolean hasLeftDisc(State state) {
        return state.radius() >= radiusM * (1 - 1e-9);
    }

    /** The state within a step at which a distance passed becomes 0. */
    private State cut(State before, double h, UnivariateFunction passed) {
        return step(before, new BrentSolver(1e-15).solve(100, passed, 0, h));
    }

    private State step(State s, double h) {
        State k1 = slope(s);
        State k2 = slope(s.plus(h / 2, k1));
        State k3 = slope(s.plus(h / 2, k2));
        State k4 = slope(s.plus(h, k3));
        return s.plus(h / 6, k1).plus(h / 3, k2).plus(h / 3, k3).plus(h / 6, k4);
    }

    private State slope(State s) {
        double speed = Math.hypot(s.vx, s.vy);
        double perSpeed = speed > 0 ? brake / speed : 0;
        return new State(
                1,
                s.vx,
                s.vy,
                omega * omega * s.x + 2 * omega * s.vy - perSpeed * s.vx,
                omega * omega * s.y - 2 * omega * s.vx - perSpeed * s.vy);
    }
}
