package org.evenfall.flight;

/**
 * A flight in the plane of its start, in the frame of the air: level speed u, upward speed w, drag K v² against the motion.
 * Classical fourth-order Runge-Kutta steps in s with ds = (1/T + {@value #BASE_RATE_PER_S} per s) dt,
 * where T = 1/(K v) is the momentum relaxation time: a strong drag shortens the steps in time, so no step control is
 * needed. Landing distances are within about 1e-4 of the exact solution, relative.
 */
final class Trajectory {

    /** Step of a single flight, in units of s. */
    static final double FINE_STEP = 0.1;

    /** Step of the many flights of a pattern: their distances are within 1e-4 of those of fine steps. */
    static final double PATTERN_STEP = 0.3;

    // the last step is cut until the cut is below this, in units of s
    private static final double LANDED = 1e-7;
    private static final int MOST_STEPS = 10_000_000;

    /** Limits a step in time where the drag is weak, to the step of s. */
    private static final double BASE_RATE_PER_S = 1;

    private static final double[] WEIGHTS = {1.0 / 6, 1.0 / 3, 1.0 / 3, 1.0 / 6};
    private static final double[] REACHES = {0.5, 0.5, 1, 0};

    /** Reciprocal of the momentum relaxation time, K v, 1/s, over the square of the speed through the air. */
    @FunctionalInterface
    interface RelaxationRate {
        double perS(double speedSquare);
    }

    /** Place, m, velocity, m/s, time, s, and the time of one unit of s at the end of the step that led here, s. */
    record State(double x, double y, double u, double w, double timeS, double unitS) {}

    private Trajectory() {}

    /** The rate of a sphere by {@link SphereDrag}, tabled. */
    static RelaxationRate sphere(Granule granule, Air air) {
        double reynoldsPerSpeed = SphereDrag.reynoldsPerSpeed(granule, air);
        double scale = SphereDrag.perCoefficient(granule, air) / reynoldsPerSpeed;
        double square = reynoldsPerSpeed * reynoldsPerSpeed;
        return speedSquare -> scale * DragTable.coefficientTimesReynolds(square * speedSquare);
    }

    /** From a height over the landing plane to the plane, in steps of s; the state at the landing. */
    static State integrateToGround(
            RelaxationRate rate, double gravity, double heightM, double u, double w, double stepOfS) {
        State state = new State(0, heightM, u, w, 0, 0);
        if (heightM == 0 && w <= 0) {
            return state;
        }
        for (int i = 0; i < MOST_STEPS; i++) {
            State next = step(rate, gravity, state, stepOfS);
            if (next.y <= 0 && next.w < 0) {
                return land(rate, gravity, state, next, stepOfS);
            }
            state = next;
        }
        throw new IllegalArgumentException("the flight does not land");
    }

    /** Cuts the last step by Newton's method; the height is concave, so it comes from below the ground without fail. */
    private static State land(RelaxationRate rate, double gravity, State before, State below, double stepOfS) {
        State landed = below;
        double step = stepOfS;
        double cut = stepOfS;
        while (Math.abs(cut) > LANDED) {
            cut = landed.y / (landed.w * landed.unitS);
            step -= cut;
            landed = step(rate, gravity, before, step);
        }
        return landed;
    }

    private static State step(RelaxationRate rate, double gravity, State s, double h) {
        double u = s.u;
        double w = s.w;
        double unit = 0;
        double x = 0;
        double y = 0;
        double time = 0;
        double gainU = 0;
        double gainW = 0;
        for (int stage = 0; stage < 4; stage++) {
            unit = 1 / (BASE_RATE_PER_S + rate.perS(u * u + w * w));
            double drag = 1 - BASE_RATE_PER_S * unit;
            double slopeU = -drag * u;
            double slopeW = -drag * w - gravity * unit;
            double weight = h * WEIGHTS[stage];
            time += weight * unit;
            x += weight * unit * u;
            y += weight * unit * w;
            gainU += weight * slopeU;
            gainW += weight * slopeW;
            u = s.u + h * REACHES[stage] * slopeU;
            w = s.w + h * REACHES[stage] * slopeW;
        }
        return new State(s.x + x, s.y + y, s.u + gainU, s.w + gainW, s.timeS + time, unit);
    }
}
