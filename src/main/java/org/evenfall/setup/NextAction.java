package org.evenfall.setup;

import java.util.Map;
import org.evenfall.finding.Step;
import org.evenfall.machine.CheckItem;
import org.evenfall.trays.Advice;
import org.evenfall.trays.AdviceKind;
import org.evenfall.trays.AdviceReason;

/** What is done about the instruction after a tray test; each is done at one place of the guide. */
public enum NextAction {
    /** Drive the first test. */
    FIRST_TEST,
    /** Drive a test with the levers moved as advised. */
    TEST_WITH_MOVE,
    /** Drive the same test again. */
    SAME_TEST,
    /** Drive the same test again when the wind is weaker. */
    CALMER_TEST,
    /** Drive more runs into the trays of the last test. */
    MORE_RUNS,
    /** Type a tray again. */
    TYPE_AGAIN,
    /** Look at guards and parts. */
    PARTS,
    /** Look at the vanes. */
    VANES,
    /** Measure height left and right, and set it. */
    LEVEL,
    /** Set the tyre pressures. */
    TYRES,
    /** Measure and set the PTO speed. */
    PTO_SPEED,
    /** Catch both outlets. */
    OUTLETS,
    /** Look at the condition of the product. */
    PRODUCT,
    /** Say which way a lever works. */
    DIRECTION,
    /** The settings are kept, but the flow was measured with others. */
    BUCKET_AGAIN,
    /** Nothing is left to do here. */
    GO_ON;

    /** Key of the finding that a number next to a plus sign is not typed yet. */
    private static final String CATCH_OPEN = "entry.sumOpen";

    private static final Map<AdviceReason.Kind, NextAction> BY_REASON = Map.ofEntries(
            Map.entry(AdviceReason.Kind.DO_A_TEST, FIRST_TEST),
            Map.entry(AdviceReason.Kind.WINDY, CALMER_TEST),
            Map.entry(AdviceReason.Kind.GUARDS_UNSEEN, PARTS),
            Map.entry(AdviceReason.Kind.VANE_WORN, VANES),
            Map.entry(AdviceReason.Kind.VANE_FAILED, VANES),
            Map.entry(AdviceReason.Kind.VANES_UNSEEN, VANES),
            Map.entry(AdviceReason.Kind.LEVEL_OFF, LEVEL),
            Map.entry(AdviceReason.Kind.TYRES_OFF, TYRES),
            Map.entry(AdviceReason.Kind.PTO_OFF, PTO_SPEED),
            Map.entry(AdviceReason.Kind.PTO_BEYOND, PTO_SPEED),
            Map.entry(AdviceReason.Kind.PTO_UNSEEN, PTO_SPEED),
            Map.entry(AdviceReason.Kind.OUTLETS_UNEQUAL, OUTLETS),
            Map.entry(AdviceReason.Kind.OUTLETS_UNSEEN, OUTLETS),
            Map.entry(AdviceReason.Kind.PRODUCT_DAMP, PRODUCT),
            Map.entry(AdviceReason.Kind.PRODUCT_CAKED, PRODUCT),
            Map.entry(AdviceReason.Kind.SPOILT_TRAY, TYPE_AGAIN),
            Map.entry(AdviceReason.Kind.DIRECTION, DIRECTION));

    /** The action after the last tray test. */
    public static NextAction after(Assessment assessment) {
        if (catchesOpen(assessment)) {
            return TYPE_AGAIN;
        }
        Advice advice = assessment.trays().advice();
        if (advice == null) {
            return FIRST_TEST;
        }
        if (!advice.moves().isEmpty()) {
            return TEST_WITH_MOVE;
        }
        if (advice.kind() == AdviceKind.KEEP) {
            return flowMayDiffer(assessment) ? BUCKET_AGAIN : GO_ON;
        }
        if (advice.moreRuns() != null) {
            return MORE_RUNS;
        }
        return cure(advice);
    }

    private static NextAction cure(Advice advice) {
        AdviceReason decisive = advice.decisive();
        if (decisive.kind() == AdviceReason.Kind.PART_FAILED) {
            return part(decisive);
        }
        NextAction known = BY_REASON.get(decisive.kind());
        if (known != null) {
            return known;
        }
        return switch (advice.kind()) {
            case LEVEL_HEIGHT_TYRES -> LEVEL;
            case PTO_SPEED -> PTO_SPEED;
            case OUTLETS_AND_VANES ->
                advice.reasons().stream().anyMatch(reason -> reason.kind() == AdviceReason.Kind.VANES_AGAIN)
                        ? VANES
                        : OUTLETS;
            case REPEAT_TEST, CANNOT_TELL_BETTER -> SAME_TEST;
            case DO_A_TEST, WAIT_FOR_WIND, MOVE_LEVER, KEEP, NO_LEVER_LEFT, CONFIRM_DIRECTION -> GO_ON;
        };
    }

    private static NextAction part(AdviceReason reason) {
        return reason.subject().equals(CheckItem.TYRES.name())
                ? TYRES
                : reason.subject().equals(CheckItem.LEVEL.name()) ? LEVEL : PARTS;
    }

    /** Whether further runs were driven whose catches are not typed yet. */
    private static boolean catchesOpen(Assessment assessment) {
        return assessment.findings().stream()
                .anyMatch(
                        finding -> finding.step() == Step.TRAYS && finding.key().equals(CATCH_OPEN));
    }

    /** Whether levers or PTO speed of the card are others than in the last bucket test. */
    private static boolean flowMayDiffer(Assessment assessment) {
        return assessment.findings().stream()
                .anyMatch(
                        finding -> finding.step() == Step.RATE && finding.key().startsWith(BucketConditions.DIFFERS));
    }

    /** Whether a new test is driven. */
    public boolean newTest() {
        return this == FIRST_TEST || this == TEST_WITH_MOVE || this == SAME_TEST || this == CALMER_TEST;
    }
}
