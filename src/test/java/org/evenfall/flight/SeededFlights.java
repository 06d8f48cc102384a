package org.evenfall.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/** Seeded flights over all the ranges that matter, and the same solved by a general-purpose library (Hipparchus). */
public final class SeededFlights {

    private SeededFlights() {}

    public record Case(Granule granule, Launch launch, double windMPerS) {}

    public static List<Case> of(int count, long seed) {
        Random random = new Random(seed);
        List<Case> cases = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Granule granule = new Granule(0.8 + 5.2 * random.nextDouble(), 900 + 1600 * random.nextDouble());
            Launch launch = new Launch(
                    10 + 60 * random.nextDouble(), -10 + 40 * random.nextDouble(), 0.3 + 1.7 * random.nextDouble());
            cases.add(new Case(granule, launch, -8 + 16 * random.nextDouble()));
        }
        return cases;
    }

    /** Landing distance by DormandPrince853 with event location at a tolerance, m. */
    public static double independent(Case one, double tolerance) {
        Granule granule = one.granule();
        Launch launch = one.launch();
        double wind = one.windMPerS();
        double angle = Math.toRadians(launch.angleDeg());
        OrdinaryDifferentialEquation motion = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return 4;
            }

            @Override
            public double[] computeDerivatives(double t, double[] s) {
                double u = s[2] - wind;
                double speed = Math.hypot(u, s[3]);
                double pull = speed > 0 ? SphereDrag.dragPerM(granule, speed, Air.STANDARD) * speed : 0;
                return new double[] {s[2], s[3], -pull * u, -pull * s[3] - 9.81};
            }
        };
        DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-9, 0.5, tolerance, tolerance);
        integrator.addEventDetector(new ODEEventDetector() {
            @Override
            public AdaptableInterval getMaxCheckInterval() {
                return (state, forward) -> 0.1;
            }

            @Override
            public int getMaxIterationCount() {
                return 200;
            }

            @Override
            public BracketingNthOrderBrentSolver getSolver() {
                return new BracketingNthOrderBrentSolver(0, tolerance / 10, 0, 5);
            }

            @Override
            public ODEEventHandler getHandler() {
                return (state, detector, increasing) -> increasing ? Action.CONTINUE : Action.STOP;
            }

            @Override
            public double g(ODEStateAndDerivative state) {
                return state.getPrimaryState()[1];
            }
        });
        ODEStateAndDerivative end = integrator.integrate(
                motion,
                new ODEState(0, new double[] {
                    0, launch.heightM(), launch.speedMPerS() * Math.cos(angle), launch.speedMPerS() * Math.sin(angle)
                }),
                60);
        return end.getPrimaryState()[0];
    }
}
