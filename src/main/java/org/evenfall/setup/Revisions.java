package org.evenfall.setup;

import java.util.List;
import java.util.Set;
import org.evenfall.quantity.DateText;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.CardEntries;
import org.evenfall.setup.entry.CheckEntry;
import org.evenfall.setup.entry.Condition;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.YesNo;

/**
 * Coming back: a new revision, and what a change re-opens. A change takes out only what must be typed or measured anew. What
 * it makes of the tests follows from their conditions ({@link ConditionRules}), as with every other change of an entry.
 */
public final class Revisions {

    /** What may have changed since the card was signed. */
    public enum Change {
        /** Another delivery of the product. */
        DELIVERY,
        /** A part of the machine was replaced or worn. */
        MACHINE_PART,
        /** The crop has grown. */
        CROP_TALLER,
        /** Another rate or speed. */
        RATE_OR_SPEED,
        /** Another tramline width. */
        WIDTH
    }

    private Revisions() {}

    /** The next revision, everything kept, to be dated and signed anew; it knows the date of the card before it. */
    public static Setup next(Setup setup) {
        CardEntries before = setup.card();
        return setup.withCard(before.withRevision(Math.max(1, before.revision()) + 1)
                .withPreviousDate(before.date().isBlank() ? before.previousDate() : DateText.iso(before.date()))
                .withDate(""));
    }

    /**
     * Takes out what must be typed or measured anew; before, every test is given the conditions it does not state, so that
     * it does not count as driven under the new ones. The tray tests state that a part was worn or replaced after them.
     *
     * @param assessment assessment of the setup
     * @param numbers writes the conditions
     */
    public static Setup reopen(Setup setup, Assessment assessment, Set<Change> changes, NumberWriter numbers) {
        Setup open = ConditionDraft.confirmed(setup, assessment, numbers);
        if (changes.contains(Change.DELIVERY)) {
            open = open.withProduct(open.product()
                    .withDelivery("")
                    .withUseBy("")
                    .withCondition(Condition.UNANSWERED)
                    .withBagsDelivered(EnteredQuantity.EMPTY)
                    .withMedianSize(EnteredQuantity.EMPTY)
                    .withContainerFull(List.of())
                    .withSievings(List.of())
                    .withBagsSampled(EnteredQuantity.EMPTY));
        }
        if (changes.contains(Change.MACHINE_PART)) {
            open = open.withMachineCheck(
                            open.machineCheck().withVanes(List.of()).withChecks(List.<CheckEntry>of()))
                    .withTrays(open.trays()
                            .withTests(open.trays().tests().stream()
                                    .map(test -> test.withConditions(
                                            test.conditions().withPartChanged(YesNo.YES)))
                                    .toList()));
        }
        if (changes.contains(Change.CROP_TALLER)) {
            open = open.withHeight(open.height().withCropHeights(List.of()));
        }
        if (changes.contains(Change.RATE_OR_SPEED)) {
            open = open.withRate(open.rate()
                    .withPlan(open.rate()
                            .plan()
                            .withNitrogenRate(EnteredQuantity.EMPTY)
                            .withProductRate(EnteredQuantity.EMPTY)
                            .withSpeed(EnteredQuantity.EMPTY))
                    .withSpeedRuns(List.of()));
        }
        if (changes.contains(Change.WIDTH)) {
            open = open.withStart(open.start().withTramlineWidth(EnteredQuantity.EMPTY));
        }
        return open;
    }
}
