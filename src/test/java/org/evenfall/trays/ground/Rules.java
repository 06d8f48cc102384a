package org.evenfall.trays.ground;

import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.function.Function;
import org.evenfall.machine.Lever;
import org.evenfall.machine.Widening;

/** The rules by name. */
enum Rules {
    /** The advice, one lever at a time, directions typed right. */
    ADVICE(site -> new AdviceRule(site, false, site.levers())),
    /** The advice, two levers allowed. */
    TWO(site -> new AdviceRule(site, true, site.levers())),
    /** The advice, no direction known. */
    UNKNOWN(site -> new AdviceRule(site, false, typed(site, 1, Widening.UNKNOWN))),
    /** The advice, one direction in ten typed wrong. */
    WRONG10(site -> new AdviceRule(site, false, typed(site, 0.1, null))),
    /** The advice, all directions typed wrong. */
    WRONG(site -> new AdviceRule(site, false, typed(site, 1, null))),
    /** The advice, trays without counting noise. */
    CLEAN(site -> new AdviceRule(site, false, site.levers())),
    NAIVE(NaiveRule::new),
    LINEAR(LinearRule::new),
    /** Slow: some seconds a machine. */
    BOUND(BoundRule::new);

    /** All but the slow one. */
    static final List<Rules> QUICK = List.copyOf(EnumSet.complementOf(EnumSet.of(BOUND)));

    private final Function<Site, Rule> maker;

    Rules(Function<Site, Rule> maker) {
        this.maker = maker;
    }

    /** A loop of this rule at every site. */
    List<Loop> run(List<Site> sites) {
        return sites.parallelStream()
                .map(site -> Loop.run(site, maker.apply(site), this != CLEAN))
                .toList();
    }

    /** The levers with a share of the directions typed as this, or the wrong way round where this is null. */
    private static List<Lever> typed(Site site, double share, Widening as) {
        Random random = new Random(new SplittableRandom(site.seed() + 1).nextLong());
        return site.levers().stream()
                .map(lever -> {
                    Widening other = lever.widerWhen() == Widening.HIGHER ? Widening.LOWER : Widening.HIGHER;
                    return random.nextDouble() >= share
                            ? lever
                            : new Lever(
                                    lever.label(),
                                    lever.unit(),
                                    lever.lowest(),
                                    lever.highest(),
                                    lever.step(),
                                    as == null ? other : as);
                })
                .toList();
    }
}
