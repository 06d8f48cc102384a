package org.evenfall.trays;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The next move and how sure it is.
 *
 * @param kind what to do
 * @param moves levers to move, usually none or one
 * @param expected CV expected after the moves; null without a move
 * @param reasons why, in order
 */
public record Advice(
        AdviceKind kind, List<LeverMove> moves, @Nullable ExpectedCv expected, List<AdviceReason> reasons) {

    /** Copies both lists. */
    public Advice {
        moves = List.copyOf(moves);
        reasons = List.copyOf(reasons);
    }

    /** An advice that moves no lever. */
    static Advice withoutMove(AdviceKind kind, List<AdviceReason> reasons) {
        return new Advice(kind, List.of(), null, reasons);
    }

    /** An advice that moves levers. */
    static Advice move(List<LeverMove> moves, ExpectedCv expected, List<AdviceReason> reasons) {
        return new Advice(AdviceKind.MOVE_LEVER, moves, expected, reasons);
    }
}
