package org.evenfall.trays;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.rng.sampling.distribution.PoissonSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.granule.SizeDistribution;
import org.evenfall.machine.Lever;

/** A machine that exists only here and whose levers answer in a way hidden from the tester. */
interface MachineUnderTest {

    double TRAY_M2 = 0.25;

    /** The scale reads tenths of a gram. */
    double READ_G = 0.1;

    double widthM();

    SizeDistribution sizes();

    double densityKgPerM3();

    double rateKgPerHa();

    List<Lever> levers();

    /** Its settings before the first test, wrong by some steps. */
    Map<String, Double> start();

    /** Its good setting. */
    Map<String, Double> middle();

    /** What is in the seven trays without counting noise, any unit. */
    List<Double> truth(Map<String, Double> settings);

    /** What is known before of how it may answer, from product and disc. */
    List<ShapeCurve> curves();

    default TrayLayout layout() {
        return TrayLayouts.of(widthM(), 7, TRAY_M2, DrivingPattern.BACK_AND_FORTH);
    }

    /** CV of the seven trays without noise, %. */
    default double trueCv(Map<String, Double> settings) {
        return UniformityCalculator.cvPercent(truth(settings));
    }

    /** A test as it comes out in the field: whole granules, the scale, the runs the plan asks. */
    default TrayCatches test(Map<String, Double> settings, long seed) {
        var random = RandomSource.XO_RO_SHI_RO_128_PP.create(seed);
        double granuleG = CatchPlans.meanGranuleG(sizes(), densityKgPerM3());
        CatchPlan plan = CatchPlans.of(rateKgPerHa(), TRAY_M2, granuleG, READ_G);
        List<Double> truth = truth(settings);
        double mean = truth.stream().mapToDouble(v -> v).average().orElseThrow();
        List<Double> grams = new ArrayList<>();
        for (double one : truth) {
            double expected = plan.runsNeeded() * plan.catchPerRunG() * one / mean;
            double caught = expected <= 0
                    ? 0
                    : granuleG * PoissonSampler.of(random, expected / granuleG).sample();
            grams.add(Math.round(caught / READ_G) * READ_G);
        }
        return new TrayCatches(
                layout().positionsM(),
                grams,
                widthM(),
                DrivingPattern.BACK_AND_FORTH,
                TRAY_M2,
                plan.runsNeeded(),
                granuleG,
                READ_G);
    }
}
