package org.evenfall.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.evenfall.granule.SizeDistribution;
import org.junit.jupiter.api.Test;

class LandingPatternTest {

    private static final SizeDistribution UREA = new SizeDistribution(3.2, 1.2, 0.03, 0.05, false);

    private static PassConditions pass(List<Fan> fans, double forward, double along, double across) {
        return new PassConditions(fans, 0.75, TwinDisc.DISC_SPACING_M, forward, along, across);
    }

    private static PassConditions seeded(Random random) {
        TwinDisc machine = new TwinDisc(
                0.3 + 0.15 * random.nextDouble(),
                0.28,
                600 + 400 * random.nextDouble(),
                -20 + 40 * random.nextDouble(),
                -0.04 + 0.08 * random.nextDouble(),
                -0.04 + 0.08 * random.nextDouble(),
                -5 + 10 * random.nextDouble(),
                0.3 + 0.4 * random.nextDouble(),
                0.2 * random.nextDouble());
        return new PassConditions(
                machine.fans(),
                0.4 + random.nextDouble(),
                1.4 * random.nextDouble(),
                5 * random.nextDouble(),
                -6 + 12 * random.nextDouble(),
                -6 + 12 * random.nextDouble());
    }

    @Test
    void allMassLands() {
        Random random = new Random(300);
        for (int i = 0; i < 300; i++) {
            SizeDistribution sizes =
                    new SizeDistribution(1 + 4 * random.nextDouble(), 1 + 0.6 * random.nextDouble(), 0.03, 0.05, false);
            SpreadPattern pattern = LandingPattern.of(sizes, 900 + 1200 * random.nextDouble(), seeded(random));
            assertThat(pattern.area()).isCloseTo(1, within(1e-9));
        }
    }

    @Test
    void inCalmAirBothSidesAreAlike() {
        SpreadPattern pattern =
                LandingPattern.of(UREA, 1340, pass(TwinDisc.usual(0.4, 850).fans(), 0, 0, 0));
        for (double x = 0.1; x < 25; x += 0.37) {
            assertThat(pattern.at(x)).isCloseTo(pattern.at(-x), within(1e-12));
        }
    }

    @Test
    void theQuickCalmPatternIsTheSame() {
        Fan left = new Fan(false, 41, 33, 22, 6, 0.5);
        Fan right = new Fan(true, 41, 33, 22, 6, 0.5);
        SpreadPattern whole = LandingPattern.of(UREA, 1340, pass(List.of(left, right), 0, 0, 0));
        SpreadPattern quick = new CalmPatterns(UREA, 1340, 41, 6, 0.75).of(33, 22, TwinDisc.DISC_SPACING_M);
        assertThat(quick.amounts()).hasSameSizeAs(whole.amounts());
        assertThat(quick.area()).isCloseTo(1, within(1e-9));
        for (double width = 12; width <= 36; width += 1.5) {
            assertThat(new Overlap(quick, DrivingPattern.ROUND_AND_ROUND).cvPercent(width))
                    .as("CV at " + width + " m")
                    .isCloseTo(new Overlap(whole, DrivingPattern.ROUND_AND_ROUND).cvPercent(width), within(0.5));
        }
    }

    /** Granules drawn one by one and flown one by one come down where the quadrature says. */
    @Test
    void granulesDrawnOneByOneLandAlike() {
        Random random = new Random(4711);
        for (int machine = 0; machine < 6; machine++) {
            PassConditions pass = seeded(random);
            SpreadPattern pattern = LandingPattern.of(UREA, 1340, pass);
            int draws = 40_000;
            double[] landed = new double[draws];
            for (int i = 0; i < draws; i++) {
                landed[i] = draw(pass, random);
            }
            for (double x = -25; x <= 25; x += 2.5) {
                double place = x;
                double share =
                        java.util.Arrays.stream(landed).filter(y -> y < place).count() / (double) draws;
                assertThat(pattern.area(pattern.leftmostM(), x))
                        .as("share left of " + x)
                        .isCloseTo(share, within(0.012));
            }
        }
    }

    private static double draw(PassConditions pass, Random random) {
        double pick = random.nextDouble();
        Fan fan = pass.fans().get(0);
        for (Fan one : pass.fans()) {
            fan = one;
            pick -= one.share();
            if (pick < 0) {
                break;
            }
        }
        double normal = random.nextGaussian();
        while (Math.abs(normal) > Fan.CUT) {
            normal = random.nextGaussian();
        }
        double angle = Math.toRadians(fan.directionDeg() + fan.spreadDeg() * normal);
        double up = Math.toRadians(fan.takeOffDeg());
        double level = fan.outletSpeedMPerS() * Math.cos(up);
        double along = -level * Math.cos(angle) + pass.forwardMPerS() - pass.windAlongMPerS();
        double side = (fan.right() ? 1 : -1) * level * Math.sin(angle) - pass.windAcrossMPerS();
        double speed = Math.hypot(along, side);
        double rise = fan.outletSpeedMPerS() * Math.sin(up);
        Granule granule = new Granule(3.2 * Math.exp(UREA.sigma() * random.nextGaussian()), 1340);
        Landing landing = Flight.fly(
                granule,
                new Launch(Math.hypot(speed, rise), Math.toDegrees(Math.atan2(rise, speed)), pass.heightM()),
                0,
                Flight.GRAVITY_M_PER_S2,
                Air.STANDARD);
        return (fan.right() ? 1 : -1) * pass.discSpacingM() / 2
                + landing.landingM() * side / speed
                + pass.windAcrossMPerS() * landing.timeS();
    }

    @Test
    void windOutletsAndWearPullToTheirSide() {
        List<Fan> even = TwinDisc.usual(0.4, 850).fans();
        assertThat(balance(pass(even, 3, 0, 3))).isGreaterThan(0.02);
        assertThat(balance(pass(even, 3, 0, -3))).isLessThan(-0.02);
        assertThat(balance(pass(new TwinDisc(0.4, 0.32, 850, 0, 0, 0, 0, 0.55, 0).fans(), 3, 0, 0)))
                // a tenth more of the stream, less what each disc throws past the middle
                .isBetween(0.03, 0.1);
        // a shorter long vane on the left throws less far there
        SpreadPattern worn = LandingPattern.of(
                UREA, 1340, pass(new TwinDisc(0.4, 0.32, 850, 0, 0, 0, 0, 0.5, 0.15).fans(), 3, 0, 0));
        assertThat(worn.area(-40, -15)).isLessThan(worn.area(15, 40));
        // the raised side throws further
        SpreadPattern tilted =
                LandingPattern.of(UREA, 1340, pass(new TwinDisc(0.4, 0.32, 850, 0, 0, 0, 4, 0.5, 0).fans(), 3, 0, 0));
        assertThat(tilted.area(15, 40)).isGreaterThan(tilted.area(-40, -15));
    }

    /** Right less left, share of all. */
    private static double balance(PassConditions pass) {
        SpreadPattern pattern = LandingPattern.of(UREA, 1340, pass);
        return pattern.area(0, 60) - pattern.area(-60, 0);
    }

    @Test
    void lighterOrSmallerKeepsTheMiddleHeavier() {
        List<Fan> fans = TwinDisc.usual(0.4, 850).fans();
        double dense = LandingPattern.of(UREA, 1800, pass(fans, 3, 0, 0)).area(-8, 8);
        double light = LandingPattern.of(UREA, 1300, pass(fans, 3, 0, 0)).area(-8, 8);
        double small = LandingPattern.of(new SizeDistribution(2.6, 1.2, 0.03, 0.05, false), 1300, pass(fans, 3, 0, 0))
                .area(-8, 8);
        assertThat(light).isGreaterThan(dense);
        assertThat(small).isGreaterThan(light);
    }
}
