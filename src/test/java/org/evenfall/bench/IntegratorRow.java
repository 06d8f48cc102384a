package org.evenfall.bench;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.evenfall.flight.Air;
import org.evenfall.flight.Flight;
import org.evenfall.flight.SeededFlights;

/**
 * Flights by the own integrator against the same by a general one, Hipparchus DormandPrince853, at the loosest tolerance
 * with which it lands all of them within the same 1e-4.
 */
final class IntegratorRow implements Row {

    private static final double WANTED = 1e-4;

    private final List<SeededFlights.Case> cases = SeededFlights.of(500, 500);

    @Override
    public String measured() {
        return "flight: 500 seeded flights by the own integrator";
    }

    @Override
    public String baseline() {
        return "the same by Hipparchus DormandPrince853, as exact";
    }

    @Override
    public Pairs measure() throws Exception {
        double tolerance = loosest();
        return Interleaved.measure(
                () -> sum(IntegratorRow::own), () -> sum(one -> SeededFlights.independent(one, tolerance)));
    }

    private double sum(ToDoubleFunction<SeededFlights.Case> landing) {
        return cases.stream().mapToDouble(landing).sum();
    }

    private static double own(SeededFlights.Case one) {
        return Flight.fly(one.granule(), one.launch(), one.windMPerS(), 9.81, Air.STANDARD)
                .landingM();
    }

    private double loosest() {
        double[] exact = cases.stream()
                .mapToDouble(one -> SeededFlights.independent(one, 1e-12))
                .toArray();
        double tolerance = 1e-3;
        while (worst(exact, tolerance) > WANTED) {
            tolerance /= 2;
            if (tolerance < 1e-12) {
                throw new IllegalStateException("never that exact");
            }
        }
        return tolerance;
    }

    private double worst(double[] exact, double tolerance) {
        double worst = 0;
        for (int i = 0; i < exact.length && worst <= WANTED; i++) {
            worst = Math.max(worst, Math.abs(SeededFlights.independent(cases.get(i), tolerance) / exact[i] - 1));
        }
        return worst;
    }
}
