package org.evenfall.trays.ground;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.evenfall.trays.AdviceInput.DoneTest;

/**
 * Machines of a family that explain the tests: a sample of the posterior of the hidden numbers, by some Metropolis chains
 * from the best of a sample of the prior. Seeded.
 */
final class Believed {

    private static final int PRIOR = 400;
    private static final int CHAINS = 5;
    private static final int STEPS = 200;
    private static final int KEPT_EVERY = 10;
    private static final int BURNT = 60;

    /** Standard deviation of a small change of a hidden number. */
    private static final double SMALL = 0.12;

    /** What a tray may be off apart from its noise, share of the mean: so short a chain finds no better. Assumption. */
    private static final double OFF = 0.02;

    /** A machine that cannot do 8 % at its good setting is not in the family; how sharp that is, points. */
    private static final double LIMIT_PERCENT = 8;

    private static final double SHARP_PERCENT = 0.7;

    /** @param logWeight log of likelihood times prior */
    private record One(double[] hidden, Machine machine, double logWeight) {}

    private final Site site;
    private final Random random;
    private List<One> chains = new ArrayList<>();
    private List<Machine> sample = List.of();

    Believed(Site site) {
        this.site = site;
        this.random = new Random(site.seed() + 2);
    }

    /** Takes all tests so far into account. */
    void learn(List<DoneTest> tests) {
        chains = new ArrayList<>(
                chains.stream().map(one -> one(one.hidden(), tests)).toList());
        for (int i = 0; i < PRIOR; i++) {
            chains.add(one(Draws.numbers(random), tests));
        }
        chains.sort(Comparator.comparingDouble(One::logWeight).reversed());
        chains = new ArrayList<>(chains.subList(0, CHAINS));
        List<Machine> kept = new ArrayList<>();
        for (int i = 0; i < STEPS; i++) {
            for (int c = 0; c < CHAINS; c++) {
                One changed = one(changed(chains.get(c).hidden()), tests);
                if (Math.log(random.nextDouble())
                        < changed.logWeight() - chains.get(c).logWeight()) {
                    chains.set(c, changed);
                }
                if (i >= BURNT && i % KEPT_EVERY == 0) {
                    kept.add(chains.get(c).machine());
                }
            }
        }
        sample = kept;
    }

    /** True field CV of each machine believed in at a setting, %. */
    double[] cvPercent(int first, int second) {
        return sample.stream()
                .mapToDouble(machine -> machine.field(first, second, Fault.NONE).cvPercent())
                .toArray();
    }

    private double[] changed(double[] hidden) {
        double[] changed = hidden.clone();
        int count = 1 + random.nextInt(4);
        for (int k = 0; k < count; k++) {
            int i = random.nextInt(changed.length);
            double moved = random.nextInt(5) == 0 ? random.nextDouble() : changed[i] + SMALL * random.nextGaussian();
            // back from the ends
            moved = Math.abs(moved);
            changed[i] = moved > 1 ? Math.max(0, 2 - moved) : moved;
        }
        return changed;
    }

    private One one(double[] hidden, List<DoneTest> tests) {
        Machine machine = site.family().make(site.job(), hidden);
        double over = Math.max(
                0,
                machine.field(machine.goodFirst(), machine.goodSecond(), Fault.NONE)
                                .cvPercent()
                        - LIMIT_PERCENT);
        double log = -over * over / (2 * SHARP_PERCENT * SHARP_PERCENT);
        for (DoneTest test : tests) {
            log += logLikelihood(machine, test);
        }
        return new One(hidden, machine, log);
    }

    private double logLikelihood(Machine machine, DoneTest test) {
        TrueField field = machine.field(site.first(test.settings()), site.second(test.settings()), Fault.NONE);
        double[] amounts = field.overTrays(site.job());
        double mean = 0;
        for (double amount : amounts) {
            mean += amount / amounts.length;
        }
        double noise = test.evenness().cv().noisePercent() / 100;
        double log = 0;
        for (int i = 0; i < amounts.length; i++) {
            double off = test.evenness().relativePercent().get(i) / 100 - amounts[i] / mean;
            double variance = noise * noise * Math.max(0.25, amounts[i] / mean) + OFF * OFF;
            log -= off * off / (2 * variance) + Math.log(variance) / 2;
        }
        return log;
    }
}
