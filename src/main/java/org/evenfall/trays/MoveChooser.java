package org.evenfall.trays;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.evenfall.machine.Lever;
import org.jspecify.annotations.Nullable;

/**
 * Which move makes the expected CV² least: whole steps, at most {@value #MOST_STEPS} in all, within the limits of
 * the levers, one lever unless the owner allows two.
 */
final class MoveChooser {

    /** Assumption: most small steps at once, all levers together. */
    static final int MOST_STEPS = 3;

    /** Assumption: a move is worth a test when it is expected to take more than this off the CV, points. */
    static final double WORTH_PERCENT = 0.7;

    /** Assumption: the owner's first lever is moved first; another must be better by this share of CV². */
    private static final double LEVER_GAIN = 0.05;

    /** Assumption: of moves that are nearly as good the smaller is taken; a step more must gain this share of CV². */
    private static final double STEP_GAIN = 0.02;

    private final List<Lever> levers;
    private final Map<String, Double> settings;
    private final MoveOutlook outlook;

    /**
     * @param levers levers that have a setting
     * @param settings their settings now
     * @param outlook expected CV of a move
     */
    MoveChooser(
            List<Lever> levers,
            Map<String, Double> settings,
            MoveOutlook outlook) {
        this.levers = levers;
        this.settings = settings;
        this.outlook = outlook;
    }
    }

    /**
     * The move, as steps up the scale of each lever; null when none is worth a test.
     *
     * @param twoLevers the owner allows two levers at once
     */
    int @Nullable [] best(boolean twoLevers) {
        double worth = Math.max(0, Math.sqrt(outlook.expectedSquare(new int[levers.size()])) - WORTH_PERCENT);
        double least = worth * worth;
        int[] best = null;
        for (int[] move : candidates(twoLevers)) {
            double square = outlook.expectedSquare(move);
            if (square < (best == null ? least : least * (1 - gainWanted(move, best)))) {
                least = square;
                best = move;
            }
        }
        return best;
    }

    /** How much better a later candidate must be, share of CV²; negative for a smaller one. */
    private static double gainWanted(int[] move, int[] best) {
        boolean other = false;
        for (int j = 0; j < move.length; j++) {
            other |= (move[j] != 0) != (best[j] != 0);
        }
        return STEP_GAIN * (size(move) - size(best)) + (other ? LEVER_GAIN : 0);
    }

    private static int size(int[] move) {
        int size = 0;
        for (int steps : move) {
            size += Math.abs(steps);
        }
        return size;
    }

    /** All moves within reach, small ones first. */
    private List<int[]> candidates(boolean twoLevers) {
        List<int[]> moves = new ArrayList<>();
        for (int all = 1; all <= MOST_STEPS; all++) {
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
            for (int steps = 1; steps + used <= MOST_STEPS; steps++) {
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

    /** Whether every lever is at its end stop in this direction; false where a direction is not known. */
    boolean atEndStop(boolean wider) {
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
                boolean up = lever.widerSign() == 0 ? outlook.probabilityWiderUp(j) >= 0.5 : lever.widerSign() > 0;
                moves.add(new LeverMove(
                        lever.label(), lever.unit(), from, lever.moved(from, move[j]), move[j], up == move[j] > 0));
            }
        }
        return moves;
    }
}
