package org.evenfall.trays;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Whether a test is to be repeated, and how: a tray that does not fit the others, or noise that hides the machine. */
final class RepeatAdvisor {

    /** Assumption: noise above this share of the CV, which is half of its square, hides the machine. */
    private static final double NOISY_SHARE = 0.7;

    /** Assumption: two catches of one tray within so many standard errors of their difference agree. */
    private static final double MOST_ERRORS = 3;

    /** Assumption: with so many repeats of one setting the noise is accepted. */
    private static final int MOST_REPEATS = 3;

    /** Assumption: nobody drives more further runs than this over one strip. */
    private static final int MOST_MORE_RUNS = 2;

    private final AdviceInput input;
    private final TestsBySetting bySetting;
    private final TestsBySetting.Pool pool;

    RepeatAdvisor(AdviceInput input, TestsBySetting bySetting, TestsBySetting.Pool pool) {
        this.input = input;
        this.bySetting = bySetting;
        this.pool = pool;
    }

    /**
     * Type a tray again, or leave it blank; null where every tray of the last test fits the others. A tray that caught as
     * much in an earlier test with the same settings is believed.
     */
    @Nullable
    Advice spoiltTray(List<AdviceReason> before) {
        AdviceInput.DoneTest last = input.last();
        Optional<SpoiltTray> spoilt = SpoiltTray.of(last.evenness(), input.tramlines());
        if (spoilt.isEmpty() || spoilt.filter(this::caughtBefore).isPresent()) {
            return null;
        }
        SpoiltTray tray = spoilt.get();
        int number = last.trayNumbers().get(tray.index());
        List<AdviceReason> reasons = new ArrayList<>(before);
        reasons.add(AdviceReason.of(AdviceReason.Kind.SPOILT_TRAY, number, tray.readG(), tray.lowG(), tray.highG()));
        List<Integer> doubtful = new ArrayList<>(List.of(number));
        if (tray.twin() != SpoiltTray.NO_TWIN) {
            int other = last.trayNumbers().get(tray.twin());
            doubtful.add(other);
            reasons.add(AdviceReason.of(AdviceReason.Kind.TWIN_TRAY, other));
        }
        boolean enough = last.evenness().trays() - doubtful.size() >= TrayLayouts.FEWEST_TRAYS;
        reasons.add(AdviceReason.of(enough ? AdviceReason.Kind.TYPE_OR_BLANK : AdviceReason.Kind.TYPE_OR_REPEAT));
        return Advice.repeat(null, enough ? doubtful : List.of(), reasons);
    }

    /** Whether an earlier test with the same settings caught as much in that tray, within the noise of both. */
    private boolean caughtBefore(SpoiltTray spoilt) {
        List<AdviceInput.DoneTest> repeats = bySetting.repeats(input.last());
        int index = spoilt.index();
        double now = input.last().evenness().relativePercent().get(index);
        return repeats.subList(0, repeats.size() - 1).stream().anyMatch(test -> {
            double then = test.evenness().relativePercent().get(index);
            double noise = Math.hypot(
                    test.evenness().cv().noisePercent(),
                    input.last().evenness().cv().noisePercent());
            return Math.abs(now - then) <= MOST_ERRORS * noise;
        });
    }

    /** More runs into the same trays; null where noise does not hide the machine, or after enough repeats. */
    @Nullable
    Advice moreRuns(List<AdviceReason> before) {
        CvEstimate cv = pool.evenness().cv();
        boolean noisy = cv.machinePercent() == null || cv.noisePercent() > NOISY_SHARE * cv.percent();
        if (!noisy || pool.tests() >= MOST_REPEATS) {
            return null;
        }
        int more = moreRuns(cv.noisePercent(), pool.runs());
        List<AdviceReason> reasons = new ArrayList<>(before);
        reasons.add(AdviceReason.of(AdviceReason.Kind.NOISE, cv.noisePercent(), more));
        return Advice.repeat(more, List.of(), reasons);
    }

    /**
     * How many more runs bring the noise down to {@link CatchPlans#WANTED_NOISE_PERCENT}, from 1 to
     * {@value #MOST_MORE_RUNS}: noise falls as 1/√runs, what is due to reading even faster.
     */
    static int moreRuns(double noisePercent, int runs) {
        double share = noisePercent / CatchPlans.WANTED_NOISE_PERCENT;
        double more = Math.ceil(runs * (share * share - 1) - 1e-9);
        return (int) Math.max(1, Math.min(MOST_MORE_RUNS, more));
    }
}
