package org.evenfall.flight;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/**
 * The motion of a granule on a disc with a vane, solved by a general-purpose library (Hipparchus): first free on the disc
 * where the vane is ahead, then along the vane.
 *
 * @param timeS time to the rim, s
 * @param x place at the rim in the frame of the disc, along the vane, m
 * @param y ahead of the radius the vane is parallel to, m
 * @param radialMPerS speed over the ground outward, m/s
 * @param tangentialMPerS speed over the ground along the tangent, m/s
 * @param groundDirectionDeg direction over the ground, degrees in the sense of turning from the radius on which it fell
 */
record IndependentVane(
        double timeS, double x, double y, double radialMPerS, double tangentialMPerS, double groundDirectionDeg) {

    static IndependentVane of(Vane vane, double rpm, double gravity) {
        double omega = rpm * Math.PI / 30;
        double c = vane.offsetM();
        double mu = vane.friction();
        double startX = Math.sqrt(vane.dropRadiusM() * vane.dropRadiusM() - c * c);
        double[] state = {startX, c, 0, 0};
        double time = 0;
        if (c > 0) {
            // a beginning of motion, so that friction has a direction
            state[2] = 1e-7 * startX;
            state[3] = 1e-7 * c;
            ODEStateAndDerivative met = run(
                    state,
                    s -> new double[] {
                        s[2],
                        s[3],
                        omega * omega * s[0] + 2 * omega * s[3] - mu * gravity * s[2] / Math.hypot(s[2], s[3]),
                        omega * omega * s[1] - 2 * omega * s[2] - mu * gravity * s[3] / Math.hypot(s[2], s[3])
                    },
                    s -> Math.min(s[1] - c + 1e-12, vane.radiusM() - Math.hypot(s[0], s[1])));
            state = met.getPrimaryState();
            time = met.getTime();
        }
        if (Math.hypot(state[0], state[1]) < vane.radiusM() * (1 - 1e-9)) {
            state = new double[] {state[0], c, state[2], 0};
            ODEStateAndDerivative tip = run(
                    state,
                    s -> new double[] {
                        s[2], 0, omega * omega * (s[0] + mu * c) - mu * gravity - 2 * mu * omega * s[2], 0
                    },
                    s -> vane.radiusM() - Math.hypot(s[0], s[1]));
            state = tip.getPrimaryState();
            time += tip.getTime();
        }
        double turned = omega * time;
        double groundX =
                (state[2] - omega * state[1]) * Math.cos(turned) - (state[3] + omega * state[0]) * Math.sin(turned);
        double groundY =
                (state[2] - omega * state[1]) * Math.sin(turned) + (state[3] + omega * state[0]) * Math.cos(turned);
        double placeX = state[0] * Math.cos(turned) - state[1] * Math.sin(turned);
        double placeY = state[0] * Math.sin(turned) + state[1] * Math.cos(turned);
        double radius = Math.hypot(placeX, placeY);
        // unwound: the granule has turned with the disc, up to less than half a turn
        double direction = Math.atan2(groundY, groundX) - turned;
        direction = turned + Math.IEEEremainder(direction, 2 * Math.PI) - Math.atan2(c, startX);
        return new IndependentVane(
                time,
                state[0],
                state[1],
                (groundX * placeX + groundY * placeY) / radius,
                (groundY * placeX - groundX * placeY) / radius,
                Math.toDegrees(direction));
    }

    private interface Slope {
        double[] of(double[] state);
    }

    private interface Until {
        double above0(double[] state);
    }

    private static ODEStateAndDerivative run(double[] start, Slope slope, Until until) {
        DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-12, 1e-3, 1e-11, 1e-11);
        integrator.addEventDetector(new ODEEventDetector() {
            @Override
            public AdaptableInterval getMaxCheckInterval() {
                return (state, forward) -> 1e-3;
            }

            @Override
            public int getMaxIterationCount() {
                return 200;
            }

            @Override
            public BracketingNthOrderBrentSolver getSolver() {
                return new BracketingNthOrderBrentSolver(0, 1e-14, 0, 5);
            }

            @Override
            public ODEEventHandler getHandler() {
                return (state, detector, increasing) -> increasing ? Action.CONTINUE : Action.STOP;
            }

            @Override
            public double g(ODEStateAndDerivative state) {
                return until.above0(state.getPrimaryState());
            }
        });
        return integrator.integrate(
                new OrdinaryDifferentialEquation() {
                    @Override
                    public int getDimension() {
                        return start.length;
                    }

                    @Override
                    public double[] computeDerivatives(double t, double[] s) {
                        return slope.of(s);
                    }
                },
                new ODEState(0, start),
                10);
    }
}
