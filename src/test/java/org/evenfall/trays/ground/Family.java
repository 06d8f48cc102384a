package org.evenfall.trays.ground;

import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.function.BiFunction;
import java.util.stream.IntStream;

/** Kinds of machines, each a function of what is known of it and of its hidden numbers. */
enum Family {
    LANDING(LandingMachine::new),
    BALLISTIC(BallisticMachine::new),
    MEASURED(MeasuredMachine::new),
    COSINES(CosinesMachine::new);

    private final BiFunction<Job, Draws, Machine> maker;

    Family(BiFunction<Job, Draws, Machine> maker) {
        this.maker = maker;
    }

    Machine make(Job job, double[] hidden) {
        return maker.apply(job, new Draws(hidden));
    }

    /** Machines that are worth a loop, the same for the same seed. */
    List<Site> sites(int count, long seed, boolean sevenTrays) {
        return IntStream.range(0, count)
                .parallel()
                .mapToObj(i -> site(seed * 1_000_003 + 7919L * i + 104_729L * ordinal(), sevenTrays))
                .toList();
    }

    private Site site(long seed, boolean sevenTrays) {
        // neighbouring seeds give alike first numbers unless they are mixed
        Random random = new Random(new SplittableRandom(seed).nextLong());
        double widthM = Job.drawWidthM(random);
        while (true) {
            Machine machine = make(Job.draw(random, widthM, sevenTrays), Draws.numbers(random));
            if (machine.worthALoop()) {
                return new Site(this, machine, seed);
            }
        }
    }
}
