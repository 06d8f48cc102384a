package org.evenfall.trays.ground;

import java.util.List;
import java.util.Map;
import org.evenfall.trays.AdviceInput.DoneTest;

/**
 * What could be done at best: knows the physics of the family and the priors of its hidden numbers, sees the same noisy
 * trays and moves as the advice may, one lever by at most three steps. Takes the move with the least expected field CV over
 * machines that explain the tests ({@link Believed}).
 */
final class BoundRule implements Rule {

    private static final int MOST_STEPS = 3;
    private static final double GOOD_PERCENT = 10;

    /** A move must be expected to take off more than this, points. */
    private static final double WORTH_PERCENT = 0.3;

    /** Keeps where so many of the machines believed in are good. */
    private static final double SURE = 0.9;

    private final Site site;
    private final Believed believed;

    BoundRule(Site site) {
        this.site = site;
        this.believed = new Believed(site);
    }

    @Override
    public Decision next(List<DoneTest> tests) {
        believed.learn(tests);
        Map<String, Double> now = tests.get(tests.size() - 1).settings();
        int first = site.first(now);
        int second = site.second(now);
        double[] here = believed.cvPercent(first, second);
        double leastPercent = mean(here) - WORTH_PERCENT;
        if (shareGood(here) >= SURE) {
            return Decision.KEEP;
        }
        Map<String, Double> best = null;
        for (int steps = -MOST_STEPS; steps <= MOST_STEPS; steps++) {
            for (int lever = 0; steps != 0 && lever < 2; lever++) {
                int a = first + (lever == 0 ? steps : 0);
                int b = second + (lever == 1 ? steps : 0);
                double expected = mean(believed.cvPercent(a, b));
                if (expected < leastPercent) {
                    leastPercent = expected;
                    best = site.settings(a, b);
                }
            }
        }
        if (best != null) {
            return Decision.test(best);
        }
        return Rule.repeated(tests) ? Decision.KEEP : Decision.test(now);
    }

    private static double mean(double[] percents) {
        double sum = 0;
        for (double percent : percents) {
            sum += percent;
        }
        return sum / percents.length;
    }

    private static double shareGood(double[] percents) {
        double good = 0;
        for (double percent : percents) {
            good += percent <= GOOD_PERCENT ? 1 : 0;
        }
        return good / percents.length;
    }
}
