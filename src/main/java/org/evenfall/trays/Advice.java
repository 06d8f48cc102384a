package org.evenfall.trays;

import java.util.List;
import org.evenfall.finding.Finding;
import org.jspecify.annotations.Nullable;

/**
 * The next move and how sure it is.
 *
 * @param kind what to do
 * @param moves levers to move, usually none or one
 * @param expectedCvPercent CV expected after the move, %
 * @param expectedCvLowPercent lower end of its 90 % interval
 * @param expectedCvHighPercent upper end
 * @param reasons why, in order
 */
public record Advice(
        AdviceKind kind,
        List<LeverMove> moves,
        @Nullable Double expectedCvPercent,
        @Nullable Double expectedCvLowPercent,
        @Nullable Double expectedCvHighPercent,
        List<Finding> reasons) {

    public Advice {
        moves = List.copyOf(moves);
        reasons = List.copyOf(reasons);
    }
}
