package org.evenfall.trays.proof;

import static org.evenfall.trays.proof.PatternFamily.between;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.evenfall.flight.Air;
import org.evenfall.flight.Fan;
import org.evenfall.flight.Flight;
import org.evenfall.flight.Granule;
import org.evenfall.flight.LandingPattern;
import org.evenfall.flight.Launch;
import org.evenfall.flight.PassConditions;
import org.evenfall.flight.SpreadPattern;
import org.evenfall.granule.SizeDistribution;

/**
 * Family (a): two discs with a long and a short vane each, granules flown by the landing model of room {@code flight}.
 * Random sizes, density, take-off, directions, scatter, height, side wind, and differences between the discs. The throw is
 * drawn for the width; where the flight does not reach so far, the pattern is stretched.
 */
final class LandingFamily implements PatternFamily {

    private static final double FASTEST_M_PER_S = 50;
    private static final double SLOWEST_M_PER_S = 12;

    @Override
    public SpreadPattern draw(UniformRandomProvider random, double widthM) {
        SizeDistribution sizes = SizeDistribution.exact(between(random, 2.2, 4), between(random, 1.1, 1.35));
        double densityKgPerM3 = between(random, 1250, 1850);
        double heightM = between(random, 0.5, 1.2);
        double takeOffDeg = between(random, 0, 12);
        double throwM = between(random, 0.6, 1.0) * widthM;
        Granule median = new Granule(sizes.d50Mm(), densityKgPerM3);
        double speed = SLOWEST_M_PER_S;
        while (speed < FASTEST_M_PER_S && throwM(median, speed, takeOffDeg, heightM) < throwM) {
            speed += 0.5;
        }
        double stretch = throwM / throwM(median, speed, takeOffDeg, heightM);
        double shortSpeed = speed * between(random, 0.7, 1.0);
        double longDeg = between(random, 25, 60);
        double shortDeg = between(random, 0, 30);
        double longShare = between(random, 0.35, 0.65);
        double scatterDeg = between(random, 15, 32);
        boolean alike = random.nextDouble() < 0.4;
        double rightShare = alike ? 0.5 : between(random, 0.45, 0.55);
        List<Fan> fans = new ArrayList<>();
        for (boolean right : new boolean[] {false, true}) {
            double turn = alike || right ? 0 : between(random, -8, 8);
            double tilt = alike || right ? 0 : between(random, -2, 2);
            double faster = alike || right ? 1 : between(random, 0.93, 1.07);
            double share = right ? rightShare : 1 - rightShare;
            fans.add(new Fan(right, speed * faster, longDeg + turn, scatterDeg, takeOffDeg + tilt, share * longShare));
            fans.add(new Fan(
                    right, shortSpeed, shortDeg + turn, scatterDeg, takeOffDeg + tilt, share * (1 - longShare)));
        }
        double windAcross = random.nextDouble() < 0.3 ? between(random, -2, 2) : 0;
        PassConditions pass = new PassConditions(fans, heightM, between(random, 0.8, 1.3), 0, 0, windAcross);
        return stretched(LandingPattern.of(sizes, densityKgPerM3, pass), stretch);
    }

    private static double throwM(Granule granule, double speedMPerS, double takeOffDeg, double heightM) {
        return Flight.fly(
                        granule, new Launch(speedMPerS, takeOffDeg, heightM), 0, Flight.GRAVITY_M_PER_S2, Air.STANDARD)
                .landingM();
    }

    private static SpreadPattern stretched(SpreadPattern pattern, double factor) {
        return new SpreadPattern(
                pattern.positionsM().stream().mapToDouble(x -> factor * x).toArray(),
                pattern.amounts().stream().mapToDouble(Double::doubleValue).toArray());
    }
}
