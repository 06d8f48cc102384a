package org.evenfall.trays.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.PoissonSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.evenfall.trays.CatchPlan;
import org.evenfall.trays.TrayCatches;
import org.evenfall.trays.Uniformity;
import org.evenfall.trays.UniformityCalculator;

/** A test as it comes out in the field: whole granules of random mass, the scale that weighs them, the runs the plan asks. */
final class TrayTest {

    private TrayTest() {}

    /**
     * The test number {@code repeat} of a setting: the same every time, for every rule.
     *
     * @param noisy false for trays without counting noise
     * @param moreRuns driven beyond the plan
     */
    static Uniformity at(Site site, Map<String, Double> settings, int repeat, boolean noisy, int moreRuns) {
        return UniformityCalculator.of(catches(
                site.job(), site.field(settings).overTrays(site.job()), seed(site, settings, repeat), noisy, moreRuns));
    }

    static long seed(Site site, Map<String, Double> settings, int repeat) {
        return site.seed() * 31 + 1009L * site.first(settings) + 37L * site.second(settings) + 1_000_000_007L * repeat;
    }

    /** What is weighed where the field gives amounts over its mean. */
    static TrayCatches catches(Job job, double[] amounts, long seed, boolean noisy, int moreRuns) {
        UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(seed);
        CatchPlan plan = job.plan();
        int runs = plan.runsNeeded() + moreRuns;
        List<Double> grams = new ArrayList<>();
        for (double amount : amounts) {
            double expectedG = amount * plan.catchPerRunG() * runs;
            grams.add(noisy ? Math.round(counted(random, job, expectedG) / Job.READ_G) * Job.READ_G : expectedG);
        }
        return new TrayCatches(
                job.layout().positionsM(),
                grams,
                job.widthM(),
                job.tramlines().pattern(),
                Job.TRAY_M2,
                runs,
                job.granuleG(),
                Job.READ_G);
    }

    /** Their number is Poisson, their masses log-normal; the mean by number is exp(−9σ²) of that by mass. */
    private static double counted(UniformRandomProvider random, Job job, double expectedG) {
        double spread = 3 * job.sizes().sigma();
        double numberMeanG = job.granuleG() * Math.exp(-spread * spread);
        double logMedian = Math.log(numberMeanG) - spread * spread / 2;
        if (!(expectedG > 0)) {
            return 0;
        }
        int granules = PoissonSampler.of(random, expectedG / numberMeanG).sample();
        ZigguratSampler.NormalizedGaussian gaussian = ZigguratSampler.NormalizedGaussian.of(random);
        double sum = 0;
        for (int i = 0; i < granules; i++) {
            sum += Math.exp(logMedian + spread * gaussian.sample());
        }
        return sum;
    }
}
