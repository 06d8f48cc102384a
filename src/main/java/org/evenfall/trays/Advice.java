package org.evenfall.trays;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The next move and how sure it is.
 *
 * @param kind what to do
 * @param moves levers to move, usually none or one
 * @param expected tray CV that the next test is expected to read after the moves; null without a move
 * @param expectedField field CV expected after the moves; null without a move
 * @param reasons why, in order
 * @param probe the move is made to learn which way the lever works
 * @param back the move goes back to an earlier setting
 * @param moreRuns how many more runs to drive into the same trays, 1 or 2; null where it is not that
 * @param leaveBlank numbers of trays to type again or to leave blank, from 1; usually none
 * @param lever the owner's label of the lever that is asked about; empty when none is
 */
public record Advice(
        AdviceKind kind,
        List<LeverMove> moves,
        @Nullable ExpectedCv expected,
        @Nullable ExpectedCv expectedField,
        List<AdviceReason> reasons,
        boolean probe,
        boolean back,
        @Nullable Integer moreRuns,
        List<Integer> leaveBlank,
        String lever) {

    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException without a reason
     */
    public Advice {
        if (reasons.isEmpty()) {
            throw new IllegalArgumentException("an advice has a reason: " + kind);
        }
        moves = List.copyOf(moves);
        reasons = List.copyOf(reasons);
        leaveBlank = List.copyOf(leaveBlank);
    }

    /** A plain advice without a move. */
    public Advice(AdviceKind kind, List<AdviceReason> reasons) {
        this(kind, List.of(), null, null, reasons, false, false, null, List.of(), "");
    }

    /** An advice that moves no lever. */
    static Advice withoutMove(AdviceKind kind, List<AdviceReason> reasons) {
        return new Advice(kind, reasons);
    }

    /** An advice that moves levers. */
    static Advice move(
            List<LeverMove> moves, ExpectedCv expected, ExpectedCv expectedField, List<AdviceReason> reasons) {
        return new Advice(
                AdviceKind.MOVE_LEVER, moves, expected, expectedField, reasons, false, false, null, List.of(), "");
    }

    /**
     * An advice to repeat the test.
     *
     * @param moreRuns so many more runs into the same trays; null for the test as it was
     * @param leaveBlank numbers of trays that may be left blank, from 1
     */
    static Advice repeat(@Nullable Integer moreRuns, List<Integer> leaveBlank, List<AdviceReason> reasons) {
        return new Advice(
                AdviceKind.REPEAT_TEST, List.of(), null, null, reasons, false, false, moreRuns, leaveBlank, "");
    }

    /** The same, made to learn which way the lever works. */
    Advice asProbe() {
        return new Advice(kind, moves, expected, expectedField, reasons, true, back, moreRuns, leaveBlank, lever);
    }

    /** The same, back to an earlier setting. */
    Advice asBack() {
        return new Advice(kind, moves, expected, expectedField, reasons, probe, true, moreRuns, leaveBlank, lever);
    }

    /** The same, about a lever. */
    Advice about(String label) {
        return new Advice(kind, moves, expected, expectedField, reasons, probe, back, moreRuns, leaveBlank, label);
    }

    /** The same with a reason more, the last. */
    Advice because(AdviceReason reason) {
        List<AdviceReason> more = new ArrayList<>(reasons);
        more.add(reason);
        return new Advice(kind, moves, expected, expectedField, more, probe, back, moreRuns, leaveBlank, lever);
    }

    /** The reason that decides; the others explain. The first of {@link AdviceReason.Kind#DECISIVE} that it has. */
    public AdviceReason decisive() {
        return AdviceReason.Kind.DECISIVE.stream()
                .flatMap(each -> reasons.stream().filter(reason -> reason.kind() == each))
                .findFirst()
                .orElse(reasons.get(0));
    }
}
