package org.evenfall.trays;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.evenfall.machine.Lever;
import org.jspecify.annotations.Nullable;

/**
 * Which move makes the expected CV² least: whole steps, at most {@value Advisor#MOST_STEPS} in all, within the limits of
 * the levers, one lever unless the owner allows two.
 */
final class MoveChooser {

    /** A move must be worth a test: it must be expected to take this off the CV, points. Ours. */
    static final double WORTH_PERCENT = 0.7;

    /** The owner's first lever is turned first: another must be better by this share. Ours. */
    private static final double LEVER_GAIN = 0.05;

    /** With the quarter points off, another lever may mend what the first cannot: it may look this much worse. Ours. */
    private static final double UNTRIED = 0.7;

    /** Of moves that are nearly as good the smaller is taken: a step more must gain this share. Ours. */
    private static final double STEP_GAIN = 0.02;

    private final List<Lever> levers;
    private final Map<String, Double> settings;
    private final ResponseModel model;
    private final boolean[] untried;

    /**
     * @param settings where the levers stand
     * @param tests tests so far
     * @param quarters the quarter points stand out: what a lever does to them is worth knowing
     */
    MoveChooser(
            List<Lever> levers,
            Map<String, Double> settings,
            ResponseModel model,
            List<AdviceInput.DoneTest> tests,
            boolean quarters) {
        this.levers = levers;
        this.settings = settings;
        this.model = model;
        this.untried = new boolean[levers.size()];
        for (int j = 0; j < untried.length; j++) {
            String label = levers.get(j).label();
            untried[j] = quarters
                    && tests.size() > 1
                    && tests.stream()
                            .allMatch(test -> Objects.equals(test.settings().get(label), settings.get(label)));
        }
    }

    /** The move, as steps up the scale of each lever; null when none is worth a test. */
    int @Nullable [] best(boolean twoLevers) {
        double worth = Math.max(0, Math.sqrt(model.square(new int[levers.size()])) - WORTH_PERCENT);
        double least = worth * worth;
        int[] best = null;
        for (int[] move : candidates(twoLevers)) {
            double square = model.square(move) * (tries(move) ? UNTRIED : 1);
            if (square < (best == null ? least : least * (1 - gainWanted(move, best)))) {
                least = square;
                best = move;
            }
        }
        return best;
    }

    /** How much better a later candidate must be, share of CV². */
    private static double gainWanted(int[] move, int[] best) {
        boolean other = false;
        for (int j = 0; j < move.length; j++) {
            other |= (move[j] != 0) != (best[j] != 0);
        }
        return STEP_GAIN * (size(move) - size(best)) + (other ? LEVER_GAIN : 0);
    }

    private boolean tries(int[] move) {
        for (int j = 0; j < move.length; j++) {
            if (move[j] != 0 && untried[j]) {
                return true;
            }
        }
        return false;
    }

    private static int size(int[] move) {
        int size = 0;
        for (int steps : move) {
            size += Math.abs(steps);
        }
        return size;
    }

    /** Small moves first. */
    private List<int[]> candidates(boolean twoLevers) {
        List<int[]> moves = new ArrayList<>();
        for (int all = 1; all <= Advisor.MOST_STEPS; all++) {
            for (int j = 0; j < levers.size(); j++) {
                for (int steps : new int[] {all, -all}) {
                    if (reaches(j, steps)) {
                        int[] move = new int[levers.size()];
                        move[j] = steps;
                        moves.add(move);
                        if (twoLevers) {
                            pairs(move, j, all, moves);
                        }
                    }
                }
            }
        }
        return moves;
    }

    private void pairs(int[] move, int first, int used, List<int[]> moves) {
        for (int second = first + 1; second < levers.size(); second++) {
            for (int steps = 1; steps + used <= Advisor.MOST_STEPS; steps++) {
                for (int signed : new int[] {steps, -steps}) {
                    if (reaches(second, signed)) {
                        int[] both = move.clone();
                        both[second] = signed;
                        moves.add(both);
                    }
                }
            }
        }
    }

    private boolean reaches(int lever, int steps) {
        double setting = Objects.requireNonNull(settings.get(levers.get(lever).label()));
        return steps > 0
                ? levers.get(lever).stepsUp(setting) >= steps
                : levers.get(lever).stepsDown(setting) >= -steps;
    }

    /** Whether no lever has room the way that is wanted. */
    boolean stuck(boolean wider) {
        for (int j = 0; j < levers.size(); j++) {
            int sign = levers.get(j).widerSign();
            if (sign == 0 || reaches(j, wider ? sign : -sign)) {
                return false;
            }
        }
        return true;
    }

    /** The moves in the owner's labels and scale. */
    List<LeverMove> moves(int[] move) {
        List<LeverMove> moves = new ArrayList<>();
        for (int j = 0; j < move.length; j++) {
            if (move[j] != 0) {
                Lever lever = levers.get(j);
                double from = Objects.requireNonNull(settings.get(lever.label()));
                boolean up = lever.widerSign() == 0 ? model.widerUp(j) >= 0.5 : lever.widerSign() > 0;
                moves.add(new LeverMove(
                        lever.label(), lever.unit(), from, lever.moved(from, move[j]), move[j], up == move[j] > 0));
            }
        }
        return moves;
    }
}
