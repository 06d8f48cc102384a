package org.evenfall.trays;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What to do after the first tray test without a computer at hand: one move by the sum of the middle trays. The limits are
 * twice the counting and reading noise. All masses are after the runs of the plan.
 *
 * @param runs how many times the three passes are driven, at least 1
 * @param expectedG expected in each tray at the right rate, g
 * @param lowG least that is near enough to it, g
 * @param highG most that is near enough to it, g
 * @param middleTrays numbers of the trays nearer to the tramline than a quarter of the width, from 1
 * @param aboveG sum of the middle trays above which the throw is too short, g
 * @param belowG sum of the middle trays below which it is too wide, g
 * @param leftTrays numbers of the trays left of the tramline that have a mirror partner
 * @param rightTrays numbers of their partners
 * @param sidesG difference of the sums of these two above which no lever is moved, g
 * @param whenAbove the move above {@code aboveG}; null where there is none
 * @param whenBelow the move below {@code belowG}; null where there is none
 */
public record FirstMove(
        int runs,
        double expectedG,
        double lowG,
        double highG,
        List<Integer> middleTrays,
        double aboveG,
        double belowG,
        List<Integer> leftTrays,
        List<Integer> rightTrays,
        double sidesG,
        @Nullable LeverMove whenAbove,
        @Nullable LeverMove whenBelow) {

    /** Copies the lists. */
    public FirstMove {
        middleTrays = List.copyOf(middleTrays);
        leftTrays = List.copyOf(leftTrays);
        rightTrays = List.copyOf(rightTrays);
    }
}
