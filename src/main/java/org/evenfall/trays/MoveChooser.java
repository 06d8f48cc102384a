package org.evenfall.trays;

import java.util.ArrayList;
import java.util.Arrays;
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
    static final int MOST_STEPS = 6;

    /** Assumption: the owner's first lever is moved first; another must be better by this share of CV². */
    private static final double LEVER_GAIN = 0.05;

    /** Assumption: two levers at once must be better than one by this share: what each of them did is not seen. */
    private static final double PAIR_GAIN = 0.25;

    /** Assumption: of moves that are nearly as good the smaller is taken; a step more must gain this share of CV². */
    private static final double STEP_GAIN = 0.02;

    /** Assumption: steps of a probe; fewer would drown in counting noise. */
    static final int PROBE_STEPS = 2;

    /** Assumption: a direction is not known while both ways are at least this likely. */
    private static final double UNSURE = 0.1;

    private final List<Lever> levers;
    private final Map<String, Double> settings;
    private final int[] lastSteps;
    private final MoveOutlook outlook;

    /**
     * @param levers levers that have a setting
     * @param settings their settings now
     * @param lastSteps steps up the scale that each was moved before the last test: so many more may be taken back
     * @param outlook expected CV of a move
     */
    MoveChooser(List<Lever> levers, Map<String, Double> settings, int[] lastSteps, MoveOutlook outlook) {
        this.levers = levers;
        this.settings = settings;
        this.lastSteps = lastSteps;
        this.outlook = outlook;
    }

    /**
     * The move, as steps up the scale of each lever; null when none is worth a test.
     *
     * @param twoLevers the owner allows two levers at once
     * @param worthPercent what a move must be expected to take off the field CV, points
     */
    int @Nullable [] best(boolean twoLevers, double worthPercent) {
        double worth = Math.max(0, Math.sqrt(outlook.squareAhead(new int[levers.size()])) - worthPercent);
        double least = worth * worth;
        int[] best = null;
        for (int[] move : candidates(twoLevers)) {
            double square = outlook.squareAhead(move);
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
        return STEP_GAIN * (size(move) - size(best))
                + (other ? LEVER_GAIN : 0)
                + PAIR_GAIN * (levers(move) - levers(best));
    }

    private static int levers(int[] move) {
        int n = 0;
        for (int steps : move) {
            n += steps != 0 ? 1 : 0;
        }
        return n;
    }

    private static int size(int[] move) {
        int size = 0;
        for (int steps : move) {
            size += Math.abs(steps);
        }
        return size;
    }

    /** All moves within reach, those of one lever first, and of these the small ones. */
    private List<int[]> candidates(boolean twoLevers) {
        List<int[]> moves = new ArrayList<>();
        int most = MOST_STEPS + Arrays.stream(lastSteps).map(Math::abs).max().orElse(0);
        for (int size = 1; size <= most; size++) {
            for (int j = 0; j < levers.size(); j++) {
                for (int steps : new int[] {size, -size}) {
                    if (size <= mostSteps(j, steps) && reaches(j, steps)) {
                        int[] move = new int[levers.size()];
                        move[j] = steps;
                        moves.add(move);
                    }
                }
            }
        }
        if (twoLevers) {
            List.copyOf(moves).forEach(move -> addPairs(move, moves));
        }
        return moves;
    }

    /** Whether a move takes back the last step of a lever, so that it passes settings that were tested. */
    private boolean takesBack(int lever, int steps) {
        return steps * lastSteps[lever] < 0;
    }

    private int mostSteps(int lever, int steps) {
        return takesBack(lever, steps) ? MOST_STEPS + Math.abs(lastSteps[lever]) : MOST_STEPS;
    }

    /** Whether a move takes back the last step of any lever. */
    boolean takesBack(int[] move) {
        for (int j = 0; j < move.length; j++) {
            if (takesBack(j, move[j])) {
                return true;
            }
        }
        return false;
    }

    /**
     * A move that shows which way a lever works: the first lever whose direction nobody knows, {@value #PROBE_STEPS} steps
     * to the side with more room; null where there is none.
     */
    int @Nullable [] probe() {
        for (int j = 0; j < levers.size(); j++) {
            double up = outlook.probabilityEmptiesMiddle(j);
            if (levers.get(j).widerSign() == 0 && up > UNSURE && up < 1 - UNSURE) {
                double setting =
                        Objects.requireNonNull(settings.get(levers.get(j).label()));
                int room =
                        Math.max(levers.get(j).stepsUp(setting), levers.get(j).stepsDown(setting));
                if (room > 0) {
                    int[] move = new int[levers.size()];
                    int size = Math.min(PROBE_STEPS, room);
                    move[j] = levers.get(j).stepsUp(setting) == room ? size : -size;
                    return move;
                }
            }
        }
        return null;
    }

    /** Adds to a move of one lever those of each lever after it. */
    private void addPairs(int[] move, List<int[]> moves) {
        int first = 0;
        while (move[first] == 0) {
            first++;
        }
        for (int second = first + 1; second < levers.size(); second++) {
            for (int steps = 1; steps + size(move) <= MOST_STEPS; steps++) {
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
                boolean up = outlook.probabilityWiderUp(j) >= 0.5;
                moves.add(new LeverMove(
                        lever.label(), lever.unit(), from, lever.moved(from, move[j]), move[j], up == move[j] > 0));
            }
        }
        return moves;
    }
}
