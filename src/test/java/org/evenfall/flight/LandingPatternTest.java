package org.evenfall.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.evenfall.granule.SizeDistribution;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class LandingPatternTest {

    private static final SizeDistribution UREA = new SizeDistribution(3.2, 1.2, 0.03, 0.05, false);

    private static PassConditions pass(List<Fan> fans, double forward, double along, double across) {
        return new PassConditions(fans, 0.75, TwinDisc.DISC_SPACING_M, forward, along, across);
    }

    private static PassConditions seeded(Random random) {
        TwinDisc machine = new TwinDisc(
                new VaneSetting(0.3 + 0.15 * random.nextDouble(), -0.04 + 0.08 * random.nextDouble()),
                new VaneSetting(0.28, -0.04 + 0.08 * random.nextDouble()),
                600 + 400 * random.nextDouble(),
                -20 + 40 * random.nextDouble(),
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
        SpreadPattern quick =
                new CalmPatterns(new ThrowConditions(UREA, 1340, 41, 0.75), 6).of(33, 22, TwinDisc.DISC_SPACING_M);
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
    @Tag("slow")
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

    /** Every size and direction on a fine grid, flown one by one: the second moment and the shares are the same. */
    @Test
    void theQuadratureIsTheSumOfManyFlights() {
        Random random = new Random(99);
        for (int machine = 0; machine < 3; machine++) {
            PassConditions pass = seeded(random);
            SpreadPattern pattern = LandingPattern.of(UREA, 1340, pass);
            double[] places = {-16, -11, -7, -3, 0, 2, 5, 9, 13};
            double[] shares = new double[places.length];
            NormalDistribution normal = NormalDistribution.of(0, 1);
            for (Fan fan : pass.fans()) {
                for (int i = 0; i < 30; i++) {
                    double size = normal.inverseCumulativeProbability((i + 0.5) / 30);
                    for (int j = 0; j < 60; j++) {
                        double direction = normal.inverseCumulativeProbability((j + 0.5) / 60);
                        double landed = landed(pass, fan, size, direction);
                        for (int k = 0; k < places.length; k++) {
                            shares[k] += landed < places[k] ? fan.share() / (30 * 60) : 0;
                        }
                    }
                }
            }
            for (int k = 0; k < places.length; k++) {
                assertThat(pattern.area(pattern.leftmostM(), places[k]))
                        .as("share left of " + places[k])
                        .isCloseTo(shares[k], within(0.006));
            }
        }
    }

    /** One size, hardly any scatter: all comes down where one granule does. */
    @Test
    void aNarrowFanOfOneSizeComesDownInOnePlace() {
        SizeDistribution one = new SizeDistribution(3.2, 1, 0.03, 0.05, false);
        for (boolean right : new boolean[] {false, true}) {
            Fan fan = new Fan(right, 35, 50, 1e-3, 7, 1);
            PassConditions pass = new PassConditions(List.of(fan), 0.9, 1.4, 4, -1, 2.5);
            SpreadPattern pattern = LandingPattern.of(one, 1340, pass);
            double mean = 0;
            double square = 0;
            for (int i = 0; i < pattern.size(); i++) {
                double share = pattern.amount(i) * 0.25;
                mean += share * pattern.positionM(i);
                square += share * pattern.positionM(i) * pattern.positionM(i);
            }
            double place = landed(pass, fan, 0, 0, one);
            // the whole cell counts at its middle
            assertThat(mean).isCloseTo(place, within(0.126));
            assertThat(Math.sqrt(Math.max(0, square - mean * mean))).isLessThan(0.13);
            assertThat(pattern.positionM(1) - pattern.positionM(0)).isCloseTo(0.25, within(1e-12));
        }
    }

    private static double landed(PassConditions pass, Fan fan, double size, double direction) {
        return landed(pass, fan, size, direction, UREA);
    }

    private static double landed(PassConditions pass, Fan fan, double size, double direction, SizeDistribution sizes) {
        double angle = Math.toRadians(fan.directionDeg() + fan.spreadDeg() * direction);
        double up = Math.toRadians(fan.takeOffDeg());
        double level = fan.outletSpeedMPerS() * Math.cos(up);
        double along = -level * Math.cos(angle) + pass.forwardMPerS();
        double side = (fan.right() ? 1 : -1) * level * Math.sin(angle);
        // over the ground the throw goes along its own direction, the wind comes from any side of it
        double speed = Math.hypot(along, side);
        double rise = fan.outletSpeedMPerS() * Math.sin(up);
        double cosine = along / speed;
        double sine = side / speed;
        Landing landing = Flight.fly(
                new Granule(sizes.d50Mm() * Math.exp(sizes.sigma() * size), 1340),
                new Launch(Math.hypot(speed, rise), Math.toDegrees(Math.atan2(rise, speed)), pass.heightM()),
                pass.windAlongMPerS() * cosine + pass.windAcrossMPerS() * sine,
                -pass.windAlongMPerS() * sine + pass.windAcrossMPerS() * cosine,
                Flight.GRAVITY_M_PER_S2,
                Air.STANDARD);
        return (fan.right() ? 1 : -1) * pass.discSpacingM() / 2
                + landing.landingM() * sine
                + landing.acrossM() * cosine;
    }

    private static PassConditions of(double tilt, double rightShare, double worn) {
        TwinDisc disc = new TwinDisc(new VaneSetting(0.4, 0), new VaneSetting(0.32, 0), 850, 0, tilt, rightShare, worn);
        return pass(disc.fans(), 3, 0, 0);
    }

    @Test
    void windPullsToItsSide() {
        List<Fan> even = TwinDisc.usual(0.4, 850).fans();
        double toTheRight = balance(pass(even, 3, 0, 3));
        assertThat(toTheRight).isGreaterThan(0.02);
        assertThat(balance(pass(even, 3, 0, -3))).isCloseTo(-toTheRight, within(1e-9));
        assertThat(balance(pass(even, 3, 0, 0))).isCloseTo(0, within(1e-9));
    }

    @Test
    void unequalOutletsPullToTheStrongerSide() {
        // a tenth more of the stream, less what each disc throws past the middle
        assertThat(balance(of(0, 0.55, 0))).isBetween(0.03, 0.1);
        assertThat(balance(of(0, 0.45, 0))).isCloseTo(-balance(of(0, 0.55, 0)), within(1e-9));
    }

    /** A shorter long vane on the left throws less far there. */
    @Test
    void wearOnTheLeftTakesFromTheLeftEdge() {
        SpreadPattern worn = LandingPattern.of(UREA, 1340, of(0, 0.5, 0.15));
        SpreadPattern fresh = LandingPattern.of(UREA, 1340, of(0, 0.5, 0));
        assertThat(worn.area(-40, -13)).isLessThan(0.8 * worn.area(13, 40));
        assertThat(worn.area(13, 40)).isCloseTo(fresh.area(13, 40), within(1e-3));
    }

    /** The raised side throws further: with the right side up there is more at the right edge. */
    @Test
    void theRaisedSideThrowsFurther() {
        SpreadPattern tilted = LandingPattern.of(UREA, 1340, of(4, 0.5, 0));
        assertThat(tilted.area(13, 40)).isGreaterThan(1.5 * tilted.area(-40, -13));
        SpreadPattern other = LandingPattern.of(UREA, 1340, of(-4, 0.5, 0));
        assertThat(other.at(-10)).isCloseTo(tilted.at(10), within(1e-9));
    }

    /** A drop point further outward throws more to the sides and less in the middle. */
    @Test
    void aDropPointFurtherOutwardEmptiesTheMiddle() {
        double[] middles = new double[3];
        for (int i = 0; i < 3; i++) {
            TwinDisc disc =
                    new TwinDisc(new VaneSetting(0.4, 0), new VaneSetting(0.32, 0), 850, -10 + 10 * i, 0, 0.5, 0);
            middles[i] =
                    LandingPattern.of(UREA, 1340, pass(disc.fans(), 3, 0, 0)).area(-6, 6);
        }
        assertThat(middles[1]).isLessThan(middles[0] - 0.03);
        assertThat(middles[2]).isLessThan(middles[1] - 0.03);
    }

    @Test
    void withTheAirItIsCalm() {
        List<Fan> fans = TwinDisc.usual(0.4, 850).fans();
        assertThat(pass(fans, 3, 3, 0).calm()).isTrue();
        assertThat(pass(fans, 3, 3.1, 0).calm()).isFalse();
        assertThat(pass(fans, 3, 3, 0.1).calm()).isFalse();
        assertThat(pass(fans, 3, 5, 0).airAlongMPerS()).isEqualTo(2);
        // driving with the wind is the same as no motion in calm air
        SpreadPattern with = LandingPattern.of(UREA, 1340, pass(fans, 3, 3, 0));
        SpreadPattern calm = LandingPattern.of(UREA, 1340, pass(fans, 0, 0, 0));
        assertThat(with.amounts()).isEqualTo(calm.amounts());
    }

    /** In calm air fans that differ in anything are flown themselves, not mirrored: hardly any wind gives the same. */
    @Test
    void onlyFansAlikeAreMirrored() {
        Fan base = new Fan(false, 35, 30, 20, 5, 0.5);
        List<Fan> others = List.of(
                new Fan(true, 35, 30, 20, 5, 0.5),
                new Fan(false, 35, 30, 20, 5, 0.5),
                new Fan(true, 30, 30, 20, 5, 0.5),
                new Fan(true, 35, 45, 20, 5, 0.5),
                new Fan(true, 35, 30, 10, 5, 0.5),
                new Fan(true, 35, 30, 20, 10, 0.5));
        for (Fan other : others) {
            SpreadPattern calm = LandingPattern.of(UREA, 1340, pass(List.of(base, other), 0, 0, 0));
            SpreadPattern nearly = LandingPattern.of(UREA, 1340, pass(List.of(base, other), 1e-6, 0, 0));
            for (double x = -20; x <= 20; x += 0.5) {
                assertThat(calm.at(x)).as(other + " at " + x).isCloseTo(nearly.at(x), within(1e-5));
            }
        }
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
